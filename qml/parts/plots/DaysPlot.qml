// The plot of the outage days: the store as a fan, the loads by priority, nights shaded, findings
// pinned to their hour, and the moment looked at, which keys, buttons and a finger move alike. Two
// fingers draw it nearer and move it along; one finger reads, and moves along what is drawn nearer,
// unless it has rested first.
import QtQuick
import QtQuick.Layouts
import Candlemark

FocusScope {
    id: plot
    objectName: "plot"

    required property DaysModel days
    required property PlotWindow view
    property bool reads: false   // the read-out stays
    property bool keyed: true    // with its key
    readonly property int axisWidth: Math.round(60 * Math.max(1, Tokens.textScale * 0.9))
    readonly property int leastEnergyFrame: reads ? 54 : 110
    readonly property int leastPowerFrame: reads ? 34 : 64
    // Room for the key's lines is set by the size of the text alone: were it measured, the height
    // would hang on the width and the width on the height, which a layout cannot settle.
    readonly property real keyRoom: keyed ? (Tokens.textScale > 1.2 ? 6 : 2) * (Tokens.typeMark * 1.3 + 4) : 0
    readonly property real leastHeight: keyRoom + pinRow.implicitHeight
        + leastEnergyFrame + leastPowerFrame + strip.implicitHeight + timeAxis.implicitHeight + Tokens.gapSmall
    readonly property var axis: {
        plot.days.edition   // another plan has another axis
        return plot.days.axisIn(plot.view.from, plot.view.to, energies.width - plot.axisWidth,
                                Tokens.typeMark * 0.6)
    }
    signal workingAsked()

    activeFocusOnTab: true
    Accessible.role: Accessible.Chart
    Accessible.name: qsTr("Stored energy, loads and sun over the outage")
    Accessible.description: days.momentTime + ", " + days.momentText + ". " + days.spoken
    Accessible.focusable: true
    Accessible.onIncreaseAction: plot.days.later()
    Accessible.onDecreaseAction: plot.days.earlier()
    Accessible.onPressAction: plot.workingAsked()
    Keys.onLeftPressed: plot.days.earlier()
    Keys.onRightPressed: plot.days.later()
    Keys.onReturnPressed: plot.workingAsked()
    Keys.onPressed: event => {
        event.accepted = true
        if (event.key === Qt.Key_Home)
            plot.days.toStart()
        else if (event.key === Qt.Key_End)
            plot.days.toEnd()
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
    Binding {
        target: plot.view
        property: "hours"
        value: plot.days.hours
        when: plot.days.hours > 0
    }
    FocusRing {
        shown: plot.activeFocus
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        DaysKey {
            Layout.fillWidth: true
            Layout.bottomMargin: 4
            visible: plot.keyed
            days: plot.days
        }
        PinRow {
            id: pinRow
            Layout.fillWidth: true
            Layout.leftMargin: plot.axisWidth
            visible: plot.days.pins > 0
            days: plot.days
            view: plot.view
        }
        PlotFrame {
            id: energies
            objectName: "frame"
            days: plot.days
            view: plot.view
            axisWidth: plot.axisWidth
            spans: plot.axis.spans
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: plot.leastEnergyFrame
            Layout.preferredHeight: 260
            ticks: plot.days.energyTicks
            powers: false
        }
        NightStrip {
            id: strip
            Layout.fillWidth: true
            Layout.leftMargin: plot.axisWidth
            nights: plot.days.nights
            view: plot.view
        }
        PlotFrame {
            id: draws
            days: plot.days
            view: plot.view
            axisWidth: plot.axisWidth
            spans: plot.axis.spans
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: plot.leastPowerFrame
            Layout.preferredHeight: 150
            ticks: plot.days.powerTicks
            powers: true
        }
        TimeAxis {
            id: timeAxis
            Layout.fillWidth: true
            Layout.leftMargin: plot.axisWidth
            Layout.preferredHeight: implicitHeight
            ticks: plot.axis.ticks
            spans: plot.axis.spans
            view: plot.view
            onAsked: row => plot.days.row = row
        }
    }
    PlotTouch {
        id: fingers
        x: plot.axisWidth
        y: energies.y
        width: energies.width - plot.axisWidth
        height: timeAxis.y + timeAxis.height - y
        days: plot.days
        view: plot.view
        onTouched: plot.forceActiveFocus(Qt.MouseFocusReason)

        ReadOut {
            objectName: "readOut"
            visible: fingers.reading || plot.reads && plot.days.row > 0
            days: plot.days
            at: (plot.days.momentAt - plot.view.from) * plot.view.stretch * fingers.width
            room: fingers.width
            y: plot.reads ? 2 : Tokens.gapSmall
            onClicked: plot.workingAsked()
        }
    }
}
