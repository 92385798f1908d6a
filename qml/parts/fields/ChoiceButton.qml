// One of several to pick from: the picked one has a filled mark, a heavier edge and bold words.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: button

    required property bool chosen
    property bool several: false   // others may be picked beside it
    property string detail
    property string spoken: text

    // Measured unwrapped and bold, so that it does not change with what is picked.
    implicitWidth: Math.max(Tokens.touchTarget, Math.ceil(14 + Tokens.gapSmall + Math.max(wordLength.advanceWidth, moreLength.advanceWidth) + 2
                                                          + leftPadding + rightPadding))
    implicitHeight: Math.max(Tokens.touchTarget, words.implicitHeight + Tokens.gapSmall)
    leftPadding: 12
    rightPadding: 12
    focusPolicy: Qt.StrongFocus
    checkable: false
    Accessible.role: several ? Accessible.CheckBox : Accessible.RadioButton
    Accessible.name: detail.length > 0 ? spoken + ", " + detail : spoken
    Accessible.checkable: true
    Accessible.checked: chosen
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    // By which a screen reader picks it.
    function accessibleToggleAction() {
        button.clicked()
    }
    SpokenAs {
        item: button
        role: button.several ? Accessible.CheckBox : Accessible.RadioButton
        checkable: true
        checked: button.chosen
    }
    TextMetrics {
        id: wordLength
        text: button.text
        font.family: word.font.family
        font.pixelSize: Tokens.typeSmall
        font.bold: true
    }
    TextMetrics {
        id: moreLength
        text: button.detail
        font.family: word.font.family
        font.pixelSize: Tokens.typeMark
    }

    contentItem: Item {
        Rectangle {
            id: mark
            anchors.verticalCenter: parent.verticalCenter
            width: 14
            height: 14
            radius: button.several ? 3 : 7
            color: "transparent"
            border.width: 2
            border.color: button.chosen ? Tokens.accent : Tokens.outline
            Rectangle {
                anchors.centerIn: parent
                visible: button.chosen
                width: 6
                height: 6
                radius: button.several ? 1 : 3
                color: Tokens.accent
            }
        }
        Column {
            id: words
            anchors.left: mark.right
            anchors.leftMargin: Tokens.gapSmall
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            PlainText {
                id: word
                width: parent.width
                text: button.text
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                font.bold: button.chosen
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                id: more
                visible: text.length > 0
                width: parent.width
                text: button.detail
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        radius: Tokens.corner
        color: button.down ? Tokens.pressed : button.chosen ? Tokens.raised : Tokens.surface
        border.width: button.chosen ? 2 : 1
        border.color: button.chosen ? Tokens.accent : Tokens.outline

        FocusRing {
            shown: button.visualFocus
        }
    }
}
