// A date, and a time of day where there is one, each part between two buttons.
import QtQuick
import Candlemark

Flow {
    id: field

    required property string shown   // "2026-01-14T18:00:00" or "2026-01-14"
    readonly property string date: shown.slice(0, 10)
    readonly property string time: shown.slice(11, 16)
    signal moved(int months, int days, int minutes)

    spacing: Tokens.gapSmall

    component Small: ActionButton {
        implicitWidth: Math.max(Tokens.touchTarget, implicitHeight)
        leftPadding: 0
        rightPadding: 0
        autoRepeat: true
    }
    component Turned: Row {
        id: part
        required property string name
        required property string held
        signal turned(int by)
        spacing: 4
        Small {
            objectName: "less"
            text: "−"
            spoken: qsTr("%1 earlier").arg(part.name)
            onClicked: part.turned(-1)
        }
        PlainText {
            width: Math.max(64, implicitWidth)
            height: Tokens.touchTarget
            text: part.held
            color: Tokens.text
            font.pixelSize: Tokens.typeBody
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.role: Accessible.StaticText
            Accessible.name: part.name + " " + text
        }
        Small {
            objectName: "more"
            text: "+"
            spoken: qsTr("%1 later").arg(part.name)
            onClicked: part.turned(1)
        }
    }

    Turned {
        objectName: "month"
        name: qsTr("month")
        held: field.date.slice(0, 7)
        onTurned: by => field.moved(by, 0, 0)
    }
    Turned {
        objectName: "day"
        name: qsTr("day")
        held: field.date.slice(8)
        onTurned: by => field.moved(0, by, 0)
    }
    Turned {
        objectName: "hour"
        visible: field.time.length > 0
        name: qsTr("hour")
        held: field.time
        onTurned: by => field.moved(0, 0, 60 * by)
    }
}
