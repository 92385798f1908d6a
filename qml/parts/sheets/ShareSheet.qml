// The answer for somebody who has not got this program.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property ScenarioDocument document
    property string kind          // of what is being saved
    readonly property alias saving: saving
    signal pictureAsked()         // to be grabbed once nothing lies over the page

    title: qsTr("Share the answer")
    breadth: 560

    // The picture of the page, as it was grabbed.
    property var picture: null

    function ask(kind) {
        sheet.kind = kind
        const file = sharing.suggested(kind)
        saving.defaultSuffix = kind
        saving.selectedFile = file
        saving.currentFolder = ""
        saving.open()
    }
    function takePicture(image) {
        sheet.picture = image
        sheet.ask("png")
    }

    Sharing {
        id: sharing
        document: sheet.document
    }
    ReplaceSheet {
        id: there
    }
    SavingDialog {
        id: saving
        title: sheet.kind === "html" ? qsTr("Save one page") : qsTr("Save one picture")
        document: sheet.document
        asking: there
        nameFilters: sheet.kind === "html" ? [qsTr("Page for a browser (*.html)")] : [qsTr("Picture (*.png)")]
        onChosen: file => {
            sheet.open()
            if (sheet.kind === "html")
                sharing.savePage(file)
            else
                sharing.savePicture(sheet.picture, file)
        }
    }
    ActionButton {
        objectName: "sharePage"
        Layout.fillWidth: true
        main: true
        enabled: !sharing.busy
        text: qsTr("As one page for a browser")
        spoken: qsTr("Save the whole answer as one page for a browser, HTML")
        onClicked: sheet.ask("html")
    }
    ActionButton {
        objectName: "sharePicture"
        Layout.fillWidth: true
        main: true
        text: qsTr("As one picture of this page")
        spoken: qsTr("Save what this page shows as one picture, PNG")
        onClicked: {
            sheet.close()
            sheet.pictureAsked()
        }
    }
    PlainText {
        objectName: "shareTold"
        Layout.fillWidth: true
        text: sharing.busy ? qsTr("The outage is being worked out.") : sharing.told.length > 0 ? sharing.told
            : qsTr("The file itself is shared as it is: it is a plain text.")
        color: sharing.failed ? Tokens.stop : Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
}
