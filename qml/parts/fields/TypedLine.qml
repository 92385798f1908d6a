// A line to type into, with its own edge and focus.
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.TextField {
    id: line

    required property string label
    property string hint
    signal entered()

    implicitHeight: Math.max(Tokens.touchTarget, contentHeight + 2 * Tokens.gapSmall)
    leftPadding: Tokens.gap
    rightPadding: Tokens.gap
    verticalAlignment: TextInput.AlignVCenter
    color: Tokens.text
    selectionColor: Tokens.accent
    selectedTextColor: Tokens.accentInk
    // A screen reader is told this beside the label, and not what the label says already.
    placeholderText: hint === label ? "" : hint
    font.pixelSize: Tokens.typeBody
    inputMethodHints: Qt.ImhNoPredictiveText
    Accessible.role: Accessible.EditableText
    Accessible.name: label
    onAccepted: line.entered()

    PlainText {
        anchors.fill: parent
        leftPadding: line.leftPadding
        rightPadding: line.rightPadding
        visible: line.text.length === 0 && line.preeditText.length === 0
        text: line.hint
        verticalAlignment: Text.AlignVCenter
        color: Tokens.outline
        font: line.font
        fontSizeMode: Text.HorizontalFit   // rather than cut
        minimumPixelSize: Math.round(0.5 * line.font.pixelSize)
        elide: Text.ElideRight
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Tokens.corner
        color: Tokens.well
        border.width: line.activeFocus ? 3 : 1
        border.color: line.activeFocus ? Tokens.accent : Tokens.outline
    }
}
