// Asks before a file gives way to another of the same name.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property string name                // of the file that is there
    property bool versionsStay: false   // what it held can be had again
    signal agreed()
    signal anotherWanted()

    function ask(name) {
        sheet.name = name
        sheet.open()
    }

    title: qsTr("There is already a file of this name")

    PlainText {
        objectName: "replaceWords"
        Layout.fillWidth: true
        text: sheet.versionsStay ? qsTr("%1 is there already; replace it? Its last ten versions stay, to be found on the File page.").arg(sheet.name)
                                 : qsTr("%1 is there already; replace it? What it holds is then gone.").arg(sheet.name)
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    ActionButton {
        objectName: "replaceIt"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gap
        main: true
        text: qsTr("Replace it")
        spoken: qsTr("Replace %1").arg(sheet.name)
        onClicked: {
            sheet.close()
            sheet.agreed()
        }
    }
    ActionButton {
        objectName: "anotherName"
        Layout.fillWidth: true
        text: qsTr("Choose another name")
        onClicked: {
            sheet.close()
            sheet.anotherWanted()
        }
    }
}
