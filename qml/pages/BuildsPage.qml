// How many packs and panels to build: the answer, how sure each build is against what it weighs or
// costs, and the map of all that were tried. It is asked as the page opens and follows changes.
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
        question: "packs"
        firstMembers: 64
    }

    main: Component {
        BuildsPane {
            runner: answer
        }
    }
    behind: Component {
        ColumnLayout {
            spacing: Tokens.gap

            Fold {
                objectName: "goalFields"
                Layout.fillWidth: true
                title: qsTr("What the build has to do")
                inside: Component {
                    TableEditor {
                        document: page.document
                        table: "goal"
                    }
                }
            }
            AnswerBody {
                Layout.fillWidth: true
                visible: answer.answered
                runner: answer
            }
        }
    }
}
