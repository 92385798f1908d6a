// The name of the scenario and what one does with the file and the look of the screen.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: bar

    required property string title
    required property string fileName
    required property bool example
    required property bool changed
    required property bool narrow
    signal openAsked()
    signal saveAsked()
    signal themeAsked()
    signal textSizeAsked()

    implicitHeight: content.implicitHeight + Tokens.gapSmall * 2
    color: Tokens.surface

    GridLayout {
        id: content
        anchors.fill: parent
        anchors.leftMargin: Tokens.gap
        anchors.rightMargin: Tokens.gap
        anchors.topMargin: Tokens.gapSmall
        anchors.bottomMargin: Tokens.gapSmall
        columns: bar.narrow ? 1 : 2
        columnSpacing: Tokens.gap
        rowSpacing: Tokens.gapSmall

        RowLayout {
            Layout.fillWidth: true
            spacing: Tokens.gapSmall

            Rectangle {
                visible: bar.example
                objectName: "exampleTag"
                implicitWidth: tag.implicitWidth + 2 * Tokens.gapSmall
                implicitHeight: tag.implicitHeight + 8
                radius: 4
                color: Tokens.accent
                Text {
                    id: tag
                    anchors.centerIn: parent
                    text: qsTr("EXAMPLE")
                    color: Tokens.accentInk
                    font.pixelSize: Tokens.typeSmall
                    font.bold: true
                    Accessible.role: Accessible.StaticText
                    Accessible.name: qsTr("This is an example")
                }
            }
            Text {
                objectName: "title"
                Layout.fillWidth: true
                text: bar.title
                color: Tokens.text
                font.pixelSize: Tokens.typeTitle
                font.bold: true
                wrapMode: Text.Wrap
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }
            Text {
                visible: bar.changed
                text: qsTr("not saved")
                color: Tokens.quietText
                font.pixelSize: Tokens.typeSmall
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
        GridLayout {
            Layout.fillWidth: bar.narrow
            columns: bar.narrow && Tokens.textScale > 1.2 ? 2 : 4
            columnSpacing: Tokens.gapSmall
            rowSpacing: Tokens.gapSmall
            ActionButton {
                objectName: "open"
                Layout.fillWidth: bar.narrow
                text: qsTr("Open")
                spoken: qsTr("Open a scenario file")
                onClicked: bar.openAsked()
            }
            ActionButton {
                objectName: "save"
                Layout.fillWidth: bar.narrow
                text: qsTr("Save")
                spoken: qsTr("Save the scenario file")
                onClicked: bar.saveAsked()
            }
            ActionButton {
                objectName: "theme"
                Layout.fillWidth: bar.narrow
                text: Tokens.dark ? qsTr("Light") : qsTr("Dark")
                spoken: Tokens.dark ? qsTr("Use the light look") : qsTr("Use the dark look")
                onClicked: bar.themeAsked()
            }
            ActionButton {
                objectName: "textSize"
                Layout.fillWidth: bar.narrow
                text: qsTr("Aa")
                spoken: qsTr("Larger text")
                onClicked: bar.textSizeAsked()
            }
        }
    }
}
