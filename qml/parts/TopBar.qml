// The name of the scenario, the way back and forth through its changes, and what one does with the
// file and the look of the screen; where there is little room most of the latter waits behind a
// button.
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
    signal newAsked()
    signal openAsked()
    signal recentAsked()
    signal saveAsked()
    signal saveAsAsked()
    signal shareAsked()
    signal undoAsked()
    signal redoAsked()
    signal themeAsked()
    signal lookAsked()
    signal helpAsked()
    signal aboutAsked()

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
                    font.pixelSize: bar.narrow ? Tokens.typeTag : Tokens.typeMark
                    font.bold: true
                    Accessible.role: Accessible.StaticText
                    Accessible.name: qsTr("This is an example")
                }
            }
            PlainText {
                visible: bar.changed
                text: qsTr("not saved")
                color: Tokens.quietText
                font.pixelSize: bar.narrow ? Tokens.typeTag : Tokens.typeMark
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
            roomy: bar.width >= 1000 * Math.max(1, Tokens.textScale * 0.85)
            onOpenAsked: bar.openAsked()
            onSaveAsked: bar.saveAsked()
            onThemeAsked: bar.themeAsked()
            onLookAsked: bar.lookAsked()
        }
        ActionButton {
            objectName: "fileAndLook"
            Layout.preferredWidth: implicitHeight
            leftPadding: 0
            rightPadding: 0
            text: "☰"
            spoken: qsTr("File, look and help")
            onClicked: sheet.open()
        }
    }
    Sheet {
        id: sheet
        title: qsTr("Menu")
        FileActions {
            id: menu
            Layout.fillWidth: true
            spread: true
            columns: sheet.width >= 290 * Tokens.textScale ? 2 : 1

            function after(asked) {
                sheet.close()
                asked()
            }
            onNewAsked: menu.after(bar.newAsked)
            onOpenAsked: menu.after(bar.openAsked)
            onRecentAsked: menu.after(bar.recentAsked)
            onSaveAsked: menu.after(bar.saveAsked)
            onSaveAsAsked: menu.after(bar.saveAsAsked)
            onShareAsked: menu.after(bar.shareAsked)
            onThemeAsked: bar.themeAsked()
            onLookAsked: menu.after(bar.lookAsked)
            onHelpAsked: menu.after(bar.helpAsked)
            onAboutAsked: menu.after(bar.aboutAsked)
        }
    }
}
