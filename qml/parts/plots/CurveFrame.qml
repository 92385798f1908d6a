// One curve in its frame, with its name above and its ticks around.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: frame

    required property Curve curve
    property color colour: Tokens.loads
    property bool named: true    // writes the ticks below
    readonly property int axisWidth: Math.round(64 * Math.max(1, Tokens.textScale * 0.9))
    readonly property int below: named ? Tokens.typeMark + Tokens.gapSmall : 4

    implicitHeight: name.height + 4 + 96 + below
    Accessible.role: Accessible.Chart
    Accessible.name: curve.heading
    Accessible.description: curve.spoken

    PlainText {
        id: name
        width: parent.width
        text: frame.curve.heading
        color: frame.colour
        font.pixelSize: Tokens.typeSmall
        font.bold: true
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
    Rectangle {
        id: ground
        x: frame.axisWidth
        y: name.height + 4
        width: frame.width - x - 1
        height: frame.height - y - frame.below
        color: Tokens.dayGround
        border.width: 1
        border.color: Tokens.outline

        Repeater {
            model: frame.curve.ticksUp
            Rectangle {
                required property var modelData
                y: Math.round((1 - modelData.at) * ground.height)
                width: ground.width
                height: 1
                color: Tokens.hairline
            }
        }
        CurveLine {
            anchors.fill: parent
            curve: frame.curve
            colour: frame.colour
        }
    }
    Repeater {
        model: frame.curve.ticksUp
        PlainText {
            required property var modelData
            required property int index
            readonly property int every: Math.ceil(1.5 * implicitHeight * (frame.curve.ticksUp.length - 1) / Math.max(1, ground.height))
            visible: index % Math.max(1, every) === 0
            width: frame.axisWidth - 6
            y: ground.y + Math.max(0, Math.min(ground.height - height, (1 - modelData.at) * ground.height - height / 2))
            horizontalAlignment: Text.AlignRight
            text: modelData.text
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            Accessible.ignored: true
        }
    }
    Repeater {
        model: frame.named ? frame.curve.ticksAcross : []
        PlainText {
            required property var modelData
            required property int index
            readonly property int every: Math.ceil(1.5 * implicitWidth * (frame.curve.ticksAcross.length - 1) / Math.max(1, ground.width))
            visible: index % Math.max(1, every) === 0
            x: Math.max(ground.x, Math.min(frame.width - width, ground.x + modelData.at * ground.width - width / 2))
            y: ground.y + ground.height + 2
            text: modelData.text
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            Accessible.ignored: true
        }
    }
}
