// An answer of any question: its sentences, then what stands behind them.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: body

    required property AnswerRunner runner

    spacing: Tokens.gapSmall

    FindingsList {
        Layout.fillWidth: true
        source: body.runner
    }
    Repeater {
        model: body.runner.tables
        Fold {
            id: fold
            required property var modelData
            objectName: "table_" + modelData.name
            Layout.fillWidth: true
            title: qsTr("Table: %1").arg(modelData.title)
            inside: Component {
                CellsTable {
                    headings: fold.modelData.headings
                    rows: fold.modelData.rows
                }
            }
        }
    }
}
