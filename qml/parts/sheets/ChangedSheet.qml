// Asks what is to become of a file that another program or window changed since it was read: both
// texts stay, whichever is chosen.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property ScenarioDocument document
    property bool versionsStay: false   // what gives way can be had again
    signal anotherWanted()

    title: qsTr("The file was changed elsewhere")

    PlainText {
        objectName: "changedWords"
        Layout.fillWidth: true
        text: sheet.versionsStay ? qsTr("Since it was read here, another program or another window changed %1. Nothing was saved yet. Whichever you choose, the other text stays as a version on the File page.").arg(sheet.document.fileName)
                                 : qsTr("Since it was read here, another program or another window changed %1. Nothing was saved yet, and no versions are kept: save yours under another name to have both.").arg(sheet.document.fileName)
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    ActionButton {
        objectName: "saveElsewhere"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gap
        main: true
        text: qsTr("Save mine under another name")
        onClicked: {
            sheet.close()
            sheet.anotherWanted()
        }
    }
    ActionButton {
        objectName: "keepMine"
        Layout.fillWidth: true
        visible: sheet.versionsStay
        text: qsTr("Save mine in its place")
        onClicked: {
            sheet.close()
            sheet.document.keepMine()
        }
    }
    ActionButton {
        objectName: "takeTheirs"
        Layout.fillWidth: true
        text: qsTr("Take up what the file holds now")
        onClicked: {
            sheet.close()
            sheet.document.takeTheirs()
        }
    }
}
