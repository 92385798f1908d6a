// A column that scrolls by finger, wheel and keys when it is taller than its place.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Candlemark

Flickable {
    id: scroll

    property int edge: Tokens.gap
    default property alias content: column.data
    property alias spacing: column.spacing

    // The width is settled by the window alone: were it to follow the bar, heights would follow
    // widths and the bar the heights.
    contentWidth: width
    contentHeight: column.implicitHeight + 2 * edge
    interactive: contentHeight > height + 1
    boundsBehavior: Flickable.StopAtBounds
    maximumFlickVelocity: Look.still ? 1 : 2500
    clip: true
    Keys.onUpPressed: bar.decrease()
    Keys.onDownPressed: bar.increase()
    ScrollBar.vertical: QuietBar {
        id: bar
        stepSize: 0.1
        width: 10
        policy: scroll.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    ColumnLayout {
        id: column
        x: scroll.edge
        y: scroll.edge
        width: scroll.width - 2 * scroll.edge
        spacing: Tokens.gapSmall
    }
}
