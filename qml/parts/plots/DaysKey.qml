// What the marks of the plot mean.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Flow {
    id: key

    required property DaysModel days

    spacing: 4
    leftPadding: 0

    component Entry: LegendEntry {
        width: parent ? Math.min(implicitWidth + Tokens.gapSmall, parent.width) : implicitWidth
    }
    Entry { kind: "band"; text: key.days.hasFan ? qsTr("stored: likely, 5 and 8 of 10") : qsTr("stored: likely, 8 of 10") }
    Entry { kind: "end"; text: qsTr("the end: likely, 8 of 10") }
    Entry { kind: "empty"; text: qsTr("empty") }
    Repeater {
        model: key.days.stacks
        Entry {
            required property int modelData
            required property int index
            kind: "stack"
            place: index
            text: modelData === 0 ? qsTr("loads") : index === 0 ? qsTr("loads, priority %1").arg(modelData) : modelData
        }
    }
    Entry { kind: "sun"; text: qsTr("sun") }
    Entry { kind: "night"; text: qsTr("night") }
}
