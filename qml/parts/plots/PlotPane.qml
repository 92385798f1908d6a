// The outage days as a plot or as a table, and with it the moment looked at and the buttons that
// move it: below, or at the side where there is little height.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: pane

    required property DaysModel days
    property bool atSide: false
    property bool keyed: !atSide   // with what its marks mean
    property bool asTable: false
    readonly property real leastHeight: (shown.item?.leastHeight ?? 200)
        + (atSide ? 0 : rowSpacing + bar.implicitHeight)

    columns: atSide ? 2 : 1
    columnSpacing: Tokens.gap
    rowSpacing: Tokens.gapSmall
    onAsTableChanged: shown.show()
    onAtSideChanged: shown.show()

    PlotWindow {
        id: inSight
    }
    Loader {
        id: shown
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: item?.leastHeight ?? 200

        property bool begun: false   // before that the pane may have no days yet

        function show() {
            if (!begun)
                return
            if (pane.asTable)
                setSource(Qt.resolvedUrl("DaysTable.qml"), { days: pane.days })
            else
                setSource(Qt.resolvedUrl("DaysPlot.qml"), { days: pane.days, view: inSight, reads: pane.atSide, keyed: pane.keyed })
        }
        Component.onCompleted: {
            begun = true
            show()
        }
    }
    Connections {
        target: shown.item
        ignoreUnknownSignals: true
        function onWorkingAsked() { bar.tellWorking() }
    }
    MomentBar {
        id: bar
        Layout.fillWidth: !pane.atSide
        Layout.alignment: Qt.AlignVCenter
        time: pane.days.momentTime
        text: pane.days.momentText
        hasEarlier: pane.days.hasEarlier
        hasLater: pane.days.hasLater
        asTable: pane.asTable
        upright: pane.atSide
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
