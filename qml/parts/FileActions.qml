// What one does with the file and the look of the screen.
import QtQuick
import QtQuick.Layouts
import Candlemark

GridLayout {
    id: actions

    property bool spread: false  // all of it, each button as wide as its column
    property bool roomy: true    // the look stands beside as well
    signal newAsked()
    signal openAsked()
    signal recentAsked()
    signal saveAsked()
    signal saveAsAsked()
    signal shareAsked()
    signal themeAsked()
    signal lookAsked()
    signal helpAsked()
    signal aboutAsked()

    columnSpacing: Tokens.gapSmall
    rowSpacing: Tokens.gapSmall

    ActionButton {
        objectName: "new"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("New")
        spoken: qsTr("Begin a new plan")
        onClicked: actions.newAsked()
    }
    ActionButton {
        objectName: "open"
        Layout.fillWidth: actions.spread
        text: qsTr("Open")
        spoken: qsTr("Open a scenario file")
        onClicked: actions.openAsked()
    }
    ActionButton {
        objectName: "recentFiles"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("Open before")
        spoken: qsTr("Files that were open before")
        onClicked: actions.recentAsked()
    }
    ActionButton {
        objectName: "save"
        Layout.fillWidth: actions.spread
        text: qsTr("Save")
        spoken: qsTr("Save the scenario file")
        onClicked: actions.saveAsked()
    }
    ActionButton {
        objectName: "saveUnder"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("Save as")
        spoken: qsTr("Save under another name")
        onClicked: actions.saveAsAsked()
    }
    ActionButton {
        objectName: "share"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("Share")
        spoken: qsTr("Share the answer as a page or a picture")
        onClicked: actions.shareAsked()
    }
    ActionButton {
        objectName: "theme"
        Layout.fillWidth: actions.spread
        visible: actions.spread || actions.roomy
        text: Tokens.dark ? qsTr("Light") : qsTr("Dark")
        spoken: Tokens.dark ? qsTr("Use the light look") : qsTr("Use the dark look")
        onClicked: actions.themeAsked()
    }
    ActionButton {
        objectName: "look"
        Layout.fillWidth: actions.spread
        visible: actions.spread || actions.roomy
        text: actions.spread ? qsTr("Look and language") : qsTr("Aa")
        spoken: qsTr("Theme, size of the text, units, clock and language")
        onClicked: actions.lookAsked()
    }
    ActionButton {
        objectName: "help"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("Help")
        spoken: qsTr("Help for this page")
        onClicked: actions.helpAsked()
    }
    ActionButton {
        objectName: "about"
        Layout.fillWidth: actions.spread
        visible: actions.spread
        text: qsTr("About")
        spoken: qsTr("About this program, with its licences")
        onClicked: actions.aboutAsked()
    }
}
