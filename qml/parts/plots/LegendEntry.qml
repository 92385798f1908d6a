// The look of a series or a wax, and its word.
import QtQuick
import Candlemark

Item {
    id: entry

    required property string kind  // as Swatch knows it
    required property string text
    property int place: 0          // of a stack, from below

    width: parent ? Math.min(implicitWidth, parent.width) : implicitWidth
    implicitWidth: swatch.width + Tokens.gapSmall + word.implicitWidth
    implicitHeight: Math.max(18, word.implicitHeight)

    Swatch {
        id: swatch
        width: 24
        height: 16
        anchors.verticalCenter: parent.verticalCenter
        kind: entry.kind
        place: entry.place
        stack: Tokens.stacks[entry.place % Tokens.stacks.length]
        end: Tokens.end
        stop: Tokens.stop
        storedHalf: Tokens.storedHalf
        dayGround: Tokens.dayGround
        nightMark: Tokens.nightMark
        wax: Tokens.wax
        sunWax: Tokens.sunWax
        scratch: Tokens.scratch
        ghost: Tokens.ghost
        stored: Tokens.stored
        storedRange: Tokens.storedRange
        sun: Tokens.sun
        night: Tokens.night
    }
    PlainText {
        id: word
        anchors.left: swatch.right
        anchors.leftMargin: Tokens.gapSmall
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        text: entry.text
        color: Tokens.quietText
        font.pixelSize: Tokens.typeMark
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
