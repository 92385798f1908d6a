// The moment looked at, in words, and the buttons that move it.
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
    readonly property bool tight: width < 520 * Math.max(1, Tokens.textScale * 0.9)
    signal earlier()
    signal later()
    signal tableAsked()

    columns: tight ? 3 : 4
    columnSpacing: Tokens.gapSmall
    rowSpacing: Tokens.gapSmall

    ColumnLayout {
        Layout.fillWidth: true
        Layout.columnSpan: bar.tight ? 3 : 1
        spacing: 0
        Text {
            objectName: "momentTime"
            Layout.fillWidth: true
            text: bar.time
            color: Tokens.text
            font.pixelSize: Tokens.typeBody
            font.bold: true
            elide: Text.ElideRight
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Text {
            objectName: "momentText"
            Layout.fillWidth: true
            text: bar.text
            color: Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.WordWrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
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
        objectName: "asTable"
        Layout.fillWidth: bar.tight
        text: bar.asTable ? qsTr("Plot") : qsTr("Table")
        spoken: bar.asTable ? qsTr("Show the plot") : qsTr("Show as a table")
        onClicked: bar.tableAsked()
    }
}
