// One frame of the plot: nights, ticks, series, and the moment that is looked at. The upper one has
// the line at which the packs are empty and the span in which they end.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: frame

    required property DaysModel days
    required property PlotWindow view   // the part of it that is in sight
    required property int axisWidth
    required property var ticks
    required property var spans         // days or weeks, between which a line is drawn
    required property bool powers

    function placed(share) {
        return (share - frame.view.from) * frame.view.stretch * ground.width
    }

    Rectangle {
        anchors.fill: ground
        color: Tokens.dayGround
    }
    Item {
        id: ground
        anchors.fill: parent
        anchors.leftMargin: frame.axisWidth
        clip: true

        Repeater {
            model: frame.days.nights
            Rectangle {
                required property var modelData
                x: frame.placed(modelData.from)
                width: frame.placed(modelData.to) - x
                height: ground.height
                color: Tokens.night
            }
        }
        Repeater {
            model: frame.ticks
            Rectangle {
                required property var modelData
                y: Math.round((1 - modelData.at) * ground.height)
                width: ground.width
                height: 1
                color: Tokens.hairline
            }
        }
        Repeater {
            model: frame.spans
            Rectangle {
                required property var modelData
                visible: modelData.from > 0
                x: Math.round(frame.placed(modelData.from))
                width: 1
                height: ground.height
                color: Tokens.hairline
            }
        }
        DaysChart {
            anchors.fill: parent
            days: frame.days
            view: frame.view
            powers: frame.powers
        }
        Repeater {   // the line at which the packs may give no more, as dashes
            model: frame.powers ? 0 : Math.max(0, Math.ceil(ground.width / 12))
            Rectangle {
                required property int index
                x: index * 12
                y: Math.min(ground.height - 3, Math.round((1 - frame.days.emptyAt) * ground.height) - 1)
                width: 8
                height: 2
                color: Tokens.stop
            }
        }
        EndSpan {
            visible: !frame.powers && from < 1
            from: frame.days.endsFrom
            to: frame.days.endsTo
            likely: frame.days.likelyEnd
            view: frame.view
            anchors.fill: parent
        }
        Rectangle {   // its edge keeps it apart from what it crosses
            x: Math.round(Math.max(0, Math.min(frame.placed(frame.days.momentAt) - 2, ground.width - width)))
            width: 5
            height: ground.height
            color: Tokens.text
            border.width: 1
            border.color: Tokens.dayGround
        }
        Rectangle {   // where the likely course is at that moment
            visible: !frame.powers
            x: frame.placed(frame.days.momentAt) - width / 2
            y: (1 - frame.days.momentLevel) * ground.height - height / 2
            width: 13
            height: 13
            radius: width / 2
            color: Tokens.stored
            border.width: 3
            border.color: Tokens.text
        }
    }
    Rectangle {
        anchors.fill: ground
        color: "transparent"
        border.width: 1
        border.color: Tokens.outline
    }
    Repeater {
        model: frame.ticks
        PlainText {
            required property var modelData
            required property int index
            // As many as fit below each other; the lowest and the highest are pushed inwards.
            readonly property int every: Math.ceil(1.6 * implicitHeight * (frame.ticks.length - 1)
                                                   / Math.max(1, frame.height))
            visible: index % Math.max(1, every) === 0
            width: frame.axisWidth - 6
            y: Math.max(0, Math.min(frame.height - height, (1 - modelData.at) * frame.height - height / 2))
            horizontalAlignment: Text.AlignRight
            text: modelData.text
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            Accessible.ignored: true
        }
    }
}
