// Where a dialog for files is: places to go to, the folder around, why there is nothing.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: pane

    required property FolderModel listing
    required property bool saving
    signal wentTo(url folder)

    spacing: Tokens.gapSmall
    RowLayout {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        ActionButton {
            objectName: "folderUp"
            Layout.preferredWidth: Math.max(Tokens.touchTarget, implicitHeight)
            leftPadding: 0
            rightPadding: 0
            text: "▲"
            spoken: qsTr("The folder around this one")
            enabled: pane.listing.canGoUp
            onClicked: pane.listing.goUp()
        }
        PlainText {
            objectName: "folderPath"
            Layout.fillWidth: true
            text: pane.listing.path
            color: Tokens.text
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.WrapAnywhere
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("Folder %1").arg(text)
        }
    }
    Flow {
        id: flow
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Accessible.role: Accessible.Grouping
        Repeater {
            model: pane.listing.places
            ChoiceButton {
                required property var modelData
                objectName: "place_" + modelData.name
                width: Math.min(implicitWidth, flow.width)
                text: modelData.name
                spoken: qsTr("Go to %1").arg(text)
                chosen: modelData.here
                onClicked: pane.wentTo(modelData.url)
            }
        }
    }
    PlainText {
        objectName: "folderTrouble"
        Layout.fillWidth: true
        visible: text.length > 0
        text: pane.listing.trouble.length > 0 ? pane.listing.trouble
            : pane.saving && !pane.listing.writable ? qsTr("Nothing can be saved in this folder: it belongs to somebody else or is write-protected.")
            : pane.listing.count === 0 ? qsTr("There is nothing of the kind here.") : ""
        color: pane.listing.count === 0 && pane.listing.writable ? Tokens.quietText : Tokens.stop
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
}
