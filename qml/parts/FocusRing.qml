// Shows where the keyboard is: a ring outside the part it belongs to.
import QtQuick
import Candlemark

Rectangle {
    required property bool shown

    anchors.fill: parent
    anchors.margins: -Tokens.focusWidth - 1
    radius: Tokens.corner + Tokens.focusWidth
    color: "transparent"
    border.width: Tokens.focusWidth
    border.color: Tokens.focus
    visible: shown
}
