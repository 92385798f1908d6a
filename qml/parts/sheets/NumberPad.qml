// A number typed with a finger: what is typed and how it reads, the units to pick from, the keys.
// A keyboard types into it as well.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

FocusScope {
    id: pad

    required property NumberEntry entry
    readonly property var signs: ["7", "8", "9", "4", "5", "6", "1", "2", "3", Look.decimalMark, "0", "/"]
    signal done()

    implicitHeight: column.implicitHeight
    Keys.onPressed: event => {
        event.accepted = true
        if (event.matches(StandardKey.Paste))
            pad.entry.pasteFromClipboard()
        else if (event.key === Qt.Key_Backspace)
            pad.entry.back()
        else if (event.key === Qt.Key_Delete)
            pad.entry.clear()
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && pad.entry.usable)
            pad.done()
        else if (event.text.length === 1 && "0123456789.,/-".includes(event.text))
            pad.entry.press(event.text)
        else
            event.accepted = false
    }

    ColumnLayout {
        id: column
        width: pad.width
        spacing: Tokens.gapSmall

        Rectangle {
            Layout.fillWidth: true
            implicitHeight: typed.implicitHeight + 2 * Tokens.gapSmall
            radius: Tokens.corner
            color: Tokens.well
            border.width: 2
            border.color: pad.entry.trouble.length > 0 ? Tokens.stop : Tokens.accent
            PlainText {
                id: typed
                objectName: "typed"
                anchors.fill: parent
                anchors.margins: Tokens.gapSmall
                text: pad.entry.typed.length > 0 ? Look.unitShown(pad.entry.typed + " " + pad.entry.unit) : Look.unitShown(pad.entry.example)
                color: pad.entry.typed.length > 0 ? Tokens.text : Tokens.outline
                font.pixelSize: Tokens.typeTitle
                font.bold: true
                wrapMode: Text.WrapAnywhere
                Accessible.role: Accessible.StaticText
                Accessible.name: pad.entry.label + ": " + (pad.entry.typed.length > 0 ? pad.entry.typed + " " + Look.unitSpoken(pad.entry.unit) : text)
            }
        }
        PlainText {
            objectName: "readsAs"
            Layout.fillWidth: true
            text: pad.entry.trouble.length > 0 ? pad.entry.trouble
                : pad.entry.usable ? qsTr("reads as %1").arg(pad.entry.readsAs) : qsTr("for example %1").arg(Look.unitShown(pad.entry.example))
            color: pad.entry.trouble.length > 0 ? Tokens.stop : Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Flow {
            Layout.fillWidth: true
            visible: pad.entry.units.length > 1
            spacing: Tokens.gapSmall
            Accessible.role: Accessible.Grouping
            Accessible.name: pad.entry.label
            Repeater {
                model: pad.entry.units.length > 1 ? pad.entry.units : []
                ChoiceButton {
                    required property string modelData
                    objectName: "unit_" + modelData
                    text: Look.unitShown(modelData)
                    spoken: Look.unitSpoken(modelData)
                    chosen: modelData === pad.entry.unit
                    onClicked: pad.entry.choose(modelData)
                }
            }
        }
        GridLayout {
            Layout.fillWidth: true
            columns: 3
            columnSpacing: Tokens.gapSmall
            rowSpacing: Tokens.gapSmall
            Repeater {
                model: pad.signs
                ActionButton {
                    required property string modelData
                    objectName: "key_" + modelData
                    Layout.preferredWidth: (pad.width - 2 * Tokens.gapSmall) / 3
                    main: true
                    text: modelData
                    spoken: modelData === Look.decimalMark ? qsTr("decimal mark") : modelData === "/" ? qsTr("divided by") : modelData
                    font.pixelSize: Tokens.typeTitle
                    onClicked: pad.entry.press(modelData)
                }
            }
        }
        GridLayout {
            Layout.fillWidth: true
            columns: Tokens.textScale > 1.3 ? 1 : 3
            columnSpacing: Tokens.gapSmall
            rowSpacing: Tokens.gapSmall
            ActionButton {
                objectName: "back"
                Layout.fillWidth: true
                text: "⌫"
                spoken: qsTr("Take the last sign away")
                autoRepeat: true
                onClicked: pad.entry.back()
            }
            ActionButton {
                objectName: "paste"
                Layout.fillWidth: true
                text: qsTr("Paste")
                onClicked: pad.entry.pasteFromClipboard()
            }
            ActionButton {
                objectName: "done"
                Layout.fillWidth: true
                main: true
                text: qsTr("Done")
                enabled: pad.entry.usable
                onClicked: pad.done()
            }
        }
    }
}
