// A row to pick: its name, and in small what is known of it.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: row

    required property string name
    required property string detail
    property string spoken: name + ", " + detail
    property bool chosen: false
    property bool ofSeveral: false // one of which is chosen
    property string atRight        // a figure at the right
    property real share: -1        // 0 to 1: a line as long; below 0 none
    property color shareColour: Tokens.loads
    property string below          // a further line

    implicitHeight: Math.max(Tokens.touchTarget, words.height + 2 * Tokens.gapSmall)
    focusPolicy: Qt.StrongFocus
    checkable: false
    leftPadding: Tokens.gap
    rightPadding: Tokens.gap
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    Accessible.selectable: ofSeveral
    Accessible.selected: chosen
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()

    contentItem: Item {
        Column {
            id: words
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Item {
                width: parent.width
                readonly property bool roomy: row.atRight.length > 0 && title.implicitWidth + figure.implicitWidth + Tokens.gap <= width
                height: roomy ? Math.max(title.implicitHeight, figure.implicitHeight)
                              : title.height + (figure.visible ? figure.height : 0)
                PlainText {
                    id: title
                    width: parent.roomy ? implicitWidth : parent.width
                    text: row.name
                    color: Tokens.text
                    font.pixelSize: Tokens.typeBody
                    font.bold: row.chosen
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
                PlainText {
                    id: figure
                    x: parent.roomy ? parent.width - width : 0
                    y: parent.roomy ? 0 : title.height
                    width: parent.roomy ? implicitWidth : parent.width
                    visible: row.atRight.length > 0
                    text: row.atRight
                    color: Tokens.text
                    font.pixelSize: Tokens.typeBody
                    font.bold: true
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
            }
            Item {
                visible: row.share >= 0
                width: parent.width
                height: 8
                Rectangle {
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width
                    height: 2
                    color: Tokens.hairline
                }
                Rectangle {
                    anchors.verticalCenter: parent.verticalCenter
                    width: Math.max(3, parent.width * Math.max(0, row.share))
                    height: 6
                    radius: 2
                    color: row.shareColour
                }
            }
            PlainText {
                width: parent.width
                visible: text.length > 0
                text: row.detail
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                width: parent.width
                visible: text.length > 0
                text: row.below
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                font.italic: true
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Tokens.corner
        color: row.down ? Tokens.pressed : row.chosen ? Tokens.raised : Tokens.surface
        border.width: row.chosen ? 2 : 1
        border.color: row.chosen ? Tokens.accent : Tokens.hairline

        FocusRing {
            shown: row.visualFocus
        }
    }
}
