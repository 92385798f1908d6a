// How long it lasts: the plot of the days whole in the first view, the candle, the three numbers
// that are most often turned, the findings; arranged for the shape of the screen.
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Flickable {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    readonly property bool low: height < 440 * growth && width >= 560 * growth
    readonly property string arrangement: low ? "low" : width >= 1000 * growth ? "wide" : width >= 620 * growth ? "tall" : "phone"
    readonly property int edge: low ? Tokens.gapSmall : arrangement === "wide" ? Tokens.gapLarge : Tokens.gap

    contentWidth: width
    contentHeight: Math.max(height, arranged.implicitHeight + 2 * edge)
    boundsBehavior: Flickable.StopAtBounds
    maximumFlickVelocity: Look.still ? 1 : 2500
    clip: true
    ScrollBar.vertical: QuietBar {}

    Loader {
        id: arranged
        x: page.edge
        y: page.edge
        width: page.width - 2 * page.edge
        height: page.contentHeight - 2 * page.edge

        property bool fills: false   // what is arranged has a first view to fill

        function arrange() {
            fills = false
            const file = { wide: "DaysWide.qml", low: "DaysLow.qml", tall: "DaysTall.qml", phone: "DaysPhone.qml" }[page.arrangement]
            setSource(Qt.resolvedUrl(file), { document: page.document, plan: page.plan })
            fills = page.arrangement !== "wide"
        }
        Component.onCompleted: arrange()
    }
    onArrangementChanged: arranged.arrange()
    Binding {
        target: arranged.item
        when: arranged.fills
        property: "firstView"
        value: page.height - 2 * page.edge
    }
}
