// Cells of one size in rows. They are placed by arithmetic: a positioner whose children hang on its
// own width may lay out for ever.
import QtQuick
import Candlemark

Item {
    id: grid

    property int columns: 3
    property alias model: repeater.model
    default property alias cell: repeater.delegate

    readonly property real cellWidth: Math.floor((width - (columns - 1) * Tokens.gapSmall) / columns)
    readonly property real cellHeight: {
        let tallest = 0
        for (let i = 0; i < repeater.count; ++i)
            tallest = Math.max(tallest, repeater.itemAt(i)?.implicitHeight ?? 0)
        return tallest
    }

    implicitHeight: Math.ceil(repeater.count / columns) * (cellHeight + Tokens.gapSmall) - Tokens.gapSmall

    Repeater {
        id: repeater
        onItemAdded: (index, item) => {
            item.x = Qt.binding(() => (index % grid.columns) * (grid.cellWidth + Tokens.gapSmall))
            item.y = Qt.binding(() => Math.floor(index / grid.columns) * (grid.cellHeight + Tokens.gapSmall))
            item.width = Qt.binding(() => grid.cellWidth)
            item.height = Qt.binding(() => grid.cellHeight)
        }
    }
}
