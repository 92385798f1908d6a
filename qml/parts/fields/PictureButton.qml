// One of several to pick from, told by a line picture beside its name: the picked one has a filled
// mark in its corner, a heavier edge and bold words.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Templates as T
import Candlemark

T.Button {
    id: button

    required property bool chosen
    property bool several: false   // others may be picked beside it
    property string picture        // as LinePicture names it; empty for none
    property string detail
    property string spoken: text

    implicitWidth: 168
    implicitHeight: Math.max(Tokens.mainTarget, words.implicitHeight + 2 * Tokens.gapSmall, picture.length > 0 ? 64 : 0)
    leftPadding: Tokens.gapSmall
    rightPadding: Tokens.gapSmall
    topPadding: Tokens.gapSmall
    bottomPadding: Tokens.gapSmall
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

    contentItem: Item {
        LinePicture {
            id: drawn
            x: mark.width - 2
            visible: button.picture.length > 0
            anchors.verticalCenter: parent.verticalCenter
            width: visible ? 40 : 4
            height: 40
            name: button.picture
            ink: button.chosen ? Tokens.accent : Tokens.text
        }
        Column {
            id: words
            anchors.left: drawn.right
            anchors.leftMargin: drawn.visible ? Tokens.gapSmall : 0
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            PlainText {
                width: parent.width
                text: button.text
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                font.bold: button.chosen
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                visible: text.length > 0
                width: parent.width
                text: button.detail
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
        Rectangle {
            id: mark
            y: button.picture.length > 0 ? 0 : Math.round((parent.height - height) / 2)
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
