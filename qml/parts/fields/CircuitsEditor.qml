// The circuits of the unit, and the parts of the one that is picked, from its beginning outwards.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: editor

    required property ScenarioDocument document

    spacing: Tokens.gap

    EntriesEditor {
        id: circuits
        objectName: "circuits"
        Layout.fillWidth: true
        document: editor.document
        table: "circuit"
        adding: qsTr("Add a circuit")
        removing: qsTr("Take this circuit out")
    }
    SectionTitle {
        Layout.fillWidth: true
        visible: circuits.shown >= 0
        text: qsTr("Its parts, from where it begins outwards")
    }
    EntriesEditor {
        objectName: "links"
        Layout.fillWidth: true
        visible: circuits.shown >= 0
        document: editor.document
        table: "circuit[" + Math.max(0, circuits.shown) + "].links"
        least: 1
        adding: ""
        removing: qsTr("Take this part out")
        kinds: [
            { key: "fuse", name: qsTr("+ fuse") },
            { key: "switch", name: qsTr("+ switch") },
            { key: "wire", name: qsTr("+ wire") },
            { key: "connector", name: qsTr("+ connector") },
            { key: "outlet", name: qsTr("+ outlet") }
        ]
    }
}
