// The chart of one curve, filled to its edges; ticks are drawn around it.
// qmllint disable property type import
import QtQuick
import QtCharts
import Candlemark

ChartView {
    id: chart

    required property Curve curve
    required property color colour

    plotArea: Qt.rect(0, 0, width, height)
    margins { left: 0; right: 0; top: 0; bottom: 0 }
    backgroundColor: "transparent"
    backgroundRoundness: 0
    plotAreaColor: "transparent"
    dropShadowEnabled: false
    legend.visible: false
    animationOptions: ChartView.NoAnimation
    antialiasing: true
    Accessible.ignored: true
    Component.onCompleted: chart.curve.fill(line)
    Connections {
        target: chart.curve
        function onDrawn() { chart.curve.fill(line) }
    }

    ValueAxis {
        id: across
        min: 0
        max: chart.curve.width
        visible: false
    }
    ValueAxis {
        id: up
        min: 0
        max: chart.curve.top
        visible: false
    }
    LineSeries {
        id: line
        axisX: across
        axisY: up
        color: chart.colour
        width: 2.5
    }
}
