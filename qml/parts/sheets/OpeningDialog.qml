// Asks which file to open: the dialog of the system where there is one, else the program's own.
import QtQuick
import Candlemark

Item {
    id: dialog

    property string title
    property var nameFilters: []
    property url currentFolder
    property url selectedFile
    readonly property bool own: sheet.opened
    readonly property alias sheet: sheet
    signal accepted()

    function open() {
        if (listing.platformHasDialog()) {
            systems.setSource(Qt.resolvedUrl("SystemFileDialog.qml"), { title: dialog.title, nameFilters: dialog.nameFilters, currentFolder: dialog.currentFolder })
            system().taken.connect(dialog.take)
            system().open()
            return
        }
        sheet.folder = String(dialog.currentFolder).length > 0 ? dialog.currentFolder : listing.folderOf("")
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
    function take(file) {
        dialog.selectedFile = file
        dialog.currentFolder = listing.folderOf(file)
        dialog.accepted()
    }

    FolderModel {
        id: listing
    }
    FileSheet {
        id: sheet
        title: dialog.title
        filters: dialog.nameFilters
        onChosen: file => dialog.take(file)
    }
    Loader {
        id: systems
    }
}
