// The two charts of the outage days, filled to their edges: the stored energy as a band, and
// below it what the loads draw and the sun offers. Axes, nights and pins are drawn around them.
// qmllint disable property type import
import QtQuick
import QtCharts
import Candlemark

Item {
    id: chart

    required property DaysModel days
    required property PlotWindow view
    required property bool powers  // the lower chart instead of the upper one

    function fill() {
        if (chart.powers)
            chart.days.fillPowers(loadsLine, sunTop)
        else
            chart.days.fillStored(lowest, highest, likely)
    }

    Component.onCompleted: chart.fill()
    Connections {
        target: chart.days
        function onShown() { chart.fill() }
    }

    ChartView {
        anchors.fill: parent
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

        ValueAxis {
            id: time
            min: chart.view.from * Math.max(1, chart.days.hours)
            max: chart.view.to * Math.max(1, chart.days.hours)
            visible: false
        }
        ValueAxis {
            id: amount
            min: 0
            max: chart.powers ? chart.days.powerTop : chart.days.energyTop
            visible: false
        }
        AreaSeries {
            visible: !chart.powers
            axisX: time
            axisY: amount
            color: Tokens.storedRange
            borderColor: "transparent"
            borderWidth: 0
            upperSeries: LineSeries { id: highest }
            lowerSeries: LineSeries { id: lowest }
        }
        LineSeries {
            id: likely
            visible: !chart.powers
            axisX: time
            axisY: amount
            color: Tokens.stored
            width: 3
        }
        AreaSeries {
            visible: chart.powers
            axisX: time
            axisY: amount
            color: Tokens.sunFill
            borderColor: Tokens.sun
            borderWidth: 1.5
            upperSeries: LineSeries { id: sunTop }
        }
        LineSeries {
            id: loadsLine
            visible: chart.powers
            axisX: time
            axisY: amount
            color: Tokens.loads
            width: 1.5
        }
    }
}
