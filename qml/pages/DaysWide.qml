// The Days page on a screen that is wider than tall: all in view, the findings scroll.
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    readonly property int sideWidth: Math.round(340 * growth)
    readonly property int candleWidth: Math.round(176 * growth)

    implicitHeight: Math.max(360, plotPane.leastHeight)

    Item {
        id: below
        anchors.fill: parent

        CandlePanel {
            visible: page.plan.answered
            width: page.candleWidth
            height: parent.height
            plan: page.plan
        }
        PlotPane {
            id: plotPane
            visible: page.plan.answered
            x: page.candleWidth + Tokens.gapLarge
            width: Math.max(0, side.x - Tokens.gapLarge - x)
            height: parent.height
            days: page.plan.days
        }
        ColumnLayout {
            id: side
            width: page.plan.answered ? page.sideWidth : parent.width
            x: parent.width - width
            height: parent.height
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
