// The Days page on a phone held sideways and on a low screen: the plot fills the first view, with
// its buttons at the side.
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
        Layout.preferredHeight: Math.max(leastHeight, page.firstView)
        Layout.fillHeight: true
        atSide: true
        days: page.plan.days
    }
    DaysKey {
        visible: page.plan.answered
        Layout.fillWidth: true
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
