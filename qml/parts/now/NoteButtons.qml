// Six large buttons, all of one size: what was read, done or seen is written down by them.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

EvenGrid {
    id: buttons

    signal asked(string kind)

    readonly property var kinds: [
        { kind: "volts", sign: "V", word: qsTr("Volts"), spoken: qsTr("Write down the volts or the display of a pack") },
        { kind: "meter", sign: "kWh", word: qsTr("Meter"), spoken: qsTr("Write down a plug-in meter") },
        { kind: "sun", sign: "Wh", word: qsTr("Sun"), spoken: qsTr("Write down what the controller counted today") },
        { kind: "thermometer", sign: Look.units === "us" ? "°F" : "°C", word: qsTr("Warmth"), spoken: qsTr("Write down a thermometer") },
        { kind: "switched", sign: "I/O", word: qsTr("Switched"), spoken: qsTr("Write down what was switched on or off") },
        { kind: "happened", sign: "!", word: qsTr("Happened"), spoken: qsTr("Write down what happened") }
    ]

    model: kinds
    NoteButton {
        required property var modelData
        objectName: "note_" + modelData.kind
        sign: modelData.sign
        text: modelData.word
        spoken: modelData.spoken
        enabled: buttons.enabled
        onClicked: buttons.asked(modelData.kind)
    }
}
