// The number of an entry: what is typed, the keys, and the units beside them. A keyboard types into
// it as well.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

FocusScope {
    id: pad

    required property NoteDraft draft
    signal done()

    readonly property var signs: ["7", "8", "9", "4", "5", "6", "1", "2", "3", "-", "0", "."]
    readonly property string question: draft.ofOther
        ? (draft.kind === "meter" ? qsTr("in how long") : qsTr("what is drawn"))
        : draft.kind === "volts" ? (draft.unit === "%" ? qsTr("the display shows") : qsTr("the voltmeter shows"))
        : draft.kind === "meter" ? qsTr("the meter counted")
        : draft.kind === "sun" ? qsTr("the controller counted today") : qsTr("the thermometer shows")

    implicitHeight: column.implicitHeight
    Keys.onPressed: event => {
        event.accepted = true
        if (event.key === Qt.Key_Backspace)
            pad.draft.back()
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && pad.draft.ready)
            pad.done()
        else if (event.text.length === 1 && "0123456789.,".includes(event.text))
            pad.draft.press(event.text)
        else if (event.text === "-" && pad.draft.signedNumber)
            pad.draft.press("-")
        else
            event.accepted = false
    }

    component Key: ActionButton {
        Layout.fillWidth: true
        Layout.preferredWidth: (pad.width - 3 * Tokens.gapSmall) / 4
        leftPadding: 2
        rightPadding: 2
        implicitHeight: Math.max(Tokens.touchTarget, implicitContentHeight + 4)
        main: true
        font.pixelSize: Tokens.typeTitle
    }

    component Unit: Key {
        id: key
        required property string unit
        readonly property bool chosen: unit === pad.draft.unit
        objectName: "unit_" + unit
        Layout.fillHeight: true
        text: Look.unitShown(unit)
        spoken: Look.unitSpoken(unit)
        main: chosen
        font.bold: chosen
        font.pixelSize: Tokens.typeBody
        visible: unit.length > 0
        onClicked: pad.draft.choose(unit)
        Accessible.role: Accessible.RadioButton
        Accessible.checkable: true
        Accessible.checked: chosen

        SpokenAs {
            item: key
            role: Accessible.RadioButton
            checkable: true
            checked: key.chosen
        }
    }

    ColumnLayout {
        id: column
        width: pad.width
        spacing: Tokens.gapSmall

        Rectangle {
            Layout.fillWidth: true
            implicitHeight: Math.max(Tokens.touchTarget, typed.implicitHeight + Tokens.gapSmall)
            radius: Tokens.corner
            color: Tokens.well
            border.width: 2
            border.color: pad.activeFocus ? Tokens.accent : Tokens.outline
            PlainText {
                id: typed
                objectName: "typed"
                anchors.left: parent.left
                anchors.right: parent.right
                anchors.margins: Tokens.gap
                anchors.verticalCenter: parent.verticalCenter
                text: pad.draft.typed.length > 0 ? pad.draft.typed : pad.question
                color: pad.draft.typed.length > 0 ? Tokens.text : Tokens.quietText
                font.pixelSize: pad.draft.typed.length > 0 ? Tokens.typeSentenceTight : Tokens.typeBody
                font.bold: pad.draft.typed.length > 0
                wrapMode: Text.Wrap
                Accessible.role: Accessible.StaticText
                Accessible.name: pad.question + ": " + pad.draft.typed + (pad.draft.typed.length > 0 ? " " + Look.unitSpoken(pad.draft.unit) : "")
            }
            TapHandler {
                onTapped: pad.draft.typeReading()
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Tokens.gapSmall

            GridLayout {
                Layout.fillWidth: true
                columns: 3
                columnSpacing: Tokens.gapSmall
                rowSpacing: Tokens.gapSmall
                Repeater {
                    model: pad.signs
                    Key {
                        required property string modelData
                        objectName: "key_" + modelData
                        text: modelData === "-" ? "±" : modelData === "." ? Look.decimalMark : modelData
                        spoken: modelData === "-" ? qsTr("below nought") : modelData === "." ? qsTr("decimal mark") : text
                        enabled: modelData !== "-" || pad.draft.signedNumber
                        onClicked: pad.draft.press(modelData)
                    }
                }
            }
            ColumnLayout {
                Layout.maximumWidth: (pad.width - 3 * Tokens.gapSmall) / 4
                Layout.minimumWidth: (pad.width - 3 * Tokens.gapSmall) / 4
                spacing: Tokens.gapSmall
                Unit { unit: pad.draft.units[0] ?? "" }
                Unit { unit: pad.draft.units[1] ?? "" }
                Key {
                    objectName: "back"
                    Layout.fillHeight: true
                    text: "⌫"
                    main: false
                    spoken: qsTr("Take the last sign away")
                    autoRepeat: true
                    onClicked: pad.draft.back()
                }
            }
        }
    }
}
