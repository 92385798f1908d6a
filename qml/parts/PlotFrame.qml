// One frame of the plot: nights, ticks, series and the moment. The plot has two, one above the
// other.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: frame

    required property DaysModel days
    required property int axisWidth
    required property int dayRow
    required property var ticks
    required property bool powers
    required property bool named  // writes the days' names below
    signal touched()

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
                x: modelData.from * ground.width
                width: (modelData.to - modelData.from) * ground.width
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
                x: Math.round(modelData.from * ground.width)
                width: 1
                height: ground.height
                color: Tokens.outline
            }
        }
        DaysChart {
            anchors.fill: parent
            days: frame.days
            powers: frame.powers
        }
        Rectangle {
            x: Math.round(frame.days.momentAt * (ground.width - width))
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
        Text {
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
            x: ground.x + modelData.from * ground.width
            y: frame.height + 2
            width: (modelData.to - modelData.from) * ground.width
            height: frame.dayRow
            Text {
                id: longName
                visible: day.roomy
                anchors.centerIn: parent
                text: day.modelData.name
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.ignored: true
            }
            Text {
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
                frame.days.lookAt(point.position.x / ground.width)
            }
        }
        DragHandler {
            target: null
            yAxis.enabled: false
            onCentroidChanged: if (active)
                frame.days.lookAt(centroid.position.x / ground.width)
        }
    }
}
