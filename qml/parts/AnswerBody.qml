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
    Rows {
        Layout.fillWidth: true
        model: body.runner.tables
        row: Fold {
            id: fold
            required property var modelData
            objectName: "table_" + modelData.name
            width: parent?.width ?? 0
            title: qsTr("Table: %1").arg(modelData.title)
            inside: Component {
                CellsTable {
                    title: fold.modelData.title
                    headings: fold.modelData.headings
                    rows: fold.modelData.rows
                }
            }
        }
    }
}
