// What stands at the moment looked at, beside it in the plot; a touch opens how it was worked out.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: out

    required property DaysModel days
    required property real at      // x of the moment
    required property real room    // width of the plot
    readonly property string spoken: qsTr("%1, %2. How it was worked out").arg(days.momentTime).arg(days.momentText)

    x: at + 12 + width <= room ? at + 12 : Math.max(0, at - 12 - width)
    width: Math.min(words.implicitWidth + 2 * Tokens.gapSmall, room)
    height: Math.max(Tokens.touchTarget, words.implicitHeight + Tokens.gapSmall)
    focusPolicy: Qt.NoFocus
    Accessible.role: Accessible.Button
    Accessible.name: spoken

    contentItem: Item {
        Column {
            id: words
            x: Tokens.gapSmall
            y: Tokens.gapSmall / 2
            PlainText {
                text: out.days.momentTime
                color: Tokens.text
                font.pixelSize: Tokens.typeMark
                font.bold: true
                Accessible.ignored: true
            }
            Repeater {
                model: out.days.momentLines
                PlainText {
                    required property string modelData
                    text: modelData
                    color: Tokens.text
                    font.pixelSize: Tokens.typeMark
                    Accessible.ignored: true
                }
            }
        }
    }
    background: Rectangle {
        radius: Tokens.corner
        color: Tokens.surface
        border.width: 2
        border.color: Tokens.outline
    }
}
