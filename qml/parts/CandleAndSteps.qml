// The candle, beside it the steps that make it grow; below each other with very large text.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: both

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool single: Tokens.textScale > 1.3
    readonly property bool roomy: width >= 480 * Math.max(1, Tokens.textScale * 0.85)

    columns: single ? 1 : 2
    columnSpacing: Tokens.gapLarge
    rowSpacing: Tokens.gap

    CandlePanel {
        visible: both.plan.answered
        Layout.preferredWidth: both.roomy ? 176 : 132
        Layout.fillWidth: !both.roomy || both.single
        Layout.minimumHeight: 300
        Layout.fillHeight: true
        plan: both.plan
        legend: both.roomy
    }
    StepsPane {
        Layout.fillWidth: !both.plan.answered || both.roomy || both.single
        Layout.alignment: Qt.AlignVCenter
        columns: 1
        stacked: !both.roomy
        document: both.document
    }
    CandleLegend {
        visible: both.plan.answered && !both.roomy
        Layout.fillWidth: true
        Layout.columnSpan: both.columns
        spacing: Tokens.gapSmall
    }
}
