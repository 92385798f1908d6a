// A button for a finger: a word or a sign, a visible edge, a focus ring.
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: button

    property string spoken: text  // what a screen reader says
    property color colour: Tokens.text
    property bool main: false     // the action the screen is for
    property bool atLeft: false   // the word stands at the left
    property bool quiet: false    // the word tells what holds by itself

    implicitWidth: Math.max(implicitHeight, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(main ? Tokens.mainTarget : Tokens.touchTarget,
                             implicitContentHeight + Tokens.gapSmall)
    leftPadding: Tokens.gap
    rightPadding: Tokens.gap
    focusPolicy: Qt.StrongFocus
    font.pixelSize: Tokens.typeBody
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: PlainText {
        text: button.text
        font: button.font
        color: !button.enabled ? Tokens.outline : button.quiet ? Tokens.quietText : button.main ? Tokens.accent : button.colour
        horizontalAlignment: button.atLeft ? Text.AlignLeft : Text.AlignHCenter
        wrapMode: Text.Wrap
        verticalAlignment: Text.AlignVCenter
        Accessible.ignored: true
    }
    background: Rectangle {
        radius: Tokens.corner
        color: !button.enabled ? "transparent"
             : button.down ? Tokens.pressed : Tokens.raised
        border.width: 1
        border.color: button.enabled ? Tokens.outline : Tokens.hairline

        FocusRing {
            shown: button.visualFocus
        }
    }
}
