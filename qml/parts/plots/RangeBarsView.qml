// Bars with their range, one below the other: the bar to what is likely, a bracket from low to
// high, and the figures in words beside them.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Column {
    id: view

    required property RangeBars bars
    required property string spoken   // what the bars are
    property color colour: Tokens.sun
    readonly property int thick: 14

    spacing: 6
    Accessible.role: Accessible.Chart
    Accessible.name: spoken
    Accessible.description: bars.spoken

    // Its edge keeps it apart from the bar it lies on.
    component Bracket: Rectangle {
        color: Tokens.text
        border.width: 1
        border.color: Tokens.ground
    }
    Repeater {
        model: view.bars
        Item {
            id: row
            required property string label
            required property string text
            required property real low
            required property real likely
            required property real high
            width: view.width
            height: words.height + view.thick + 6

            Item {
                id: words
                width: parent.width
                readonly property bool roomy: name.implicitWidth + figure.implicitWidth + Tokens.gap <= width
                height: roomy ? Math.max(name.height, figure.height) : name.height + figure.height
                PlainText {
                    id: name
                    width: words.roomy ? implicitWidth : parent.width
                    text: row.label
                    color: Tokens.text
                    font.pixelSize: Tokens.typeSmall
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
                PlainText {
                    id: figure
                    x: words.roomy ? parent.width - width : 0
                    y: words.roomy ? 0 : name.height
                    width: words.roomy ? implicitWidth : parent.width
                    text: row.text
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeSmall
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
            }
            Item {
                y: words.height + 3
                width: parent.width
                height: view.thick
                Rectangle {
                    anchors.fill: parent
                    radius: 3
                    color: Tokens.surface
                }
                Rectangle {
                    width: Math.max(2, row.likely * parent.width)
                    height: parent.height
                    radius: 3
                    color: view.colour
                }
                Bracket {
                    visible: row.high > row.low
                    x: row.low * parent.width
                    width: Math.max(4, (row.high - row.low) * parent.width)
                    anchors.verticalCenter: parent.verticalCenter
                    height: 4
                }
                Bracket {
                    visible: row.high > row.low
                    x: row.low * parent.width - 1
                    width: 4
                    height: parent.height
                }
                Bracket {
                    visible: row.high > row.low
                    x: row.high * parent.width - 3
                    width: 4
                    height: parent.height
                }
                Rectangle {
                    visible: view.bars.limitAt >= 0
                    x: view.bars.limitAt * parent.width - 1
                    y: -3
                    width: 3
                    height: parent.height + 6
                    color: Tokens.stop
                }
            }
        }
    }
}
