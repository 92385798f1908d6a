// Asks where to save: in the dialog of the system where there is one, else in the program's own. The
// system's asks by itself before a file is replaced; the program's own does not, so the sheet asks.
import QtQuick
import Candlemark

Item {
    id: dialog

    required property ScenarioDocument document
    required property ReplaceSheet asking   // its own alone
    property string title
    property string acceptLabel: qsTr("Save")
    property var nameFilters: []
    property string defaultSuffix
    property url currentFolder
    property url selectedFile               // what is proposed, then what was picked
    property bool drawnHere: true           // within this window, over its pages
    property url wanted
    readonly property bool opened: sheet.opened
    readonly property alias sheet: sheet
    signal chosen(url file)

    function open() {
        dialog.drawnHere = !listing.platformHasDialog()
        if (!dialog.drawnHere) {
            systems.setSource(Qt.resolvedUrl("SystemFileDialog.qml"), {
                title: dialog.title, acceptLabel: dialog.acceptLabel, nameFilters: dialog.nameFilters, saving: true,
                defaultSuffix: dialog.defaultSuffix, currentFolder: dialog.currentFolder, proposed: dialog.selectedFile })
            system().taken.connect(dialog.take)
            system().open()
            return
        }
        const proposed = String(dialog.selectedFile).length > 0
        sheet.folder = String(dialog.currentFolder).length > 0 ? dialog.currentFolder : listing.folderOf(dialog.selectedFile)
        sheet.typedName = proposed ? listing.nameOf(dialog.selectedFile) : ""
        sheet.open()
    }
    function close() {
        sheet.close()
        if (system())
            system().close()
    }
    function system() {
        return systems.item as SystemFileDialog
    }
    function take(selected) {
        dialog.selectedFile = selected
        dialog.wanted = dialog.document.withEnding(selected, dialog.defaultSuffix)
        const hasAsked = !dialog.drawnHere && String(dialog.wanted) === String(selected)
        if (dialog.document.isThere(dialog.wanted) && !hasAsked)
            dialog.asking.ask(dialog.document.nameOf(dialog.wanted))
        else
            dialog.chosen(dialog.wanted)
    }

    FolderModel {
        id: listing
    }
    FileSheet {
        id: sheet
        title: dialog.title
        saving: true
        acceptLabel: dialog.acceptLabel
        filters: dialog.nameFilters
        onChosen: file => dialog.take(file)
    }
    Connections {
        target: dialog.asking
        function onAgreed() { dialog.chosen(dialog.wanted) }
        function onAnotherWanted() { dialog.open() }
    }
    Loader {
        id: systems
    }
}
