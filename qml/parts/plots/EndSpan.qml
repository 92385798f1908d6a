// The end as a span: between two posts lie eight of ten ends, and the likely one is the post with
// the flag. Posts after the outage are not drawn: then the bar runs out of the plot.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: span

    required property real from     // shares of the whole plot
    required property real to
    required property real likely
    required property PlotWindow view

    function placed(share) {
        return (share - span.view.from) * span.view.stretch * width
    }

    component Post: Rectangle {
        required property real at
        visible: at < 1
        x: Math.round(span.placed(at)) - 1
        width: 2
        height: span.height
        color: Tokens.end
    }
    Rectangle {
        x: span.placed(span.from)
        width: Math.max(2, span.placed(Math.min(span.to, 1)) - x)
        height: 6
        color: Tokens.end
    }
    Post { at: span.from; height: 22 }
    Post { at: span.to; height: 22 }
    Post { at: span.likely }
    Rectangle {
        visible: span.likely < 1
        x: span.placed(span.likely) - width / 2
        y: -height / 2 + 3
        width: 16
        height: 16
        rotation: 45
        color: Tokens.end
    }
}
