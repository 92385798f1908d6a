// The plot of the outage days: nights shaded, days named, findings pinned to their hour, and the
// moment looked at, which keys, buttons and a finger move alike.
import QtQuick
import QtQuick.Layouts
import Candlemark

FocusScope {
    id: plot
    objectName: "plot"

    required property DaysModel days
    required property PlotWindow view
    readonly property int axisWidth: Math.round(60 * Math.max(1, Tokens.textScale * 0.9))
    readonly property int dayRow: Tokens.typeMark + Tokens.gapSmall
    readonly property int leastEnergyFrame: 120
    readonly property int leastPowerFrame: 80
    // Room for the key's lines is set by the size of the text alone: were it measured, the height
    // would hang on the width and the width on the height, which a layout cannot settle.
    readonly property real keyRoom: (Tokens.textScale > 1.2 ? 4 : 2) * (Tokens.typeMark * 1.3
                                                                        + Tokens.gapSmall)
    readonly property real leastHeight: keyRoom + pinRow.implicitHeight
        + leastEnergyFrame + leastPowerFrame + dayRow + 3 * Tokens.gapSmall

    activeFocusOnTab: true
    Accessible.role: Accessible.Chart
    Accessible.name: qsTr("Stored energy, loads and sun over the outage")
    Accessible.description: days.spoken
    Accessible.focusable: true
    Keys.onLeftPressed: plot.days.earlier()
    Keys.onRightPressed: plot.days.later()
    Keys.onPressed: event => {
        event.accepted = true
        if (event.key === Qt.Key_Home)
            plot.days.toStart()
        else if (event.key === Qt.Key_Plus)
            plot.view.nearer(plot.days.momentAt)
        else if (event.key === Qt.Key_Minus)
            plot.view.farther(plot.days.momentAt)
        else
            event.accepted = false
    }

    Connections {
        target: plot.days
        function onRowChanged() { plot.view.show(plot.days.momentAt) }
    }
    FocusRing {
        shown: plot.activeFocus
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Tokens.gapSmall

        Flow {
            Layout.fillWidth: true
            spacing: Tokens.gap
            LegendEntry { kind: "band"; text: qsTr("stored: 9 in 10, likely, 1 in 10") }
            LegendEntry { kind: "loads"; text: qsTr("loads") }
            LegendEntry { kind: "sun"; text: qsTr("sun") }
            LegendEntry { kind: "night"; text: qsTr("night") }
        }
        PinRow {
            id: pinRow
            Layout.fillWidth: true
            Layout.leftMargin: plot.axisWidth
            visible: plot.days.pins.length > 0
            pins: plot.days.pins
            view: plot.view
        }
        PlotFrame {
            days: plot.days
            view: plot.view
            axisWidth: plot.axisWidth
            dayRow: plot.dayRow
            onTouched: plot.forceActiveFocus(Qt.MouseFocusReason)
            objectName: "frame"
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: plot.leastEnergyFrame
            Layout.preferredHeight: 260
            ticks: plot.days.energyTicks
            powers: false
            named: false
        }
        PlotFrame {
            days: plot.days
            view: plot.view
            axisWidth: plot.axisWidth
            dayRow: plot.dayRow
            onTouched: plot.forceActiveFocus(Qt.MouseFocusReason)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: plot.leastPowerFrame
            Layout.preferredHeight: 150
            Layout.bottomMargin: plot.dayRow
            ticks: plot.days.powerTicks
            powers: true
            named: true
        }
    }
}
