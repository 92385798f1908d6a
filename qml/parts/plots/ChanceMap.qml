// The chance of lasting as a map: packs downwards, panels to the right; the figure stands in each
// cell, so that the colour is not needed. A touch or the arrow keys pick a cell.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

FocusScope {
    id: map

    required property ChanceGrid grid
    property int row: -1      // of the picked cell
    property int column: -1
    readonly property int cell: Math.max(Tokens.touchTarget, Math.round(Tokens.typeSmall * 3))
    readonly property int across: grid.panels.length
    signal picked(int row, int column)

    implicitHeight: heading.height + (grid.packs.length + 1) * cell + 12
    activeFocusOnTab: true
    Accessible.role: Accessible.Table
    Accessible.name: qsTr("Chance of lasting, packs down and panels across")
    Accessible.description: map.grid.about(map.row, map.column)
    Accessible.focusable: true
    Keys.onLeftPressed: map.move(0, -1)
    Keys.onRightPressed: map.move(0, 1)
    Keys.onUpPressed: map.move(-1, 0)
    Keys.onDownPressed: map.move(1, 0)

    // The first key comes to the first cell.
    function move(down, right) {
        if (map.row < 0 || map.column < 0)
            map.pick(0, 0)
        else
            map.pick(map.row + down, map.column + right)
    }
    function pick(row, column) {
        if (row < 0 || column < 0 || row >= map.grid.packs.length || column >= map.across)
            return
        map.row = row
        map.column = column
        map.picked(row, column)
    }

    component Heading: PlainText {
        width: map.cell
        height: map.cell
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        color: Tokens.quietText
        font.pixelSize: Tokens.typeMark
        font.bold: true
        Accessible.ignored: true
    }

    PlainText {
        id: heading
        width: parent.width
        text: qsTr("Packs down, panels across; each figure is the chance in %")
        color: Tokens.quietText
        font.pixelSize: Tokens.typeMark
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
    Column {
        id: side
        anchors.top: heading.bottom
        Heading { text: "" }
        Repeater {
            model: map.grid.packs
            Heading {
                required property string modelData
                text: modelData
            }
        }
    }
    Flickable {
        id: sideways
        anchors.top: heading.bottom
        anchors.left: side.right
        anchors.right: parent.right
        height: (map.grid.packs.length + 1) * map.cell + 12
        contentWidth: map.across * map.cell
        contentHeight: height
        interactive: contentWidth > width + 1
        flickableDirection: Flickable.HorizontalFlick
        boundsBehavior: Flickable.StopAtBounds
        maximumFlickVelocity: Look.still ? 1 : 2500
        clip: true
        ScrollBar.horizontal: QuietBar {
            policy: sideways.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
        }

        Row {
            id: top
            Repeater {
                model: map.grid.panels
                Heading {
                    required property string modelData
                    text: modelData
                }
            }
        }
        Grid {
            id: cells
            objectName: "chanceCells"
            anchors.top: top.bottom
            columns: Math.max(1, map.across)
            Repeater {
                model: map.grid.cells
                Rectangle {
                    id: one
                    required property var modelData
                    required property int index
                    readonly property bool held: Math.floor(index / map.across) === map.row && index % map.across === map.column
                    width: map.cell
                    height: map.cell
                    Accessible.role: Accessible.Cell
                    Accessible.name: map.grid.about(Math.floor(index / map.across), index % map.across)
                    Accessible.selectable: true
                    Accessible.selected: held
                    Accessible.onPressAction: map.pick(Math.floor(index / map.across), index % map.across)
                    color: Tokens.chanceFills[modelData.step]
                    border.width: held ? 3 : 1
                    border.color: held ? Tokens.focus : Tokens.ground
                    PlainText {
                        anchors.centerIn: parent
                        text: one.modelData.text
                        color: Tokens.chanceInks[one.modelData.step]
                        font.pixelSize: Tokens.typeSmall
                        font.bold: one.held
                        Accessible.ignored: true
                    }
                }
            }
            TapHandler {
                onTapped: point => {
                    map.forceActiveFocus(Qt.MouseFocusReason)
                    map.pick(Math.floor(point.position.y / map.cell), Math.floor(point.position.x / map.cell))
                }
            }
        }
    }
    FocusRing {
        shown: map.activeFocus
    }
}
