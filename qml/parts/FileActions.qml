// What one does with the file and the look of the screen.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: actions

    property bool spread: false  // each button as wide as its column
    signal openAsked()
    signal saveAsked()
    signal themeAsked()
    signal lookAsked()

    columnSpacing: Tokens.gapSmall
    rowSpacing: Tokens.gapSmall

    ActionButton {
        objectName: "open"
        Layout.fillWidth: actions.spread
        text: qsTr("Open")
        spoken: qsTr("Open a scenario file")
        onClicked: actions.openAsked()
    }
    ActionButton {
        objectName: "save"
        Layout.fillWidth: actions.spread
        text: qsTr("Save")
        spoken: qsTr("Save the scenario file")
        onClicked: actions.saveAsked()
    }
    ActionButton {
        objectName: "theme"
        Layout.fillWidth: actions.spread
        text: Tokens.dark ? qsTr("Light") : qsTr("Dark")
        spoken: Tokens.dark ? qsTr("Use the light look") : qsTr("Use the dark look")
        onClicked: actions.themeAsked()
    }
    ActionButton {
        objectName: "look"
        Layout.fillWidth: actions.spread
        text: qsTr("Aa")
        spoken: qsTr("Theme, size of the text, units, clock and language")
        onClicked: actions.lookAsked()
    }
}
