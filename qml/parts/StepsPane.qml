// The three numbers that are most often turned: packs, panels, outage days.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: pane

    required property ScenarioDocument document
    required property bool stacked  // each label above its buttons

    columnSpacing: Tokens.gapLarge
    rowSpacing: Tokens.gapSmall

    component Step: CountStepper {
        required property CountStep step
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
        visible: step.present
        label: step.label
        shown: step.shown
        detail: step.detail
        canLess: step.canLess
        canMore: step.canMore
        onLess: step.less()
        onMore: step.more()
    }

    Step { objectName: "packs"; stacked: pane.stacked; step: pane.document.packs }
    Step { objectName: "panels"; stacked: pane.stacked; step: pane.document.panels }
    Step { objectName: "days"; stacked: pane.stacked; step: pane.document.days }
}
