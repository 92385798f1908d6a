// What a reading of the voltmeter means: the volts are typed, and how long the unit was at rest.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: pane

    required property ScenarioDocument document
    readonly property bool busy: answer.running
    property string reads
    property int restedHours  // 0: not known

    spacing: Tokens.gapSmall

    AnswerRunner {
        id: answer
        document: pane.document
        question: pane.reads.length > 0 ? "gauge" : ""
        reads: pane.reads
        restedHours: pane.restedHours
    }
    NumberEntry {
        id: entry
    }
    SectionTitle {
        Layout.fillWidth: true
        text: qsTr("The voltmeter shows")
    }
    ActionButton {
        objectName: "reads"
        Layout.fillWidth: true
        atLeft: true
        quiet: pane.reads.length === 0
        text: pane.reads.length > 0 ? Look.amount(pane.reads) : qsTr("touch to type the volts")
        spoken: qsTr("%1: %2. Change").arg(qsTr("The voltmeter shows")).arg(text)
        onClicked: {
            entry.beginVoltage(qsTr("The voltmeter shows"), pane.reads)
            typing.open()
        }
    }
    SectionTitle {
        Layout.fillWidth: true
        text: qsTr("At rest before that for")
    }
    Flow {
        id: rests
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("At rest before that for")
        Repeater {
            model: [{ hours: 0, label: qsTr("not known") }, { hours: 1, label: qsTr("an hour") },
                    { hours: 8, label: qsTr("a night") }, { hours: 24, label: qsTr("a day") }]
            ChoiceButton {
                required property var modelData
                objectName: "rested_" + modelData.hours
                width: Math.min(implicitWidth, rests.width)
                text: modelData.label
                chosen: pane.restedHours === modelData.hours
                onClicked: pane.restedHours = modelData.hours
            }
        }
    }
    AnswerWords {
        objectName: "gaugeAnswer"
        Layout.fillWidth: true
        visible: pane.reads.length > 0
        runner: answer
    }
    AnswerBody {
        Layout.fillWidth: true
        visible: pane.reads.length > 0
        runner: answer
    }
    Sheet {
        id: typing
        title: entry.label
        breadth: 380
        onOpened: pad.forceActiveFocus(Qt.PopupFocusReason)
        NumberPad {
            id: pad
            objectName: "gaugePad"
            Layout.fillWidth: true
            entry: entry
            onDone: {
                pane.reads = entry.value()
                typing.close()
            }
        }
    }
}
