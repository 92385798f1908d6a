// One hour of the outage in words.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: row

    required property int index
    required property string time
    required property string stored
    required property string detail
    required property string spoken
    required property bool looked  // the moment that is looked at
    signal touched()

    implicitHeight: Math.max(Tokens.touchTarget, lines.implicitHeight + Tokens.gapSmall)
    color: looked ? Tokens.raised : index % 2 ? Tokens.surface : "transparent"
    Accessible.role: Accessible.Row
    Accessible.name: spoken

    ColumnLayout {
        id: lines
        anchors.verticalCenter: parent.verticalCenter
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.leftMargin: Tokens.gap
        anchors.rightMargin: Tokens.gap
        spacing: 0

        RowLayout {
            Layout.fillWidth: true
            PlainText {
                Layout.fillWidth: true
                text: row.time
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                font.bold: row.looked
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                text: row.stored
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                font.bold: row.looked
                Accessible.ignored: true
            }
        }
        PlainText {
            Layout.fillWidth: true
            text: row.detail
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
    }
    TapHandler {
        onTapped: row.touched()
    }
}
