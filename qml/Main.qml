// The window: the bar on top, the sentence, the page, and the ruler of pages beside or below it;
// one scenario and its plan behind all of them.
// StandardKey is unknown to the checker of Qt 6.4.
// qmllint disable unqualified
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import Candlemark

ApplicationWindow {
    id: window

    property string file  // as a URL, opened on start; the example when empty
    property bool darkLook: true
    property string theme   // dark, light or system; as it was left when empty
    property real textScale: 1
    property bool textScaleAsked: false  // for this and later starts, over what was kept
    property string page: "days"
    property string workFolder  // where unfinished work is kept; empty keeps none
    readonly property alias scenario: scenarioDocument
    readonly property alias plan: planRunner
    readonly property alias pageItem: pageArea.item
    readonly property alias savingDialog: saveDialog
    // A page whose question nobody can answer is not shown.
    readonly property var pages: window.answered([
        { key: "days", name: qsTr("Days"), file: "DaysPage.qml", question: "outage" },
        { key: "loads", name: qsTr("Loads"), file: "LoadsPage.qml", question: "outage" },
        { key: "packs", name: qsTr("Packs"), file: "PacksPage.qml", question: "join" },
        { key: "sun", name: qsTr("Sun"), file: "SunPage.qml", question: "sun" },
        { key: "start", name: qsTr("Starting"), file: "StartPage.qml", question: "start" },
        { key: "wiring", name: qsTr("Wiring"), file: "WiringPage.qml", question: "wiring" },
        { key: "storage", name: qsTr("Storage"), file: "StoragePage.qml", question: "storage" },
        { key: "print", name: qsTr("Print"), file: "PrintPage.qml", question: "outage" },
        { key: "file", name: qsTr("File"), file: "FilePage.qml", question: "read" }
    ])
    // The file can be changed by hand whatever the program makes of it.
    readonly property bool faulty: scenarioDocument.fault !== "" && page !== "file"
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    readonly property bool railed: width >= 720 * growth
    readonly property bool narrow: width < 620 * growth

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
        if (workFolder !== "") {
            Look.keepIn(workFolder)
            weather.keepIn(workFolder)
            if (textScaleAsked)
                Look.textScale = textScale
        }
        if (theme !== "")
            Look.theme = theme
        // A file that cannot be opened says so; another's hours are never shown in its place.
        if (!kept.resume(file) && !(file !== "" && scenarioDocument.open(file)) && file === "")
            scenarioDocument.openExample()
        pageArea.show()
    }
    onPageChanged: {
        scenarioDocument.leavePage()
        pageArea.show()
    }

    function answered(pages) {
        return pages.filter(one => asker.knows(one.question))
    }

    ScenarioDocument {
        id: scenarioDocument
    }
    Connections {
        target: Look
        function onChanged() {
            Tokens.dark = Look.dark
            Tokens.textScale = Look.textScale
        }
        function onTold() { scenarioDocument.tellAgain() }
    }
    Connections {
        target: scenarioDocument
        function onChangedOutside() { changedElsewhere.open() }
    }
    AnswerRunner {
        id: asker
    }
    WeatherChoices {
        id: weather
    }
    KeptWork {
        id: kept
        document: scenarioDocument
        folder: window.workFolder
    }
    PlanRunner {
        id: planRunner
        document: scenarioDocument
    }
    Shortcut {
        sequences: [StandardKey.Undo]
        onActivated: scenarioDocument.undo()
    }
    Shortcut {
        sequences: [StandardKey.Redo]
        onActivated: scenarioDocument.redo()
    }
    Shortcut {
        sequences: [StandardKey.Save]
        onActivated: actions.save()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopBar {
            id: actions
            Layout.fillWidth: true
            title: scenarioDocument.title
            fileName: scenarioDocument.fileName
            example: scenarioDocument.example
            changed: scenarioDocument.changed
            canUndo: scenarioDocument.canUndo
            canRedo: scenarioDocument.canRedo
            narrow: !window.railed

            function save() {
                if (scenarioDocument.text === "")
                    return
                if (scenarioDocument.fileName === "")
                    saveDialog.open()
                else
                    scenarioDocument.save()
            }
            onOpenAsked: openDialog.open()
            onSaveAsked: save()
            onUndoAsked: scenarioDocument.undo()
            onRedoAsked: scenarioDocument.redo()
            onThemeAsked: Look.theme = Tokens.dark ? "light" : "dark"
            onLookAsked: look.open()
        }
        Rectangle {
            Layout.fillWidth: true
            visible: scenarioDocument.trouble.length > 0
            implicitHeight: trouble.implicitHeight + 2 * Tokens.gapSmall
            color: Tokens.surface
            border.width: 2
            border.color: Tokens.stop
            PlainText {
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
        NoticeStrip {
            objectName: "keptTrouble"
            Layout.fillWidth: true
            words: kept.trouble.length > 0 ? kept.trouble : Look.trouble
            grave: true
            lasting: true
        }
        NoticeStrip {
            objectName: "keptTold"
            Layout.fillWidth: true
            words: kept.told
            onHeard: kept.heard()
        }
        Item {
            id: middle
            Layout.fillWidth: true
            Layout.fillHeight: true

            PageRail {
                id: rail
                visible: window.railed && window.pages.length > 1
                width: visible ? implicitWidth : 0
                height: parent.height
                pages: visible ? window.pages : []
                page: window.page
                onAsked: key => window.page = key
            }
            SentenceStrip {
                id: strip
                anchors.left: rail.right
                anchors.right: parent.right
                height: implicitHeight
                sentence: scenarioDocument.text === "" ? qsTr("No file is open.") : planRunner.sentence
                size: window.narrow ? Tokens.typeSentenceTight
                    : window.page === "days" && window.width >= 1000 * window.growth ? Tokens.typeSentence : Tokens.typeSentenceNarrow
                most: window.height * 0.33
            }
            Rectangle {
                anchors.top: strip.bottom
                anchors.left: rail.right
                anchors.right: parent.right
                height: 1
                color: Tokens.hairline
            }
            FaultPage {
                objectName: "faultPage"
                anchors.fill: pageArea
                visible: window.faulty
                document: scenarioDocument
                onKeysAsked: window.page = "file"
            }
            Loader {
                id: pageArea
                // A page out of sight is not kept: Qt's layouts may keep rows that a hidden list
                // has already let go, and end the program when they are shown again.
                active: !window.faulty
                anchors.top: strip.bottom
                anchors.topMargin: 1
                anchors.bottom: parent.bottom
                anchors.left: rail.right
                anchors.right: parent.right

                function given(key) {
                    const all = { document: scenarioDocument, plan: planRunner }
                    return key === "file" ? Object.assign(all, { kept: kept }) : all
                }
                function show() {
                    const shown = window.pages.find(one => one.key === window.page) ?? window.pages[0]
                    setSource(Qt.resolvedUrl(shown.file), pageArea.given(shown.key))
                }
            }
        }
        PageBar {
            Layout.fillWidth: true
            visible: !window.railed && window.pages.length > 1
            pages: visible ? window.pages : []
            page: window.page
            onAsked: key => window.page = key
            onListAsked: pageList.open()
        }
    }

    Sheet {
        id: pageList
        title: qsTr("Pages")
        Repeater {
            model: pageList.opened ? window.pages : []
            PageButton {
                required property var modelData
                objectName: "listed_" + modelData.key
                Layout.fillWidth: true
                text: modelData.name
                upright: false
                current: modelData.key === window.page
                onClicked: {
                    window.page = modelData.key
                    pageList.close()
                }
            }
        }
    }
    LookSheet {
        id: look
    }
    FileDialog {
        id: openDialog
        title: qsTr("Open a scenario")
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onAccepted: scenarioDocument.open(selectedFile)
    }
    ReplaceSheet {
        id: replacing
        versionsStay: window.workFolder !== ""
    }
    ChangedSheet {
        id: changedElsewhere
        document: scenarioDocument
        versionsStay: window.workFolder !== ""
        onAnotherWanted: {
            saveDialog.currentFolder = scenarioDocument.folder()
            saveDialog.open()
        }
    }
    SavingDialog {
        id: saveDialog
        title: qsTr("Save the scenario")
        document: scenarioDocument
        asking: replacing
        defaultSuffix: "toml"
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onChosen: file => scenarioDocument.saveAs(file)
    }
}
