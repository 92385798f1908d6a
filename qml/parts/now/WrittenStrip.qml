// What was just written down, with the way back; nothing of it is shown while there are no words.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: strip

    property string words
    property string text   // of the file with it
    signal undoAsked()

    visible: words.length > 0
    implicitHeight: visible ? line.implicitHeight + 2 * Tokens.gapSmall : 0
    height: implicitHeight
    color: Tokens.surface
    border.width: 1
    border.color: Tokens.outline

    RowLayout {
        id: line
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Tokens.gap
        anchors.rightMargin: Tokens.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        spacing: Tokens.gapSmall

        PlainText {
            objectName: "writtenWords"
            Layout.fillWidth: true
            text: strip.words
            color: Tokens.text
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        ActionButton {
            objectName: "undoNote"
            text: qsTr("Undo")
            spoken: qsTr("Take the entry out again")
            onClicked: strip.undoAsked()
        }
        ActionButton {
            objectName: "heardNote"
            Layout.preferredWidth: Math.max(Tokens.touchTarget, implicitHeight)
            leftPadding: 0
            rightPadding: 0
            text: "✕"
            spoken: qsTr("Put this notice away")
            onClicked: strip.words = ""
        }
    }
}
