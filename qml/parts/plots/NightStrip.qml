// Night as a bar that is seen without the shade: between the two frames of the plot.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Rectangle {
    id: strip

    required property var nights
    required property PlotWindow view

    implicitHeight: 8
    color: Tokens.dayGround
    clip: true

    Repeater {
        model: strip.nights
        Rectangle {
            required property var modelData
            x: (modelData.from - strip.view.from) * strip.view.stretch * strip.width
            width: (modelData.to - modelData.from) * strip.view.stretch * strip.width
            height: strip.height
            color: Tokens.nightMark
        }
    }
}
