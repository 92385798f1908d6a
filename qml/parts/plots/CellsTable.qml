// A table of an answer. Where its columns do not fit beside each other, every row is written as
// lines of heading and value.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Rectangle {
    id: table

    required property string title
    required property var headings  // of texts
    required property var rows      // of {cells, spoken}
    readonly property real cellWidth: (width - 2 * Tokens.gapSmall) / Math.max(1, headings.length)
    readonly property bool stacked: cellWidth < 96 * Math.max(1, Tokens.textScale)

    implicitHeight: Math.min(420, head.height + body.contentHeight + 2)
    color: Tokens.well
    border.width: 1
    border.color: Tokens.hairline
    radius: Tokens.corner
    clip: true
    Accessible.role: Accessible.Table
    Accessible.name: title

    component Cell: PlainText {
        color: Tokens.text
        font.pixelSize: Tokens.typeMark
        wrapMode: Text.Wrap
        padding: 4
        Accessible.ignored: true
    }
    Row {
        id: head
        x: Tokens.gapSmall
        visible: !table.stacked
        height: visible ? implicitHeight : 0
        Repeater {
            model: table.stacked ? [] : table.headings
            Cell {
                required property string modelData
                width: table.cellWidth
                text: modelData
                color: Tokens.quietText
                font.bold: true
            }
        }
    }
    ListView {
        id: body
        objectName: "tableRows"
        anchors.top: head.bottom
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 1
        width: parent.width
        clip: true
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        model: table.rows
        ScrollBar.vertical: QuietBar { width: 10 }

        delegate: Rectangle {
            id: row
            required property var modelData
            required property int index
            width: body.width
            height: Math.max(28, cells.implicitHeight)
            color: index % 2 ? Tokens.surface : "transparent"
            Accessible.role: Accessible.Row
            Accessible.name: modelData.spoken

            Grid {
                id: cells
                x: Tokens.gapSmall
                columns: table.stacked ? 2 : table.headings.length
                Repeater {
                    model: table.stacked ? 2 * table.headings.length : table.headings.length
                    Cell {
                        required property int index
                        readonly property int column: table.stacked ? Math.floor(index / 2) : index
                        readonly property bool name: table.stacked && index % 2 === 0
                        width: table.stacked ? (row.width - 2 * Tokens.gapSmall) / 2 : table.cellWidth
                        text: (name ? table.headings[column] : row.modelData.cells[column]) ?? ""
                        color: name ? Tokens.quietText : Tokens.text
                    }
                }
            }
        }
    }
}
