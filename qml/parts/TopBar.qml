// The name of the scenario, the way back and forth through its changes, and what one does with the
// file and the look of the screen; where there is little room the latter waits behind a button.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: bar

    required property string title
    required property string fileName
    required property bool example
    required property bool changed
    required property bool canUndo
    required property bool canRedo
    required property bool narrow
    signal openAsked()
    signal saveAsked()
    signal undoAsked()
    signal redoAsked()
    signal themeAsked()
    signal lookAsked()

    implicitHeight: Math.max(names.implicitHeight, buttons.implicitHeight) + Tokens.gapSmall * 2
    color: Tokens.surface

    // Places, not a layout: the names take the width that the buttons leave.
    ColumnLayout {
        id: names
        anchors.left: parent.left
        anchors.leftMargin: Tokens.gap
        anchors.verticalCenter: parent.verticalCenter
        width: bar.width - buttons.implicitWidth - 3 * Tokens.gap
        spacing: 2

        PlainText {
            objectName: "title"
            Layout.fillWidth: true
            text: bar.title
            color: Tokens.text
            font.pixelSize: bar.narrow ? Tokens.typeName : Tokens.typeTitle
            font.bold: true
            wrapMode: Text.Wrap
            Accessible.role: Accessible.Heading
            Accessible.name: text
        }
        Flow {
            Layout.fillWidth: true
            visible: bar.example || bar.changed
            spacing: Tokens.gapSmall

            Rectangle {
                visible: bar.example
                objectName: "exampleTag"
                width: tag.implicitWidth + 2 * Tokens.gapSmall
                height: tag.implicitHeight + 4
                radius: 4
                color: Tokens.accent
                PlainText {
                    id: tag
                    anchors.centerIn: parent
                    text: qsTr("EXAMPLE")
                    color: Tokens.accentInk
                    font.pixelSize: Tokens.typeMark
                    font.bold: true
                    Accessible.role: Accessible.StaticText
                    Accessible.name: qsTr("This is an example")
                }
            }
            PlainText {
                visible: bar.changed
                text: qsTr("not saved")
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
    }
    RowLayout {
        id: buttons
        anchors.right: parent.right
        anchors.rightMargin: Tokens.gap
        anchors.verticalCenter: parent.verticalCenter
        spacing: Tokens.gapSmall

        ActionButton {
            objectName: "undo"
            Layout.preferredWidth: implicitHeight
            leftPadding: 0
            rightPadding: 0
            text: "↶"
            spoken: qsTr("Take the last change back")
            enabled: bar.canUndo
            onClicked: bar.undoAsked()
        }
        ActionButton {
            objectName: "redo"
            Layout.preferredWidth: implicitHeight
            leftPadding: 0
            rightPadding: 0
            text: "↷"
            spoken: qsTr("Make the change again")
            enabled: bar.canRedo
            onClicked: bar.redoAsked()
        }
        FileActions {
            visible: !bar.narrow
            columns: 4
            onOpenAsked: bar.openAsked()
            onSaveAsked: bar.saveAsked()
            onThemeAsked: bar.themeAsked()
            onLookAsked: bar.lookAsked()
        }
        ActionButton {
            objectName: "fileAndLook"
            visible: bar.narrow
            Layout.preferredWidth: implicitHeight
            leftPadding: 0
            rightPadding: 0
            text: "☰"
            spoken: qsTr("File and look")
            onClicked: sheet.open()
        }
    }
    Sheet {
        id: sheet
        title: qsTr("File and look")
        FileActions {
            Layout.fillWidth: true
            spread: true
            columns: 1
            onOpenAsked: {
                sheet.close()
                bar.openAsked()
            }
            onSaveAsked: {
                sheet.close()
                bar.saveAsked()
            }
            onThemeAsked: bar.themeAsked()
            onLookAsked: {
                sheet.close()
                bar.lookAsked()
            }
        }
    }
}
