// All findings, the gravest first; below them the hazards, what was assumed, and the last word.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: list

    required property PlanRunner plan
    property bool assumptionsShown: false

    spacing: Tokens.gapSmall

    SectionTitle {
        Layout.fillWidth: true
        text: qsTr("Findings")
    }
    Repeater {
        model: list.plan.findings
        FindingRow {
            Layout.fillWidth: true
        }
    }
    Text {
        Layout.fillWidth: true
        visible: list.plan.findings.count === 0
        text: qsTr("Nothing found that stands in the way.")
        color: Tokens.text
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    SectionTitle {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: list.plan.cautions.count > 0
        text: qsTr("Take care")
    }
    Repeater {
        model: list.plan.cautions
        FindingRow {
            Layout.fillWidth: true
        }
    }
    ActionButton {
        objectName: "assumptions"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: list.plan.assumptions.count > 0
        text: list.assumptionsShown ? qsTr("Hide what was assumed") : qsTr("What was assumed")
        onClicked: list.assumptionsShown = !list.assumptionsShown
    }
    Repeater {
        model: list.assumptionsShown ? list.plan.assumptions : null
        FindingRow {
            Layout.fillWidth: true
        }
    }
    Text {
        Layout.fillWidth: true
        visible: text.length > 0
        text: list.plan.closing
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
