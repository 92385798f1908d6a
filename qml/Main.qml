// The window: the bar on top, the sentence, the page, and the ruler of pages beside or below it;
// one scenario and its plan behind all of them.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Candlemark

ApplicationWindow {
    id: window

    property string file  // as a URL, opened on start; the example when empty
    property bool darkLook: true
    property string theme   // dark, light or system; as it was left when empty
    property string language  // en or de, likewise
    property string units     // metric or us, likewise
    property string clock     // 24 or 12, likewise
    property real textScale: 1
    property bool textScaleAsked: false  // for this and later starts, over what was kept
    property string page: "days"
    property bool asking: false   // the five questions of a first run
    property string workFolder  // where unfinished work is kept; empty keeps none
    readonly property alias scenario: scenarioDocument
    readonly property alias plan: planRunner
    readonly property alias pageItem: pageArea.item
    readonly property alias savingDialog: saveDialog
    readonly property alias openingDialog: openDialog
    readonly property var pages: pageTable.pages
    // What stands in the place of the page; the file can be changed by hand whatever the program
    // makes of it.
    readonly property string instead: window.asking ? "first" : scenarioDocument.text === "" ? "nothing" : page === "file" ? ""
        : scenarioDocument.fault !== "" ? "fault" : scenarioDocument.broken ? "broken" : ""
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    readonly property bool railed: width >= 720 * growth
    readonly property bool low: height < 600   // a phone on its side, a small tablet
    readonly property bool narrow: width < 620 * growth

    width: 1280
    height: 800
    minimumWidth: 320
    minimumHeight: 320   // a phone on its side
    visible: true
    title: scenarioDocument.title
    color: Tokens.ground

    Component.onCompleted: {
        if (workFolder !== "") {
            Look.keepIn(workFolder)
            weather.keepIn(workFolder)
        }
        if (theme !== "")
            Look.theme = theme
        if (language !== "")
            Look.language = language
        if (units !== "")
            Look.units = units
        if (clock !== "")
            Look.clock = clock
        if (textScaleAsked || workFolder === "")
            Look.textScale = textScale
        Tokens.dark = theme !== "" || workFolder !== "" ? Look.dark : darkLook
        Tokens.strong = Look.strong
        Tokens.textScale = Look.textScale
        // A file that cannot be opened says so; another's hours are never shown in its place.
        const resumed = kept.resume(file)
        if (!resumed && !(file !== "" && scenarioDocument.open(file)) && file === "")
            scenarioDocument.openExample()
        window.asking = !resumed && file === "" && workFolder !== "" && Look.first
        pageArea.show()
    }
    onPageChanged: {
        window.asking = false
        scenarioDocument.leavePage()
        pageArea.show()
    }

    function ask() {
        firstRun.begin()
        window.asking = true
    }
    // What was dropped on the window.
    function take(urls) {
        if (urls.length > 0)
            scenarioDocument.open(urls[0])
    }

    ScenarioDocument {
        id: scenarioDocument
    }
    Connections {
        target: Look
        function onChanged() {
            Tokens.dark = Look.dark
            Tokens.strong = Look.strong
            Tokens.textScale = Look.textScale
        }
        function onTold() { scenarioDocument.tellAgain() }
    }
    Connections {
        target: scenarioDocument
        function onChangedOutside() { changedElsewhere.open() }
        function onOpened() { window.asking = false }
    }
    PageList {
        id: pageTable
        language: Look.language
    }
    WeatherChoices {
        id: weather
    }
    FirstPage {
        document: scenarioDocument
        onNowWanted: window.page = "now"
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
    FirstRun {
        id: firstRun
        document: scenarioDocument
        language: Look.language
    }
    FileShelf {
        id: fileShelf
        document: scenarioDocument
        plan: planRunner
        folder: window.workFolder
        language: Look.language
    }
    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: scenarioDocument.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        onActivated: scenarioDocument.redo()
    }
    Shortcut {
        sequences: ["Ctrl+N"]
        onActivated: beginning.ask(false)
    }
    Shortcut {
        sequences: ["F1"]
        onActivated: help.open()
    }
    Shortcut {
        sequences: ["Ctrl+O"]
        onActivated: openDialog.open()
    }
    Shortcut {
        sequences: ["Ctrl+S"]
        onActivated: actions.save()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+S"]
        onActivated: actions.saveAs()
    }
    Shortcut {
        sequences: ["Ctrl+Q"]
        onActivated: window.close()
    }
    FocusFollower {
        focused: window.activeFocusItem
    }

    PageKeys {
        id: whole
        anchors.fill: parent
        focus: true
        pages: window.pages
        page: window.page
        shown: pageArea.item as Item ?? middle
        onAsked: key => window.page = key

        DropArea {
            id: landing
            objectName: "landing"
            anchors.fill: parent
            keys: ["text/uri-list"]
            onDropped: drop => {
                drop.accept(Qt.CopyAction)
                window.take(drop.urls)
            }
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
                        saveAs()
                    else
                        scenarioDocument.save()
                }
                function saveAs() {
                    if (scenarioDocument.text === "")
                        return
                    saveDialog.currentFolder = scenarioDocument.folder()
                    saveDialog.selectedFile = scenarioDocument.suggestedFile()
                    saveDialog.open()
                }
                onOpenAsked: openDialog.open()
                onSaveAsked: save()
                onNewAsked: beginning.ask(false)
                onRecentAsked: beginning.ask(true)
                onSaveAsAsked: saveAs()
                onShareAsked: sharing.open()
                onHelpAsked: help.open()
                onAboutAsked: about.open()
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
                    wrapMode: Text.Wrap
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
                    // A page that says its own has no other above it.
                    visible: !(pageArea.item?.ownSentence ?? false)
                    height: visible ? implicitHeight : 0
                    sentence: scenarioDocument.text === "" ? qsTr("No file is open.") : planRunner.sentence
                    settled: !planRunner.running && !planRunner.weighing
                    figures: window.page === "days" && planRunner.answered ? planRunner.days.told : []
                    size: window.low ? Tokens.typeTitle : window.narrow ? Tokens.typeSentenceTight
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
                    visible: window.instead === "fault"
                    document: scenarioDocument
                    onKeysAsked: window.page = "file"
                }
                MendPage {
                    anchors.fill: pageArea
                    visible: window.instead === "broken"
                    document: scenarioDocument
                }
                FirstRunPage {
                    anchors.fill: pageArea
                    visible: window.instead === "first"
                    questions: firstRun
                    onLeaving: window.asking = false
                    onFinished: {
                        window.asking = false
                        if (firstRun.answered)
                            actions.saveAs()
                    }
                }
                NothingOpenPage {
                    anchors.fill: pageArea
                    visible: window.instead === "nothing"
                    ownOffered: true
                    onOwnAsked: window.ask()
                    onOpenAsked: openDialog.open()
                    onNewAsked: beginning.ask(false)
                }
                Loader {
                    id: pageArea
                    // A page out of sight is not kept: Qt's layouts may keep rows that a hidden list
                    // has already let go, and end the program when they are shown again.
                    active: window.instead === ""
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
    }

    Rectangle {
        anchors.fill: parent
        visible: landing.containsDrag
        color: Tokens.veil
        border.width: 4
        border.color: Tokens.accent
        PlainText {
            anchors.centerIn: parent
            width: parent.width - 2 * Tokens.gapLarge
            horizontalAlignment: Text.AlignHCenter
            text: qsTr("Let it go to open it")
            color: Tokens.accent
            font.pixelSize: Tokens.typeSentenceNarrow
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
    }
    PagesSheet {
        id: pageList
        pages: window.pages
        page: window.page
        onAsked: key => window.page = key
    }
    LookSheet {
        id: look
    }
    NewSheet {
        id: beginning
        shelf: fileShelf
        ownOffered: true
        onOwnAsked: window.ask()
        onTemplateAsked: key => scenarioDocument.openTemplate(key)
        onFileAsked: file => scenarioDocument.open(file)
    }
    HelpSheet {
        id: help
        page: window.page
        pageName: window.pages.find(one => one.key === window.page)?.name ?? ""
    }
    AboutSheet {
        id: about
    }
    ShareSheet {
        id: sharing
        document: scenarioDocument
        onPictureAsked: whole.grabToImage(grabbed => sharing.takePicture(grabbed.image))
    }
    OpeningDialog {
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
        onAnotherWanted: actions.saveAs()
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
