// The moment looked at, in words that open its working, and the buttons that move it and draw the
// plot nearer.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: bar

    required property string time
    required property string text
    required property bool hasEarlier
    required property bool hasLater
    required property bool asTable
    required property bool canNearer
    required property bool canFarther
    required property var working   // lines: how the hour was worked out
    property bool upright: false    // buttons alone, two beside each other
    readonly property bool tight: upright || width < 700 * Math.max(1, Tokens.textScale * 0.9)
    signal earlier()
    signal later()
    signal nearer()
    signal farther()
    signal tableAsked()

    readonly property int buttons: upright ? 2 : width < 330 * Math.max(1, Tokens.textScale * 0.9) ? 4 : 5

    function tellWorking() {
        if (working.length > 0)
            workingSheet.open()
    }

    columns: tight ? buttons : 6
    columnSpacing: Tokens.gapSmall
    rowSpacing: Tokens.gapSmall

    PickRow {
        objectName: "moment"
        visible: !bar.upright
        Layout.fillWidth: true
        Layout.columnSpan: bar.tight ? bar.buttons : 1
        name: bar.time
        detail: bar.text
        spoken: qsTr("%1, %2. How it was worked out").arg(bar.time).arg(bar.text)
        enabled: bar.working.length > 0
        onClicked: bar.tellWorking()
    }
    ActionButton {
        objectName: "earlier"
        Layout.fillWidth: bar.tight
        text: "◀"
        spoken: qsTr("An hour earlier")
        enabled: bar.hasEarlier
        autoRepeat: true
        onClicked: bar.earlier()
    }
    ActionButton {
        objectName: "later"
        Layout.fillWidth: bar.tight
        text: "▶"
        spoken: qsTr("An hour later")
        enabled: bar.hasLater
        autoRepeat: true
        onClicked: bar.later()
    }
    ActionButton {
        objectName: "farther"
        Layout.fillWidth: bar.tight
        text: "−"
        spoken: qsTr("More of the plot")
        enabled: bar.canFarther
        onClicked: bar.farther()
    }
    ActionButton {
        objectName: "nearer"
        Layout.fillWidth: bar.tight
        text: "+"
        spoken: qsTr("Nearer to this hour")
        enabled: bar.canNearer
        onClicked: bar.nearer()
    }
    ActionButton {
        objectName: "asTable"
        Layout.columnSpan: bar.tight && bar.buttons < 5 ? bar.buttons : 1
        Layout.fillWidth: bar.tight
        leftPadding: Tokens.gapSmall
        rightPadding: Tokens.gapSmall
        text: bar.asTable ? qsTr("Plot") : qsTr("Table")
        spoken: bar.asTable ? qsTr("Show the plot") : qsTr("Show as a table")
        onClicked: bar.tableAsked()
    }
    Sheet {
        id: workingSheet
        objectName: "momentWorking"
        title: bar.time
        breadth: 560
        Repeater {
            model: workingSheet.opened ? bar.working : []
            PlainText {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
                color: Tokens.text
                font.pixelSize: Tokens.typeBody
                wrapMode: Text.Wrap
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
    }
}
