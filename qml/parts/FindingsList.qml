// All findings, the gravest first; below them the hazards, the figures, what was assumed, the
// working, and the last word.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: list

    required property var source  // a plan or an answer

    spacing: Tokens.gapSmall

    SectionTitle {
        Layout.fillWidth: true
        text: qsTr("Findings")
    }
    // Rows that come and go stand in positioners: a layout of Qt 6.4 may lay out ones that are gone,
    // which ends the program.
    Column {
        Layout.fillWidth: true
        visible: list.source.findings.count > 0
        spacing: Tokens.gapSmall
        Repeater {
            model: list.source.findings
            FindingRow {
                width: parent?.width ?? 0
            }
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: list.source.answered && list.source.findings.count === 0
        text: qsTr("Nothing found that stands in the way.")
        color: Tokens.text
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Fold {
        objectName: "cautions"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: list.source.cautions.count > 0
        title: qsTr("Take care: %1").arg(list.source.cautions.words)
        colour: Tokens.caution
        inside: Component {
            Column {
                spacing: Tokens.gapSmall
                Repeater {
                    model: list.source.cautions
                    FindingRow {
                        width: parent?.width ?? 0
                    }
                }
            }
        }
    }
    Fold {
        objectName: "figures"
        Layout.fillWidth: true
        visible: list.source.figures.count > 0
        title: qsTr("Figures")
        inside: Component { RowsList { rows: list.source.figures } }
    }
    Fold {
        objectName: "working"
        Layout.fillWidth: true
        visible: list.source.working.count > 0
        title: qsTr("How it was worked out")
        inside: Component { RowsList { rows: list.source.working } }
    }
    Fold {
        objectName: "assumptions"
        Layout.fillWidth: true
        visible: list.source.assumptions.count > 0
        title: qsTr("What was assumed")
        inside: Component {
            Column {
                spacing: Tokens.gapSmall
                Repeater {
                    model: list.source.assumptions
                    FindingRow {
                        width: parent?.width ?? 0
                    }
                }
            }
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: text.length > 0
        text: list.source.closing
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
