// Fingers, mouse and wheel on a plot. It lies above the chart, which takes every press for itself.
import QtQuick
import Candlemark

Item {
    id: area

    required property DaysModel days
    required property PlotWindow view
    // While a finger reads, and for a moment after.
    readonly property bool reading: rested || drag.active && !drag.moves || lingers.running
    property bool rested: false   // the finger stayed before it moved
    signal touched()

    function look(x) {
        area.days.lookAt(area.view.shareAt(x / Math.max(1, area.width)))
        lingers.restart()
    }

    Timer {
        id: lingers
        interval: 4000
    }

    TapHandler {
        id: tap
        gesturePolicy: TapHandler.ReleaseWithinBounds
        onTapped: point => {
            area.rested = false
            area.touched()
            area.look(point.position.x)
        }
        onLongPressed: {
            area.rested = true
            area.look(tap.point.position.x)
        }
    }
    PinchHandler {
        id: fingers
        target: null
        readonly property real middle: centroid.position.x / Math.max(1, area.width)
        onActiveChanged: if (active)
            area.view.beginPinch(middle)
        onActiveScaleChanged: if (active)
            area.view.pinch(middle, activeScale)
        onTranslationChanged: if (active)
            area.view.pinch(middle, activeScale)
    }
    DragHandler {
        id: drag
        property bool moves: false   // the plot, and not the moment
        property real last: 0
        target: null
        yAxis.enabled: false
        onActiveChanged: {
            moves = active && area.view.canFarther && !area.rested
            last = centroid.position.x
            if (!active)
                area.rested = false
        }
        onCentroidChanged: {
            if (!active)
                return
            if (moves)
                area.view.pan((last - centroid.position.x) / Math.max(1, area.width))
            else
                area.look(centroid.position.x)
            last = centroid.position.x
        }
    }
    WheelHandler {
        acceptedModifiers: Qt.ControlModifier
        onWheel: event => {
            const at = area.view.shareAt(event.x / Math.max(1, area.width))
            if (event.angleDelta.y > 0)
                area.view.nearer(at)
            else
                area.view.farther(at)
        }
    }
    WheelHandler {
        orientation: Qt.Horizontal
        enabled: area.view.canFarther
        onWheel: event => area.view.pan(-event.angleDelta.x / 1200)
    }
}
