// After months on a shelf: is it ready, and when must it be topped up.
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

    AnswerRunner {
        id: answer
        document: page.document
        question: "storage"
    }
    RangeBars {
        id: months
        runner: answer
        series: "months"
        names: "date"
        likely: "charge"
        high: "switch_open"
    }
    FieldsModel {
        id: keys
        document: page.document
        table: "storage"
    }

    main: Component {
        ColumnLayout {
            spacing: Tokens.gapLarge

            AnswerWords {
                Layout.fillWidth: true
                runner: answer
            }
            SectionTitle {
                Layout.fillWidth: true
                visible: months.count > 0
                text: qsTr("Left month by month; the bracket is with the master switch open")
            }
            RangeBarsView {
                objectName: "months"
                Layout.fillWidth: true
                visible: months.count > 0
                bars: months
                colour: Tokens.stored
                spoken: qsTr("Left month by month")
            }
            FieldsList {
                objectName: "fields"
                Layout.fillWidth: true
                fields: keys
            }
        }
    }
    behind: Component {
        AnswerBody {
            Layout.fillWidth: true
            runner: answer
        }
    }
}
