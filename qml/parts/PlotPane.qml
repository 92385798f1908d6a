// The outage days as a plot or as a table, and below it the moment looked at.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: pane

    required property DaysModel days
    property bool asTable: false
    readonly property real leastHeight: (shown.item?.leastHeight ?? 200) + spacing
        + bar.implicitHeight

    spacing: Tokens.gapSmall
    onAsTableChanged: shown.show()

    PlotWindow {
        id: inSight
    }
    Loader {
        id: shown
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: item?.leastHeight ?? 200

        function show() {
            if (pane.asTable)
                setSource(Qt.resolvedUrl("DaysTable.qml"), { days: pane.days })
            else
                setSource(Qt.resolvedUrl("DaysPlot.qml"), { days: pane.days, view: inSight })
        }
        Component.onCompleted: show()
    }
    MomentBar {
        id: bar
        Layout.fillWidth: true
        time: pane.days.momentTime
        text: pane.days.momentText
        hasEarlier: pane.days.hasEarlier
        hasLater: pane.days.hasLater
        asTable: pane.asTable
        canNearer: !pane.asTable && inSight.canNearer
        canFarther: !pane.asTable && inSight.canFarther
        working: pane.days.momentWorking
        onNearer: inSight.nearer(pane.days.momentAt)
        onFarther: inSight.farther(pane.days.momentAt)
        onEarlier: pane.days.earlier()
        onLater: pane.days.later()
        onTableAsked: pane.asTable = !pane.asTable
    }
}
