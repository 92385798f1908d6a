// The way to a page: its name beside a scratch, as the hours stand beside theirs on the candle.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: button

    required property bool current
    required property bool upright  // the scratch stands above the word instead of before it
    property string digit           // the key that does the same; empty where there is none
    property string spoken: text

    implicitWidth: name.implicitWidth + (upright ? 2 * Tokens.gapSmall : Tokens.scratchLong + 2 * Tokens.gapSmall)
    implicitHeight: Math.max(Tokens.touchTarget, name.implicitHeight + 2 * Tokens.gapSmall)
    focusPolicy: Qt.StrongFocus
    checkable: false
    Accessible.role: Accessible.PageTab
    Accessible.name: spoken
    Accessible.selectable: true
    Accessible.selected: current
    Accessible.description: digit.length > 0 ? qsTr("Key %1").arg(digit) : ""
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    SpokenAs {
        item: button
        role: Accessible.PageTab
    }

    contentItem: Item {
        PlainText {
            id: name
            x: button.upright ? 0 : Tokens.scratchLong + Tokens.gapSmall
            width: parent.width - x - (key.visible ? key.width + Tokens.gapSmall : 0)
            wrapMode: button.upright ? Text.NoWrap : Text.Wrap
            anchors.verticalCenter: parent.verticalCenter
            anchors.verticalCenterOffset: button.upright ? 3 : 0
            horizontalAlignment: button.upright ? Text.AlignHCenter : Text.AlignLeft
            text: button.text
            color: button.current ? Tokens.accent : Tokens.text
            font.pixelSize: button.upright ? Tokens.typeSmall : Tokens.typeBody
            font.bold: button.current
            Accessible.ignored: true
        }
        PlainText {
            id: key
            visible: !button.upright && button.digit.length > 0
            anchors.right: parent.right
            anchors.rightMargin: Tokens.gapSmall
            anchors.verticalCenter: parent.verticalCenter
            text: button.digit
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            Accessible.ignored: true
        }
    }
    background: Rectangle {
        color: button.down ? Tokens.pressed : button.current ? Tokens.raised : "transparent"
        Rectangle {
            x: button.upright ? Math.round((parent.width - width) / 2) : 0
            y: button.upright ? 0 : Math.round((parent.height - height) / 2)
            width: button.upright ? (button.current ? Tokens.scratchLong : 2)
                                  : (button.current ? Tokens.scratchLong : Tokens.scratchShort)
            height: button.upright ? (button.current ? 4 : Tokens.scratchShort / 2)
                                   : (button.current ? 4 : 2)
            color: button.current ? Tokens.accent : Tokens.outline
        }
        Rectangle {
            anchors.fill: parent
            anchors.margins: 1
            visible: button.visualFocus
            radius: Tokens.corner / 2
            color: "transparent"
            border.width: Tokens.focusWidth
            border.color: Tokens.focus
        }
    }
}
