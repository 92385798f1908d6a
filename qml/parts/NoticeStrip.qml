// A line over the page that tells something and is put away once it was read, or stays as long as
// it holds. Nothing of it is shown while there are no words.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: strip

    required property string words
    property bool grave: false     // something cannot be done
    property bool lasting: false   // it goes when it no longer holds, not by hand
    signal heard()

    visible: words.length > 0
    implicitHeight: visible ? line.implicitHeight + 2 * Tokens.gapSmall : 0
    color: Tokens.surface
    border.width: strip.grave ? 2 : 1
    border.color: strip.grave ? Tokens.stop : Tokens.outline

    RowLayout {
        id: line
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Tokens.gap
        anchors.rightMargin: Tokens.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        spacing: Tokens.gapSmall

        PlainText {
            objectName: "noticeWords"
            Layout.fillWidth: true
            text: strip.words
            color: strip.grave ? Tokens.stop : Tokens.text
            font.pixelSize: strip.grave ? Tokens.typeBody : Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        ActionButton {
            objectName: "heard"
            visible: !strip.lasting
            Layout.preferredWidth: Math.max(Tokens.touchTarget, implicitHeight)
            leftPadding: 0
            rightPadding: 0
            text: "✕"
            spoken: qsTr("Put this notice away")
            onClicked: strip.heard()
        }
    }
}
