// Stands in the place of a page whose answer met a fault of this program: nothing is lost, and there
// is a way back.
import QtQuick
import QtQuick.Layouts
import Candlemark

Scroll {
    id: page

    required property ScenarioDocument document
    signal keysAsked()

    PlainText {
        objectName: "faultTitle"
        Layout.fillWidth: true
        text: qsTr("A fault of this program")
        color: Tokens.stop
        font.pixelSize: Tokens.typeTitle
        font.bold: true
        wrapMode: Text.Wrap
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    PlainText {
        objectName: "faultWords"
        Layout.fillWidth: true
        text: qsTr("What this scenario asks could not be worked out; the program failed at it. The scenario is not at fault, and no figure is shown for it. Your file is as it was, and what you changed is still here: it can be saved, copied and taken back.")
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    PlainText {
        objectName: "faultReason"
        Layout.fillWidth: true
        text: qsTr("What it said: %1").arg(page.document.fault)
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ActionButton {
        objectName: "backToGood"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gap
        main: true
        visible: page.document.hasGood
        text: qsTr("Back to the last text that could be worked out")
        onClicked: page.document.backToGood()
    }
    ActionButton {
        objectName: "toTheKeys"
        Layout.fillWidth: true
        text: qsTr("Change it on the File page")
        onClicked: page.keysAsked()
    }
    ActionButton {
        objectName: "copyFaulty"
        Layout.fillWidth: true
        text: qsTr("Copy the whole text")
        onClicked: page.document.copyText()
    }
    ActionButton {
        objectName: "openExample"
        Layout.fillWidth: true
        text: qsTr("Open the example instead")
        onClicked: page.document.openExample()
    }
}
