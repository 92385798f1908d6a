// Stands in the place of a page while no file is open: what can be begun with.
import QtQuick
import QtQuick.Layouts
import Candlemark

Scroll {
    id: page

    property bool ownOffered: false
    signal openAsked()
    signal newAsked()
    signal ownAsked()

    PlainText {
        objectName: "nothingWords"
        Layout.fillWidth: true
        text: qsTr("Nothing is open, so there is nothing to reckon with yet.")
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ActionButton {
        objectName: "nothingOwn"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gap
        visible: page.ownOffered
        main: true
        text: qsTr("Begin from what I have")
        onClicked: page.ownAsked()
    }
    ActionButton {
        objectName: "nothingOpen"
        Layout.fillWidth: true
        main: true
        text: qsTr("Open a file")
        onClicked: page.openAsked()
    }
    ActionButton {
        objectName: "nothingNew"
        Layout.fillWidth: true
        text: qsTr("Begin with a worked example")
        onClicked: page.newAsked()
    }
}
