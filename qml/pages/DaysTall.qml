// The Days page on a tablet held upright: the plot over the whole width, then the steps beside the
// candle, then the findings.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    property real firstView   // height that is seen without scrolling

    spacing: Tokens.gap

    PlotPane {
        visible: page.plan.answered
        Layout.fillWidth: true
        Layout.minimumHeight: leastHeight
        Layout.preferredHeight: Math.max(leastHeight, Math.round(page.firstView * 0.6))
        Layout.fillHeight: true
        days: page.plan.days
    }
    CandleAndSteps {
        Layout.fillWidth: true
        document: page.document
        plan: page.plan
    }
    PlanRest {
        Layout.fillWidth: true
        plan: page.plan
    }
    FindingsList {
        Layout.fillWidth: true
        source: page.plan
    }
}
