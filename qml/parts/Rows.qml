// Rows that come and go, one below the other. They stand in a positioner: a layout of Qt 6.4 may lay
// out rows that are gone, which ends the program.
import QtQuick
import Candlemark

Column {
    id: rows

    property alias model: repeater.model
    required property Component row   // as wide as `parent?.width ?? 0`
    readonly property alias count: repeater.count

    visible: repeater.count > 0
    spacing: Tokens.gapSmall

    Repeater {
        id: repeater
        delegate: rows.row
    }
}
