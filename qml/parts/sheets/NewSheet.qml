// What to begin with: what one has, a worked scenario, or a file that was open before.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property FileShelf shelf
    property bool onlyRecent: false
    property bool ownOffered: false   // the five questions
    signal ownAsked()
    signal templateAsked(string key)
    signal fileAsked(url file)

    title: sheet.onlyRecent ? qsTr("Open before") : qsTr("Begin")
    breadth: 620
    onOpened: sheet.shelf.look()

    function ask(recent) {
        sheet.onlyRecent = recent
        sheet.open()
    }

    ActionButton {
        objectName: "beginOwn"
        Layout.fillWidth: true
        visible: sheet.ownOffered && !sheet.onlyRecent
        main: true
        text: qsTr("From what I have")
        spoken: qsTr("Begin from what I have: five short questions")
        onClicked: {
            sheet.close()
            sheet.ownAsked()
        }
    }
    SectionTitle {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: sheet.shelf.recent.length > 0 || sheet.onlyRecent
        text: sheet.shelf.recent.length > 0 ? qsTr("Open before, each with the answer it had") : qsTr("No file was open before.")
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened ? sheet.shelf.recent : []
            RowLayout {
                width: parent?.width ?? 0
                id: line
                required property var modelData
                spacing: Tokens.gapSmall
                PickRow {
                    objectName: "recent"
                    Layout.fillWidth: true
                    enabled: line.modelData.there
                    name: line.modelData.name
                    detail: line.modelData.there ? line.modelData.answer : qsTr("It is no longer there.")
                    below: line.modelData.detail
                    spoken: name + ", " + detail + ", " + below
                    onClicked: {
                        sheet.close()
                        sheet.fileAsked(line.modelData.url)
                    }
                }
                ActionButton {
                    objectName: "forget"
                    Layout.preferredWidth: Math.max(Tokens.touchTarget, implicitHeight)
                    leftPadding: 0
                    rightPadding: 0
                    text: "✕"
                    spoken: qsTr("Take %1 from this list; the file stays").arg(line.modelData.name)
                    onClicked: sheet.shelf.forget(line.modelData.url)
                }
            }
        }
    }
    SectionTitle {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        visible: !sheet.onlyRecent
        text: qsTr("Worked examples, to change into your own")
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened && !sheet.onlyRecent ? sheet.shelf.templates : []
            PickRow {
                width: parent?.width ?? 0
                required property var modelData
                objectName: "template_" + modelData.key
                name: modelData.name
                detail: modelData.detail
                onClicked: {
                    sheet.close()
                    sheet.templateAsked(modelData.key)
                }
            }
        }
    }
}
