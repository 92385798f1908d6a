// A count between two large buttons. Up and down keys, plus and minus do the same.
import QtQuick
import QtQuick.Layouts
import Candlemark

FocusScope {
    id: stepper

    required property string label
    required property string shown
    required property string detail
    required property bool canLess
    required property bool canMore
    property bool stacked: false  // the label above the buttons
    // What is shown, as a number, and as a screen reader reads and turns it.
    required property real held
    required property real minimumValue
    required property real maximumValue
    property real stepSize: 1
    property real value: held
    signal less()
    signal more()

    implicitWidth: row.implicitWidth
    implicitHeight: row.implicitHeight
    Accessible.role: Accessible.SpinBox
    Accessible.name: label
    Accessible.description: shown
    Accessible.focusable: true
    Accessible.onIncreaseAction: stepper.turn(stepper.stepSize)
    Accessible.onDecreaseAction: stepper.turn(-stepper.stepSize)
    onValueChanged: {
        if (value === held)
            return
        stepper.turn(value - held)
        stepper.value = Qt.binding(() => stepper.held)
    }

    // By whole steps; what is not allowed is left out.
    function turn(by) {
        const steps = Math.round(Math.abs(by) / stepper.stepSize)
        for (let step = 0; step < Math.min(100, steps); ++step)
            if (by > 0 && stepper.canMore)
                stepper.more()
            else if (by < 0 && stepper.canLess)
                stepper.less()
    }
    Keys.onUpPressed: stepper.more()
    Keys.onDownPressed: stepper.less()
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Plus || event.key === Qt.Key_Minus) {
            event.accepted = true
            if (event.key === Qt.Key_Plus)
                stepper.more()
            else
                stepper.less()
        }
    }

    GridLayout {
        id: row
        anchors.fill: parent
        columns: stepper.stacked ? 3 : 4
        columnSpacing: Tokens.gapSmall
        rowSpacing: Tokens.gapSmall / 2

        ColumnLayout {
            Layout.fillWidth: true
            Layout.columnSpan: stepper.stacked ? 3 : 1
            spacing: 0
            PlainText {
                Layout.fillWidth: true
                Layout.minimumWidth: 60
                text: stepper.label
                color: Tokens.text
                font.pixelSize: Tokens.typeBody
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                Layout.fillWidth: true
                visible: text.length > 0
                text: stepper.detail
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                wrapMode: Text.Wrap
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
        ActionButton {
            id: fewer
            objectName: "less"
            Layout.preferredWidth: implicitHeight
            main: true
            text: "−"
            leftPadding: 0
            rightPadding: 0
            font.pixelSize: Tokens.typeTitle
            font.bold: true
            spoken: qsTr("Less: %1").arg(stepper.label)
            enabled: stepper.canLess
            onClicked: stepper.less()
        }
        PlainText {
            objectName: "count"
            Layout.minimumWidth: Math.max(44, implicitWidth)
            Layout.fillWidth: stepper.stacked
            Layout.maximumWidth: stepper.stacked ? -1 : Math.max(72, implicitWidth)
            text: stepper.shown
            color: Tokens.text
            font.pixelSize: Tokens.typeTitle
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            Accessible.ignored: true
        }
        ActionButton {
            id: further
            objectName: "more"
            Layout.preferredWidth: implicitHeight
            main: true
            text: "+"
            leftPadding: 0
            rightPadding: 0
            font.pixelSize: Tokens.typeTitle
            font.bold: true
            spoken: qsTr("More: %1").arg(stepper.label)
            enabled: stepper.canMore
            onClicked: stepper.more()
        }
    }
    FocusRing {
        shown: stepper.activeFocus && !fewer.activeFocus && !further.activeFocus
    }
}
