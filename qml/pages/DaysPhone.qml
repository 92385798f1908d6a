// The Days page on a hand's breadth: the steps stand beside the candle they make grow.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan

    spacing: Tokens.gap

    PlanRest {
        Layout.fillWidth: true
        plan: page.plan
    }
    GridLayout {
        Layout.fillWidth: true
        columns: Tokens.textScale > 1.3 ? 1 : 2
        columnSpacing: Tokens.gap
        rowSpacing: Tokens.gap

        CandlePanel {
            visible: page.plan.answered
            Layout.preferredWidth: 132
            Layout.minimumHeight: 300
            Layout.fillWidth: true
            Layout.fillHeight: true
            plan: page.plan
            legend: false
        }
        StepsPane {
            Layout.fillWidth: !page.plan.answered || Tokens.textScale > 1.3
            Layout.alignment: Qt.AlignVCenter
            columns: 1
            stacked: true
            document: page.document
        }
    }
    CandleLegend {
        visible: page.plan.answered
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
    }
    PlotPane {
        visible: page.plan.answered
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: Math.max(440, leastHeight)
        days: page.plan.days
    }
    FindingsList {
        Layout.fillWidth: true
        source: page.plan
    }
}
