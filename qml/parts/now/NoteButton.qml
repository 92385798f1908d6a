// A large button with a sign over its word, to be hit in the dark.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: button

    required property string sign
    property string spoken: text
    readonly property color ink: enabled ? Tokens.text : Tokens.outline

    implicitHeight: Math.max(72, words.implicitHeight + 2 * Tokens.gapSmall)
    leftPadding: 4
    rightPadding: 4
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: Item {
        Column {
            id: words
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            PlainText {
                width: parent.width
                text: button.sign
                color: button.enabled ? Tokens.accent : Tokens.outline
                font.pixelSize: Tokens.typeTitle
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
            PlainText {
                width: parent.width
                text: button.text
                color: button.ink
                font.pixelSize: Tokens.typeName
                horizontalAlignment: Text.AlignHCenter
                wrapMode: Text.WordWrap
                // A long word is set a little smaller rather than broken.
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 12
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Tokens.corner
        color: !button.enabled ? "transparent" : button.down ? Tokens.pressed : Tokens.raised
        border.width: 1
        border.color: button.enabled ? Tokens.outline : Tokens.hairline

        FocusRing {
            shown: button.visualFocus
        }
    }
}
