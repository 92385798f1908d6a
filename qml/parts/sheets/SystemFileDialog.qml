// The dialog for files of the system. In a file of its own, since it is made only where it is used.
import QtQuick
import QtQuick.Dialogs

Item {
    id: dialog

    property string title
    property string acceptLabel
    property var nameFilters: []
    property string defaultSuffix
    property url currentFolder
    property url proposed
    property bool saving: false
    signal taken(url file)

    function open() {
        if (String(dialog.proposed).length > 0)
            asked.selectedFile = dialog.proposed
        asked.open()
    }
    function close() { asked.close() }

    FileDialog {
        id: asked
        title: dialog.title
        acceptLabel: dialog.acceptLabel
        nameFilters: dialog.nameFilters
        defaultSuffix: dialog.defaultSuffix
        fileMode: dialog.saving ? FileDialog.SaveFile : FileDialog.OpenFile
        currentFolder: dialog.currentFolder
        onAccepted: dialog.taken(selectedFile)
    }
}
