// One frame of the plot: nights, ticks, series and the moment. The plot has two, one above the
// other.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: frame

    required property DaysModel days
    required property PlotWindow view   // the part of it that is in sight
    required property int axisWidth
    required property int dayRow
    required property var ticks
    required property bool powers
    required property bool named  // writes the days' names below
    signal touched()

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
            model: frame.days.days
            Rectangle {
                required property var modelData
                visible: modelData.from > 0
                x: Math.round(frame.placed(modelData.from))
                width: 1
                height: ground.height
                color: Tokens.outline
            }
        }
        DaysChart {
            anchors.fill: parent
            days: frame.days
            view: frame.view
            powers: frame.powers
        }
        Rectangle {
            x: Math.round(Math.min(frame.placed(frame.days.momentAt), ground.width - width))
            width: 3
            height: ground.height
            color: Tokens.text
            opacity: 0.85
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
    Repeater {
        model: frame.named ? frame.days.days : []
        Item {
            id: day
            required property var modelData
            readonly property bool roomy: longName.implicitWidth + 6 <= width
            readonly property real begins: Math.max(0, frame.placed(modelData.from))
            visible: width > 0
            x: ground.x + begins
            y: frame.height + 2
            width: Math.max(0, Math.min(ground.width, frame.placed(modelData.to)) - begins)
            height: frame.dayRow
            PlainText {
                id: longName
                visible: day.roomy
                anchors.centerIn: parent
                text: day.modelData.name
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.ignored: true
            }
            PlainText {
                visible: !day.roomy && implicitWidth + 2 <= day.width
                anchors.centerIn: parent
                text: day.modelData.shortName
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.ignored: true
            }
        }
    }
    // Above the chart, which takes every press for itself.
    Item {
        anchors.fill: ground

        TapHandler {
            gesturePolicy: TapHandler.ReleaseWithinBounds
            onTapped: point => {
                frame.touched()
                frame.days.lookAt(frame.view.shareAt(point.position.x / ground.width))
            }
        }
        PinchHandler {
            id: fingers
            target: null
            readonly property real middle: centroid.position.x / Math.max(1, ground.width)
            onActiveChanged: if (active)
                frame.view.beginPinch(middle)
            onActiveScaleChanged: if (active)
                frame.view.pinch(middle, activeScale)
        }
        DragHandler {
            target: null
            yAxis.enabled: false
            onCentroidChanged: if (active)
                frame.days.lookAt(frame.view.shareAt(centroid.position.x / ground.width))
        }
    }
}
