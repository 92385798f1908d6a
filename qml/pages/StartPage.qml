// Will it start: the motors of the loads against the inverter, the packs and the cable.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

SplitPage {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool busy: answer.running
    property string wanted
    // The one wanted, or the first there is.
    readonly property string tool: page.one(uses.groups)

    function one(tools) {
        return tools.includes(page.wanted) ? page.wanted : (tools[0] ?? "")
    }

    AnswerRunner {
        id: answer
        document: page.document
        question: "start"
    }
    LoadsModel {
        id: loads
        document: page.document
    }
    RangeBars {
        id: uses
        runner: answer
        series: "utilisation"
        group: "load"
        only: page.tool
        names: "constraint"
        low: "low"
        likely: "likely"
        high: "high"
        limit: 100
    }
    component Course: Curve {
        runner: answer
        series: "course of " + page.tool
        across: "time"
    }
    Course {
        id: speed
        up: "speed"
    }
    Course {
        id: current
        up: "current"
    }
    Course {
        id: voltage
        up: "dc_voltage"
    }
    ApplianceSheet {
        id: appliances
        motorsOnly: true
        ownOffered: false
        onPicked: name => {
            if (loads.addLike(name) >= 0)
                page.wanted = name
        }
    }

    main: Component {
        ColumnLayout {
            spacing: Tokens.gap

            AnswerWords {
                Layout.fillWidth: true
                runner: answer
            }
            Flow {
                id: tools
                objectName: "tools"
                Layout.fillWidth: true
                spacing: Tokens.gapSmall
                Accessible.role: Accessible.Grouping
                Repeater {
                    model: uses.groups
                    ChoiceButton {
                        required property string modelData
                        objectName: "tool_" + modelData
                        width: Math.min(implicitWidth, tools.width)
                        text: modelData
                        chosen: modelData === page.tool
                        onClicked: page.wanted = modelData
                    }
                }
            }
            ActionButton {
                objectName: "addTool"
                Layout.fillWidth: true
                text: qsTr("Check another tool")
                onClicked: appliances.open()
            }
            CountStepper {
                objectName: "packs"
                Layout.fillWidth: true
                visible: page.document.packs.present
                label: page.document.packs.label
                shown: page.document.packs.shown
                detail: page.document.packs.detail
                held: page.document.packs.value
                minimumValue: page.document.packs.least
                maximumValue: page.document.packs.most
                canLess: page.document.packs.canLess
                canMore: page.document.packs.canMore
                onLess: page.document.packs.less()
                onMore: page.document.packs.more()
            }
            SectionTitle {
                Layout.fillWidth: true
                visible: uses.count > 0
                text: qsTr("Share of each limit that the start uses; the line is the limit")
            }
            RangeBarsView {
                objectName: "uses"
                Layout.fillWidth: true
                visible: uses.count > 0
                bars: uses
                colour: Tokens.loads
                spoken: qsTr("Share of each limit that the start of %1 uses").arg(page.tool)
            }
            Fold {
                objectName: "inverterFields"
                Layout.fillWidth: true
                title: qsTr("The inverter")
                inside: Component {
                    TableEditor {
                        document: page.document
                        table: "inverter"
                    }
                }
            }
        }
    }
    behind: Component {
        ColumnLayout {
            spacing: Tokens.gap

            CurveFrame {
                Layout.fillWidth: true
                visible: speed.present
                curve: speed
                colour: Tokens.accent
                named: false
            }
            CurveFrame {
                Layout.fillWidth: true
                visible: current.present
                curve: current
                colour: Tokens.loads
                named: false
            }
            CurveFrame {
                Layout.fillWidth: true
                visible: voltage.present
                curve: voltage
                colour: Tokens.stored
            }
            AnswerBody {
                Layout.fillWidth: true
                runner: answer
            }
        }
    }
}
