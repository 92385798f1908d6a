// The log, the newest first: the number of its pin, what was written, and a way to strike what was
// wrong. What is struck stays readable.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: list

    required property LogModel entries
    signal struck()

    spacing: Tokens.gapSmall

    SectionTitle {
        Layout.fillWidth: true
        text: list.entries.count > 0 ? qsTr("Written down so far") : qsTr("Nothing is written down yet.")
    }
    PlainText {
        objectName: "strikeTrouble"
        Layout.fillWidth: true
        visible: text.length > 0
        text: list.entries.trouble
        color: Tokens.stop
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    Rows {
        Layout.fillWidth: true
        model: list.entries
        row: Rectangle {
            id: row
            required property int index
            required property string words
            required property string spoken
            required property int number
            required property bool struck
            required property bool strikes
            required property bool odd
            objectName: "entry_" + index
            width: parent?.width ?? 0
            implicitHeight: Math.max(Tokens.touchTarget, line.implicitHeight + 2 * 6)
            radius: Tokens.corner
            color: Tokens.surface
            border.width: row.odd ? 2 : 1
            border.color: row.odd ? Tokens.caution : Tokens.hairline
            Accessible.role: Accessible.ListItem
            Accessible.name: row.spoken

            RowLayout {
                id: line
                anchors.left: parent.left
                anchors.right: parent.right
                anchors.leftMargin: Tokens.gapSmall
                anchors.rightMargin: Tokens.gapSmall
                anchors.verticalCenter: parent.verticalCenter
                spacing: Tokens.gapSmall
                PlainText {
                    Layout.preferredWidth: Math.max(26, implicitWidth)
                    text: row.number
                    color: row.odd ? Tokens.caution : row.struck || row.strikes ? Tokens.quietText : Tokens.note
                    font.pixelSize: Tokens.typeSmall
                    font.bold: true
                    horizontalAlignment: Text.AlignHCenter
                    Accessible.ignored: true
                }
                PlainText {
                    objectName: "entryWords"
                    Layout.fillWidth: true
                    text: row.words
                    color: row.struck || row.strikes ? Tokens.quietText : Tokens.text
                    font.pixelSize: Tokens.typeSmall
                    font.strikeout: row.struck
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
                ActionButton {
                    objectName: "strike"
                    visible: !row.struck && !row.strikes
                    text: qsTr("Strike")
                    spoken: qsTr("Strike: %1").arg(row.words)
                    font.pixelSize: Tokens.typeSmall
                    onClicked: if (list.entries.strike(row.index))
                        list.struck()
                }
            }
        }
    }
}
