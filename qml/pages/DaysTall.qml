// The Days page on a tablet held upright: candle and plot, then the steps, then the findings.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan

    spacing: Tokens.gapLarge

    PlanRest {
        Layout.fillWidth: true
        plan: page.plan
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: Math.max(560, plotPane.leastHeight)
        visible: page.plan.answered
        spacing: Tokens.gapLarge

        CandlePanel {
            Layout.preferredWidth: 160 * Math.max(1, Tokens.textScale * 0.85)
            Layout.fillHeight: true
            plan: page.plan
        }
        PlotPane {
            id: plotPane
            Layout.fillWidth: true
            Layout.fillHeight: true
            days: page.plan.days
        }
    }
    StepsPane {
        Layout.fillWidth: true
        columns: Tokens.textScale > 1.3 ? 1 : 3
        stacked: Tokens.textScale <= 1.3
        document: page.document
    }
    FindingsList {
        Layout.fillWidth: true
        source: page.plan
    }
}
