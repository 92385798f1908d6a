// Asks where to save. A platform's own dialog asks by itself before a file is replaced; the one that
// is drawn within this window where there is none does not, so the sheet asks.
import QtQuick
import QtQuick.Dialogs
import Candlemark

FileDialog {
    id: dialog

    required property ScenarioDocument document
    required property ReplaceSheet asking   // its own alone
    property bool drawnHere: false          // within this window, over its pages
    property url wanted
    signal chosen(url file)

    fileMode: FileDialog.SaveFile
    acceptLabel: qsTr("Save")
    onVisibleChanged: if (visible)
        afterwards.start()
    onAccepted: dialog.take(selectedFile)

    function take(selected) {
        dialog.wanted = dialog.document.withEnding(selected, dialog.defaultSuffix)
        const hasAsked = !dialog.drawnHere && String(dialog.wanted) === String(selected)
        if (dialog.document.isThere(dialog.wanted) && !hasAsked)
            dialog.asking.ask(dialog.document.nameOf(dialog.wanted))
        else
            dialog.chosen(dialog.wanted)
    }

    property Timer afterwards: Timer {
        interval: 0
        onTriggered: dialog.drawnHere = dialog.asking.parent !== null && dialog.asking.parent.visible
    }
    property Connections answers: Connections {
        target: dialog.asking
        function onAgreed() { dialog.chosen(dialog.wanted) }
        function onAnotherWanted() { dialog.open() }
    }
}
