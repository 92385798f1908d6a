// What this program is, its licence, and what it is made with.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property bool whole: false   // the text of the licence as well

    title: qsTr("About Candlemark")
    breadth: 680
    onClosed: sheet.whole = false

    AboutProgram {
        id: about
    }
    component Words: PlainText {
        Layout.fillWidth: true
        color: Tokens.text
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Words {
        objectName: "aboutVersion"
        font.pixelSize: Tokens.typeBody
        text: qsTr("Candlemark %1: how long a hand-built power unit lasts through an outage.").arg(about.version)
    }
    Words { text: qsTr("It is arithmetic, not approval: local codes and licensed practice decide. It opens no connection to any network itself. Only when you look for a printer or print may the printing of your system open one. Your files stay where you save them.") }
    Words { text: qsTr("Copyright 2026 The Candlemark authors. This is free software: you may pass it on and change it under the GNU General Public License, version 3 or later. It comes without any warranty.") }
    SectionTitle {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        text: qsTr("Made with")
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened ? about.parts : []
            Words {
                width: parent?.width ?? 0
                required property var modelData
                text: qsTr("%1, for %2: %3").arg(modelData.name).arg(modelData.use).arg(modelData.licence)
            }
        }
    }
    ActionButton {
        objectName: "wholeLicence"
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: !sheet.whole
        text: qsTr("Read the whole licence")
        onClicked: sheet.whole = true
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.whole ? about.licence : []
            Words {
                width: parent?.width ?? 0
                required property string modelData
                objectName: "licenceWords"
                text: modelData
            }
        }
    }
}
