// Something laid over the page until it is closed: a list to pick from, a number to type.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtQuick.Templates as T
import Candlemark

Popup {
    id: sheet

    required property string title
    property int breadth: 460
    default property alias content: body.data
    property alias foot: ending.data   // below what scrolls, always in sight

    parent: T.Overlay.overlay
    modal: true
    focus: true
    padding: Tokens.gap
    width: Math.min(parent ? parent.width - 2 * Tokens.gapSmall : breadth,
                    Math.round(breadth * Math.max(1, Tokens.textScale * 0.85)))
    height: Math.min(parent ? parent.height - 2 * Tokens.gapSmall : 600,
                     top.height + Tokens.gap + body.implicitHeight + ending.room + 2 * padding)
    x: parent ? Math.round((parent.width - width) / 2) : 0
    y: parent ? Math.round((parent.height - height) / 2) : 0
    closePolicy: Popup.CloseOnEscape | Popup.CloseOnPressOutside
    enter: null
    exit: null
    T.Overlay.modal: Rectangle { color: Tokens.veil }
    background: Rectangle {
        color: Tokens.surface
        radius: Tokens.corner
        border.width: 1
        border.color: Tokens.outline
    }
    contentItem: Item {
        id: inside
        focus: true
        Keys.onPressed: event => event.accepted = keys.press(event.key, scroll.interactive ? scroll : null)

        SpokenAs {
            item: inside.parent
            role: Accessible.Dialog
            name: sheet.title
        }
        KeyScroll {
            id: keys
        }
        Item {
            id: top
            width: parent.width
            height: Math.max(heading.implicitHeight, close.height)
            PlainText {
                id: heading
                width: parent.width - close.width - Tokens.gapSmall
                anchors.verticalCenter: parent.verticalCenter
                text: sheet.title
                color: Tokens.text
                font.pixelSize: Tokens.typeTitle
                font.bold: true
                wrapMode: Text.Wrap
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }
            ActionButton {
                id: close
                objectName: "close"
                anchors.right: parent.right
                width: Math.max(Tokens.touchTarget, implicitHeight)
                leftPadding: 0
                rightPadding: 0
                text: "✕"
                spoken: qsTr("Close")
                onClicked: sheet.close()
            }
        }
        Flickable {
            id: scroll
            anchors.top: top.bottom
            anchors.topMargin: Tokens.gap
            anchors.bottom: parent.bottom
            anchors.bottomMargin: ending.room
            width: parent.width
            contentWidth: width
            contentHeight: body.implicitHeight
            interactive: contentHeight > height + 1
            boundsBehavior: Flickable.StopAtBounds
            maximumFlickVelocity: Look.still ? 1 : 2500
            clip: true
            ScrollBar.vertical: QuietBar {
                policy: scroll.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            }
            ColumnLayout {
                id: body
                width: scroll.width - (scroll.interactive ? Tokens.gap : 0)
                spacing: Tokens.gapSmall
            }
        }
        ColumnLayout {
            id: ending
            readonly property real room: implicitHeight > 0 ? implicitHeight + Tokens.gapSmall : 0
            anchors.bottom: parent.bottom
            width: parent.width
            spacing: Tokens.gapSmall
        }
    }
}
