// Figures or steps of the working, one below the other.
import QtQuick
import Candlemark

Column {
    id: list

    required property RowsModel rows

    spacing: 2

    Repeater {
        model: list.rows
        RowLine {
            width: parent?.width ?? 0
        }
    }
}
