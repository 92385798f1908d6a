// Figures or steps of the working, one below the other.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: list

    required property RowsModel rows

    spacing: 2

    Repeater {
        model: list.rows
        RowLine {
            Layout.fillWidth: true
        }
    }
}
