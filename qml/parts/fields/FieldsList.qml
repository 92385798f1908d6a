// The fields of one table of the scenario, and the sheet in which one of them is typed.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: list

    required property FieldsModel fields

    spacing: Tokens.gap

    function type(key) {
        entry.begin(list.fields.asked(key))
        typing.open()
    }

    NumberEntry {
        id: entry
    }
    Repeater {
        model: list.fields
        FieldRow {
            Layout.fillWidth: true
            onAsked: key => {
                if (kind === "words")
                    naming.ask(key, label, given ? shown : "")
                else
                    list.type(key)
            }
            onPut: value => list.fields.put(key, value)
            onStep: by => list.fields.step(key, by)
            onTurned: value => list.fields.turn(key, value)
            onMomentMoved: (months, days, minutes) => list.fields.moveMoment(key, months, days, minutes)
            onHoursAdded: span => list.fields.addHours(key, span)
            onHoursRemoved: number => list.fields.removeHours(key, number)
            onHoursMoved: (number, itsEnd, minutes) => list.fields.moveHours(key, number, itsEnd, minutes)
        }
    }
    Sheet {
        id: typing
        title: entry.label
        breadth: 380
        onOpened: pad.forceActiveFocus(Qt.PopupFocusReason)

        NumberPad {
            id: pad
            objectName: "pad"
            Layout.fillWidth: true
            entry: entry
            onDone: {
                list.fields.put(entry.key, entry.value())
                typing.close()
            }
        }
        ActionButton {
            objectName: "leaveOpen"
            Layout.fillWidth: true
            visible: entry.optional
            text: qsTr("Leave it open")
            onClicked: {
                list.fields.put(entry.key, "")
                typing.close()
            }
        }
    }
    WordsSheet {
        id: naming
        onDone: (key, words) => list.fields.put(key, words)
    }
}
