// The hours of a day in which something happens: each span with a button to move either end, and
// spans to add.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: field

    required property var spans   // of "06:30-08:00"
    required property string silent
    signal added(string span)
    signal removed(int number)
    signal moved(int number, bool itsEnd, int minutes)

    readonly property int step: 30  // minutes

    spacing: Tokens.gapSmall

    component Small: ActionButton {
        implicitWidth: Math.max(Tokens.touchTarget, implicitHeight)
        leftPadding: 0
        rightPadding: 0
    }
    component Clock: Row {
        id: clock
        required property string at
        required property string name
        signal turned(int minutes)
        spacing: 4
        Small {
            text: "−"
            spoken: qsTr("%1 half an hour earlier").arg(clock.name)
            autoRepeat: true
            onClicked: clock.turned(-field.step)
        }
        PlainText {
            width: Math.max(56, implicitWidth)
            height: Tokens.touchTarget
            text: clock.at
            color: Tokens.text
            font.pixelSize: Tokens.typeBody
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.role: Accessible.StaticText
            Accessible.name: clock.name + " " + text
        }
        Small {
            text: "+"
            spoken: qsTr("%1 half an hour later").arg(clock.name)
            autoRepeat: true
            onClicked: clock.turned(field.step)
        }
    }

    PlainText {
        Layout.fillWidth: true
        visible: field.spans.length === 0
        text: field.silent
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: field.spans
        Flow {
            id: span
            required property string modelData
            required property int index
            readonly property var ends: modelData.split("-")
            Layout.fillWidth: true
            spacing: Tokens.gapSmall
            Accessible.role: Accessible.Grouping
            Accessible.name: modelData
            Clock {
                at: span.ends[0]
                name: qsTr("from")
                onTurned: minutes => field.moved(span.index, false, minutes)
            }
            Clock {
                at: span.ends[1] ?? ""
                name: qsTr("to")
                onTurned: minutes => field.moved(span.index, true, minutes)
            }
            Small {
                text: "✕"
                spoken: qsTr("Take %1 out").arg(span.modelData)
                onClicked: field.removed(span.index)
            }
        }
    }
    Flow {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        ActionButton {
            objectName: "addMorning"
            text: qsTr("+ morning")
            onClicked: field.added("06:00-09:00")
        }
        ActionButton {
            objectName: "addEvening"
            text: qsTr("+ evening")
            onClicked: field.added("17:00-22:00")
        }
        ActionButton {
            objectName: "addNight"
            text: qsTr("+ night")
            onClicked: field.added("22:00-06:00")
        }
    }
}
