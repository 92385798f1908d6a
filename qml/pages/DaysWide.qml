// The Days page on a screen that is wider than tall: all in view, the findings scroll.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)

    spacing: Tokens.gap

    AnswerText {
        Layout.fillWidth: true
        sentence: page.plan.sentence
        range: page.plan.range
        narrow: false
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        spacing: Tokens.gapLarge

        CandlePanel {
            visible: page.plan.answered
            Layout.preferredWidth: 176 * page.growth
            Layout.minimumWidth: 176 * page.growth
            Layout.maximumWidth: 176 * page.growth
            Layout.fillHeight: true
            plan: page.plan
        }
        PlotPane {
            visible: page.plan.answered
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Math.max(420, leastHeight)
            days: page.plan.days
        }
        ColumnLayout {
            Layout.fillWidth: !page.plan.answered
            Layout.fillHeight: true
            Layout.preferredWidth: 340 * page.growth
            Layout.minimumWidth: 340 * page.growth
            Layout.maximumWidth: page.plan.answered ? 340 * page.growth : page.width
            spacing: Tokens.gapSmall

            StepsPane {
                Layout.fillWidth: true
                columns: 1
                stacked: false
                document: page.document
            }
            FindingsScroll {
                Layout.topMargin: Tokens.gapSmall
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: 120
                Layout.preferredHeight: 120
                plan: page.plan
            }
        }
    }
}
