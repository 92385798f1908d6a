// The program's own dialog for files, where the system has none: rows for a finger, the place, the
// name to save under. Up and Down go through the list, Return opens, Backspace goes up a folder.
// The ids inside are wanted at once.
// qmllint disable deferred-property-id
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtQuick.Templates as T
import Candlemark

Popup {
    id: sheet

    required property string title
    property bool saving: false
    property string acceptLabel: sheet.saving ? qsTr("Save") : qsTr("Open")
    property var filters: []
    property alias folder: there.folder
    property alias typedName: name.text
    // The places then go with the list.
    readonly property bool low: height < 460 * Math.max(1, Tokens.textScale * 0.85) && width > height
    signal chosen(url file)

    parent: T.Overlay.overlay
    modal: true
    focus: true
    padding: Tokens.gapSmall
    width: Math.min(parent ? parent.width - 2 * Tokens.gapSmall : 640, Math.round(680 * Math.max(1, Tokens.textScale * 0.85)))
    height: parent ? Math.min(parent.height - 2 * Tokens.gapSmall, Math.round(760 * Math.max(1, Tokens.textScale * 0.85))) : 600
    x: parent ? Math.round((parent.width - width) / 2) : 0
    y: parent ? Math.round((parent.height - height) / 2) : 0
    closePolicy: Popup.CloseOnEscape
    enter: null
    exit: null
    T.Overlay.modal: Rectangle { color: Tokens.veil }
    background: Rectangle {
        color: Tokens.surface
        radius: Tokens.corner
        border.width: 1
        border.color: Tokens.outline
    }
    onOpened: {
        there.look()
        list.currentIndex = there.count > 0 ? 0 : -1
        list.positionViewAtBeginning()
        if (sheet.saving) {
            name.forceActiveFocus(Qt.PopupFocusReason)
            name.select(0, name.text.lastIndexOf(".") > 0 ? name.text.lastIndexOf(".") : name.text.length)
        } else {
            list.forceActiveFocus(Qt.PopupFocusReason)
        }
    }

    function take(row) {
        if (row < 0 || row >= there.count)
            return
        const file = there.urlAt(row)
        if (there.isFolderAt(row))
            sheet.goTo(file)
        else if (sheet.saving)
            name.text = there.nameOf(file)
        else
            sheet.finish(file)
    }
    function goTo(folder) {
        there.folder = folder
        list.currentIndex = there.count > 0 ? 0 : -1
        list.positionViewAtBeginning()
    }
    function accept() {
        const file = there.fileNamed(name.text)
        if (accepting.enabled && String(file).length > 0)
            sheet.finish(file)
    }
    function finish(file) {
        sheet.close()
        sheet.chosen(file)
    }

    FolderModel {
        id: there
        filters: sheet.filters
    }

    contentItem: ColumnLayout {
        id: inside
        focus: true
        spacing: Tokens.gapSmall

        SpokenAs {
            item: inside.parent
            role: Accessible.Dialog
            name: sheet.title
        }

        RowLayout {
            Layout.fillWidth: true
            spacing: Tokens.gapSmall
            PlainText {
                Layout.fillWidth: true
                Layout.leftMargin: Tokens.gapSmall
                text: sheet.title
                color: Tokens.text
                font.pixelSize: sheet.low ? Tokens.typeBody : Tokens.typeTitle
                font.bold: true
                wrapMode: Text.Wrap
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }
            ActionButton {
                objectName: "close"
                Layout.preferredWidth: Math.max(Tokens.touchTarget, implicitHeight)
                leftPadding: 0
                rightPadding: 0
                text: "✕"
                spoken: qsTr("Close")
                onClicked: sheet.close()
            }
        }
        GridLayout {
            Layout.fillWidth: true
            visible: sheet.saving
            columns: sheet.width >= 280 * Tokens.textScale ? 2 : 1
            columnSpacing: Tokens.gapSmall
            rowSpacing: Tokens.gapSmall
            TypedLine {
                id: name
                objectName: "fileName"
                Layout.fillWidth: true
                label: qsTr("Name of the file")
                hint: label
                onEntered: sheet.accept()
            }
            ActionButton {
                id: accepting
                objectName: "acceptFile"
                Layout.fillWidth: parent.columns === 1
                // Beside the line as high as it: its words wrap while it has no width yet.
                Layout.preferredHeight: parent.columns === 1 ? implicitHeight : Math.max(Tokens.mainTarget, name.implicitHeight)
                main: true
                text: sheet.acceptLabel
                enabled: there.writable && String(there.fileNamed(name.text)).length > 0
                onClicked: sheet.accept()
            }
        }
        // Beside each other where the window is low, else one below the other.
        Item {
            id: body
            Layout.fillWidth: true
            Layout.fillHeight: true

            Flickable {
                id: aside
                width: sheet.low ? Math.round(body.width * 0.4) : body.width
                height: sheet.low ? body.height : Math.min(places.implicitHeight, Math.round(body.height * 0.5))
                contentWidth: width
                contentHeight: places.implicitHeight
                interactive: contentHeight > height + 1
                boundsBehavior: Flickable.StopAtBounds
                maximumFlickVelocity: Look.still ? 1 : 2500
                clip: true
                ScrollBar.vertical: QuietBar {
                    policy: aside.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                }
                FilePlaces {
                    id: places
                    width: aside.width - (aside.interactive ? 12 : 0)
                    listing: there
                    saving: sheet.saving
                    onWentTo: folder => sheet.goTo(folder)
                }
            }
            ListView {
                id: list
                objectName: "files"
                anchors.top: sheet.low ? body.top : aside.bottom
                anchors.topMargin: sheet.low ? 0 : Tokens.gapSmall
                anchors.bottom: body.bottom
                anchors.right: body.right
                width: sheet.low ? body.width - aside.width - Tokens.gapSmall : body.width
                model: there
                spacing: 4
                boundsBehavior: Flickable.StopAtBounds
                maximumFlickVelocity: Look.still ? 1 : 2500
                clip: true
                activeFocusOnTab: true
                keyNavigationEnabled: true
                highlightMoveDuration: 0
                ScrollBar.vertical: QuietBar {
                    width: 10
                    policy: list.contentHeight > list.height + 1 ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                }
                Accessible.role: Accessible.List
                Accessible.name: qsTr("Folders and files")
                Keys.onReturnPressed: sheet.take(list.currentIndex)
                Keys.onEnterPressed: sheet.take(list.currentIndex)
                Keys.onSpacePressed: sheet.take(list.currentIndex)
                Keys.onPressed: event => {
                    const last = list.count - 1
                    const page = Math.max(1, Math.floor(list.height / (Tokens.touchTarget + 4)) - 1)
                    const to = { [Qt.Key_Home]: 0, [Qt.Key_End]: last, [Qt.Key_PageUp]: Math.max(0, list.currentIndex - page),
                                 [Qt.Key_PageDown]: Math.min(last, list.currentIndex + page) }[event.key]
                    event.accepted = to !== undefined || event.key === Qt.Key_Backspace
                    if (to !== undefined)
                        list.currentIndex = to
                    else if (event.key === Qt.Key_Backspace && there.canGoUp)
                        there.goUp()
                }
                delegate: PickRow {
                    id: row
                    required property int index
                    required property bool isFolder
                    required name
                    required detail
                    required spoken
                    objectName: "file_" + name
                    width: list.width - 12
                    focusPolicy: Qt.NoFocus
                    atRight: row.isFolder ? "▸" : ""
                    ofSeveral: true
                    chosen: list.activeFocus && row.ListView.isCurrentItem
                    onClicked: {
                        list.currentIndex = row.index
                        sheet.take(row.index)
                    }
                }
            }
        }
    }
}
