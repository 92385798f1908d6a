// Below a plot: its hours where they are drawn near enough, and its days or weeks. A screen reader
// walks the hours, and each says what stands above it.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: axis

    required property var ticks    // [{at, text, spoken, row}]
    required property var spans    // [{from, to, name, reach}]
    required property PlotWindow view
    readonly property int line: Math.round(Tokens.typeMark * 1.35)
    signal asked(int row)

    implicitHeight: 2 * line + 6
    clip: true

    function placed(share) {
        return (share - axis.view.from) * axis.view.stretch * width
    }

    Repeater {
        model: axis.ticks
        Item {
            id: tick
            required property var modelData
            required property int index
            readonly property real middle: axis.placed(modelData.at)
            objectName: "hour_" + modelData.row
            x: middle - width / 2
            width: name.implicitWidth
            height: axis.line + 4
            Accessible.role: Accessible.ListItem
            Accessible.name: modelData.spoken
            Accessible.focusable: true
            Accessible.onPressAction: axis.asked(tick.modelData.row)

            Rectangle {
                anchors.horizontalCenter: parent.horizontalCenter
                width: 1
                height: 4
                color: Tokens.outline
            }
            PlainText {
                id: name
                y: 4
                visible: tick.x >= 0 && tick.x + tick.width <= axis.width
                text: tick.modelData.text
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.ignored: true
            }
        }
    }
    Repeater {
        model: axis.spans
        Item {
            id: span
            required property var modelData
            readonly property real begins: Math.max(0, axis.placed(modelData.from))
            x: begins
            y: axis.ticks.length > 0 ? axis.line + 6 : 4
            width: Math.max(0, Math.min(axis.width, axis.placed(modelData.to)) - begins)
            height: axis.line
            PlainText {
                visible: text.length > 0 && implicitWidth + 4 <= span.width * span.modelData.reach
                         && span.x + x >= 0 && span.x + x + width <= axis.width
                anchors.horizontalCenter: parent.horizontalCenter
                text: span.modelData.name
                color: Tokens.text
                font.pixelSize: Tokens.typeMark
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
    }
}
