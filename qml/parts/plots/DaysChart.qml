// The series of one frame of the outage days, filled to its edges: the store as a fan of the
// members, or below it what the loads ask for and the sun offers, each the mean of its hour. Axes,
// nights, ends and pins are drawn around them.
// qmllint disable property type import
pragma ComponentBehavior: Bound
import QtQuick
import QtCharts
import Candlemark

Item {
    id: chart

    required property DaysModel days
    required property PlotWindow view
    required property bool powers  // the lower frame instead of the upper one

    function fill() {
        if (chart.powers) {
            for (const stack of [first, second, third, fourth, fifth])
                chart.days.fillStack(stack.place, stack.lowerSeries, stack.upperSeries, stack)
            chart.days.fillSun(sunEdge)
            chart.days.fillSun(sunLine)
        } else {
            chart.days.fillStored(lowest, highest, likely)
            chart.days.fillHalf(lower, upper)
        }
    }

    Component.onCompleted: chart.fill()
    Connections {
        target: chart.days
        function onShown() { chart.fill() }
    }

    // Where one priority lies on the next the line between them is that of the one above.
    component Stack: AreaSeries {
        required property int place  // among the priorities, from below
        visible: chart.powers && place < chart.days.stacks.length
        axisX: time
        axisY: amount
        color: Tokens.stacks[place % Tokens.stacks.length]
        borderColor: color
        borderWidth: 1.5
        upperSeries: LineSeries {}
        lowerSeries: LineSeries {}
    }
    component Fan: AreaSeries {
        axisX: time
        axisY: amount
        borderColor: Tokens.stored
        borderWidth: 1
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
        Fan {
            visible: !chart.powers
            color: Tokens.storedRange
            upperSeries: LineSeries { id: highest }
            lowerSeries: LineSeries { id: lowest }
        }
        Fan {
            visible: !chart.powers && chart.days.hasFan
            color: Tokens.storedHalf
            upperSeries: LineSeries { id: upper }
            lowerSeries: LineSeries { id: lower }
        }
        LineSeries {
            id: likely
            visible: !chart.powers
            axisX: time
            axisY: amount
            color: Tokens.stored
            width: 3.5
        }
        Stack { id: first; place: 0 }
        Stack { id: second; place: 1 }
        Stack { id: third; place: 2 }
        Stack { id: fourth; place: 3 }
        Stack { id: fifth; place: 4 }
        LineSeries {
            id: sunEdge   // keeps the line apart from the loads it crosses
            visible: chart.powers
            axisX: time
            axisY: amount
            color: Tokens.dayGround
            width: 6
        }
        LineSeries {
            id: sunLine
            visible: chart.powers
            axisX: time
            axisY: amount
            color: Tokens.sun
            width: 2.5
        }
    }
}
