// How long it lasts: the answer, the candle, the days, the findings, and the three numbers that
// are most often turned; arranged for the shape of the screen.
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Flickable {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    readonly property string arrangement: width >= 1000 * growth ? "wide" : width >= 620 * growth ? "tall" : "phone"
    readonly property int edge: arrangement === "phone" ? Tokens.gap : Tokens.gapLarge

    contentWidth: width
    contentHeight: Math.max(height, arranged.implicitHeight + 2 * edge)
    boundsBehavior: Flickable.StopAtBounds
    maximumFlickVelocity: Look.still ? 1 : 2500
    clip: true
    ScrollBar.vertical: ScrollBar {}

    Loader {
        id: arranged
        x: page.edge
        y: page.edge
        width: page.width - 2 * page.edge
        height: page.contentHeight - 2 * page.edge

        function arrange() {
            const file = page.arrangement === "wide" ? "DaysWide.qml" : page.arrangement === "tall" ? "DaysTall.qml" : "DaysPhone.qml"
            setSource(Qt.resolvedUrl(file), { document: page.document, plan: page.plan })
        }
        Component.onCompleted: arrange()
    }
    onArrangementChanged: arranged.arrange()
}
