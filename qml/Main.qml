// The window: the bar on top, the page below, and the scenario and its plan behind both.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import Candlemark

ApplicationWindow {
    id: window

    property string file  // as a URL, opened on start; the example when empty
    property bool darkLook: true
    property real textScale: 1
    readonly property alias scenario: scenarioDocument
    readonly property alias plan: planRunner

    width: 1280
    height: 800
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    title: scenarioDocument.title
    color: Tokens.ground

    Component.onCompleted: {
        Tokens.dark = darkLook
        Tokens.textScale = textScale
        if (file === "" || !scenarioDocument.open(file))
            scenarioDocument.openExample()
    }

    ScenarioDocument {
        id: scenarioDocument
    }
    PlanRunner {
        id: planRunner
        document: scenarioDocument
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopBar {
            Layout.fillWidth: true
            title: scenarioDocument.title
            fileName: scenarioDocument.fileName
            example: scenarioDocument.example
            changed: scenarioDocument.changed
            narrow: window.width < 640 * Math.max(1, Tokens.textScale * 0.85)
            onOpenAsked: openDialog.open()
            onSaveAsked: {
                if (scenarioDocument.fileName === "")
                    saveDialog.open()
                else
                    scenarioDocument.save()
            }
            onThemeAsked: Tokens.dark = !Tokens.dark
            onTextSizeAsked: Tokens.textScale = Tokens.textScale >= 2 ? 1 : Tokens.textScale + 0.25
        }
        Rectangle {
            Layout.fillWidth: true
            visible: scenarioDocument.trouble.length > 0
            implicitHeight: trouble.implicitHeight + 2 * Tokens.gapSmall
            color: Tokens.surface
            border.width: 2
            border.color: Tokens.stop
            Text {
                id: trouble
                objectName: "trouble"
                anchors.fill: parent
                anchors.margins: Tokens.gapSmall
                anchors.leftMargin: Tokens.gap
                text: scenarioDocument.trouble
                color: Tokens.stop
                font.pixelSize: Tokens.typeBody
                wrapMode: Text.WordWrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
        }
        DaysPage {
            Layout.fillWidth: true
            Layout.fillHeight: true
            document: scenarioDocument
            plan: planRunner
        }
    }

    FileDialog {
        id: openDialog
        title: qsTr("Open a scenario")
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onAccepted: scenarioDocument.open(selectedFile)
    }
    FileDialog {
        id: saveDialog
        title: qsTr("Save the scenario")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "toml"
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onAccepted: scenarioDocument.saveAs(selectedFile)
    }
}
