// The three numbers that are most often turned: packs, panels, outage days; and the way to the rest
// of what is told of the outage.
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
        held: step.value
        minimumValue: step.least
        maximumValue: step.most
        canLess: step.canLess
        canMore: step.canMore
        onLess: step.less()
        onMore: step.more()
    }

    Step { objectName: "packs"; stacked: pane.stacked; step: pane.document.packs }
    Step { objectName: "panels"; stacked: pane.stacked; step: pane.document.panels }
    Step { objectName: "days"; stacked: pane.stacked; step: pane.document.days }
    ActionButton {
        objectName: "outage"
        implicitWidth: Tokens.touchTarget  // as wide as the steps, and no wider
        Layout.fillWidth: true
        Layout.columnSpan: pane.columns
        text: qsTr("Begin, sky and warmth")
        spoken: qsTr("When the outage begins, its first sky, how warm the packs are")
        onClicked: outage.open()
    }
    Sheet {
        id: outage
        title: qsTr("The outage")
        breadth: 560
        TableEditor {
            Layout.fillWidth: true
            document: pane.document
            table: "outage"
        }
    }
}
