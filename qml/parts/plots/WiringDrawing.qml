// The build drawn from left to right: packs, leads, bus, inverter, branches. A touch on a part
// tells what was found about it. Where it is wider than its place it scrolls sideways.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import Candlemark

Flickable {
    id: drawing

    required property WiringPicture picture
    property int chosen: -1   // the box that was touched
    readonly property real growth: Math.max(1, Tokens.textScale)
    readonly property real cellWidth: Math.max(Math.round(176 * growth), width / Math.max(1, picture.width))
    readonly property real cellHeight: Math.round(116 * growth)
    readonly property int captionHeight: Math.round(Tokens.typeMark * 1.3)
    readonly property int edge: 8

    implicitHeight: picture.height * cellHeight + (interactive ? 14 : 4)
    contentWidth: picture.width * cellWidth
    contentHeight: picture.height * cellHeight
    flickableDirection: Flickable.HorizontalFlick
    interactive: contentWidth > width + 1
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    ScrollBar.horizontal: QuietBar {
        policy: drawing.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The build")
    Accessible.description: picture.spoken

    function colourOf(mark) {
        return mark === "stop" ? Tokens.stop : mark === "caution" ? Tokens.caution : mark === "note" ? Tokens.note : Tokens.outline
    }

    Repeater {
        model: drawing.picture.pieces
        Rectangle {
            required property var modelData
            readonly property int thick: modelData.mark === "stop" ? 5 : 3
            x: modelData.x * drawing.cellWidth - thick / 2
            y: modelData.y * drawing.cellHeight - thick / 2 + drawing.captionHeight / 2
            width: modelData.across * drawing.cellWidth + thick
            height: modelData.down * drawing.cellHeight + thick
            color: drawing.colourOf(modelData.mark)
        }
    }
    Repeater {
        model: drawing.picture.boxes
        Item {
            id: cell
            required property var modelData
            required property int index
            x: (modelData.x - 0.5) * drawing.cellWidth
            y: (modelData.y - modelData.height / 2) * drawing.cellHeight
            width: drawing.cellWidth
            height: modelData.height * drawing.cellHeight

            PlainText {
                x: drawing.edge
                width: parent.width - 2 * drawing.edge
                height: drawing.captionHeight
                text: cell.modelData.caption
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 9
                Accessible.ignored: true
            }
            T.Button {
                id: box
                readonly property string spoken: cell.modelData.spoken
                objectName: "box_" + cell.index
                x: drawing.edge
                y: drawing.captionHeight + 2
                width: parent.width - 2 * drawing.edge
                height: parent.height - y - 6
                focusPolicy: Qt.StrongFocus
                Accessible.role: Accessible.Button
                Accessible.name: spoken
                onClicked: drawing.chosen = drawing.chosen === cell.index ? -1 : cell.index
                Keys.onReturnPressed: box.clicked()

                background: Rectangle {
                    radius: 6
                    color: box.down ? Tokens.pressed : Tokens.surface
                    border.width: drawing.chosen === cell.index || box.visualFocus ? 3 : cell.modelData.mark.length > 0 ? 2 : 1
                    border.color: box.visualFocus ? Tokens.focus : drawing.chosen === cell.index ? Tokens.accent : drawing.colourOf(cell.modelData.mark)
                }
                contentItem: Item {
                    SeverityMark {
                        id: plate
                        visible: cell.modelData.mark.length > 0
                        x: parent.width - width - 4
                        y: 4
                        width: 20
                        height: 20
                        mark: cell.modelData.mark
                        colour: drawing.colourOf(cell.modelData.mark)
                        ink: Tokens.dark ? Tokens.ground : Tokens.accentInk
                    }
                    Column {
                        x: 6
                        width: parent.width - 12
                        anchors.verticalCenter: parent.verticalCenter
                        PlainText {
                            width: parent.width - (plate.visible ? 20 : 0)
                            text: cell.modelData.title
                            color: Tokens.text
                            font.pixelSize: Tokens.typeMark
                            font.bold: true
                            wrapMode: Text.Wrap
                            Accessible.ignored: true
                        }
                        PlainText {
                            width: parent.width
                            visible: text.length > 0
                            text: cell.modelData.detail
                            color: Tokens.quietText
                            font.pixelSize: Tokens.typeMark
                            wrapMode: Text.Wrap
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
}
