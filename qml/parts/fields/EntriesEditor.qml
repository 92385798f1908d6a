// Entries of which the file may have several: one is picked, changed, added or taken out.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: editor

    required property ScenarioDocument document
    required property string table
    required property string adding     // what the button that adds says
    required property string removing
    property var kinds: []              // {key, name} each: what may be added; empty adds one kind
    property int chosen: 0
    property int least: 0               // so many have to stay
    readonly property int shown: Math.min(chosen, entries.count - 1)

    spacing: Tokens.gap
    onTableChanged: chosen = 0

    TableEntries {
        id: entries
        document: editor.document
        table: editor.table
    }
    FieldsModel {
        id: keys
        document: editor.document
        table: editor.table
        number: Math.max(0, editor.shown)
    }
    component Add: ActionButton {
        property string kind
        width: editor.width > 0 ? Math.min(implicitWidth, editor.width) : implicitWidth
        onClicked: {
            const number = entries.add(kind)
            if (number >= 0)
                editor.chosen = number
        }
    }

    Flow {
        id: picks
        Layout.fillWidth: true
        visible: entries.count > 0
        spacing: Tokens.gapSmall
        Accessible.role: Accessible.Grouping
        Repeater {
            model: entries.names
            ChoiceButton {
                required property string modelData
                required property int index
                objectName: "entry_" + index
                width: Math.min(implicitWidth, picks.width)
                text: modelData
                chosen: index === editor.shown
                onClicked: editor.chosen = index
            }
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: text.length > 0
        text: entries.trouble
        color: Tokens.stop
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    FieldsList {
        Layout.fillWidth: true
        visible: entries.count > 0
        fields: keys
    }
    Flow {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: editor.kinds
            Add {
                required property var modelData
                objectName: "add_" + modelData.key
                kind: modelData.key
                text: modelData.name
            }
        }
        Add {
            objectName: "addEntry"
            visible: editor.kinds.length === 0
            text: editor.adding
        }
        ActionButton {
            objectName: "removeEntry"
            width: editor.width > 0 ? Math.min(implicitWidth, editor.width) : implicitWidth
            visible: entries.count > editor.least
            text: editor.removing
            onClicked: entries.remove(editor.shown)
        }
    }
}
