// The file itself: opened, saved, shared, compared with another, brought back to a version that was
// saved over; and every key it may have, with what holds where it is silent.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    required property KeptWork kept
    property string other   // the file it is compared with
    readonly property bool busy: comparison.running

    AnswerRunner {
        id: comparison
        document: page.document
        question: page.other.length > 0 ? "compare" : ""
        otherFile: page.other
    }
    KeysModel {
        id: keys
        document: page.document
    }
    OpeningDialog {
        id: otherDialog
        title: qsTr("Compare with")
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onAccepted: page.compareWith(selectedFile)
    }
    ReplaceSheet {
        id: thereAlready
        versionsStay: page.kept.folder !== ""
    }
    SavingDialog {
        id: elsewhere
        title: qsTr("Save under another name")
        document: page.document
        asking: thereAlready
        defaultSuffix: "toml"
        nameFilters: [qsTr("Scenario files (*.toml)")]
        onChosen: file => page.document.saveAs(file)
    }
    WordsSheet {
        id: typing
        objectName: "typing"
        onDone: (key, words) => {
            if (!keys.put(key, words))
                typing.trouble = keys.trouble
        }
        onTakenOut: key => {
            if (!keys.takeOut(key))
                typing.trouble = keys.trouble
        }
    }

    function compareWith(file) {
        page.other = page.document.pathOf(file)
    }

    SplitPage {
        anchors.fill: parent

        main: Component {
            ColumnLayout {
                spacing: Tokens.gap

                SectionTitle {
                    Layout.fillWidth: true
                    text: qsTr("Title")
                }
                ActionButton {
                    objectName: "titleField"
                    Layout.fillWidth: true
                    atLeft: true
                    text: page.document.title
                    spoken: qsTr("Title: %1. Change").arg(page.document.title)
                    onClicked: {
                        typing.removable = keys.isGiven("title")
                        typing.ask("title", qsTr("Title"), page.document.title)
                    }
                }
                Flow {
                    id: ways
                    Layout.fillWidth: true
                    spacing: Tokens.gapSmall
                    ActionButton {
                        objectName: "saveAs"
                        width: Math.min(implicitWidth, ways.width)
                        text: qsTr("Save under another name")
                        onClicked: {
                            elsewhere.currentFolder = page.document.folder()
                            elsewhere.selectedFile = page.document.suggestedFile()
                            elsewhere.open()
                        }
                    }
                    ActionButton {
                        objectName: "copyText"
                        width: Math.min(implicitWidth, ways.width)
                        text: qsTr("Copy the whole text")
                        onClicked: page.document.copyText()
                    }
                    ActionButton {
                        objectName: "pasteText"
                        width: Math.min(implicitWidth, ways.width)
                        text: qsTr("Take up a copied text")
                        onClicked: page.document.pasteText()
                    }
                    ActionButton {
                        objectName: "compare"
                        width: Math.min(implicitWidth, ways.width)
                        text: qsTr("Compare with another file")
                        onClicked: otherDialog.open()
                    }
                }
                Fold {
                    objectName: "leftWork"
                    Layout.fillWidth: true
                    visible: page.kept.left.length > 0
                    title: qsTr("Unsaved work that was kept")
                    open: true
                    inside: Component {
                        Column {
                            spacing: Tokens.gapSmall
                            Repeater {
                                model: page.kept.left
                                RowLayout {
                                    id: leftPiece
                                    required property var modelData
                                    width: parent?.width ?? 0
                                    spacing: Tokens.gapSmall
                                    PickRow {
                                        objectName: "takeUp"
                                        Layout.fillWidth: true
                                        name: leftPiece.modelData.name
                                        detail: leftPiece.modelData.detail
                                        spoken: qsTr("Take up the unsaved work on %1, %2").arg(name).arg(detail)
                                        onClicked: page.kept.takeUp(leftPiece.modelData.piece)
                                    }
                                    ActionButton {
                                        objectName: "putAway"
                                        text: qsTr("Put away")
                                        spoken: qsTr("Offer the unsaved work on %1 no longer; it stays as a version of its file").arg(leftPiece.modelData.name)
                                        onClicked: page.kept.putAway(leftPiece.modelData.piece)
                                    }
                                }
                            }
                        }
                    }
                }
                Fold {
                    objectName: "versions"
                    Layout.fillWidth: true
                    title: qsTr("Versions that were saved over")
                    inside: Component {
                        Column {
                            id: versions
                            readonly property var all: page.kept.versionsKept()
                            spacing: Tokens.gapSmall
                            PlainText {
                                width: versions.width
                                visible: versions.all.length === 0
                                text: qsTr("None yet. The last ten are kept each time this file is saved.")
                                color: Tokens.quietText
                                font.pixelSize: Tokens.typeSmall
                                wrapMode: Text.Wrap
                                Accessible.role: Accessible.StaticText
                                Accessible.name: text
                            }
                            Repeater {
                                model: versions.all
                                PickRow {
                                    required property var modelData
                                    width: parent?.width ?? 0
                                    name: modelData.shown
                                    detail: qsTr("take this version up; the way back stays open")
                                    onClicked: page.document.takeTextOf(modelData.path)
                                }
                            }
                        }
                    }
                }
                ColumnLayout {
                    objectName: "comparison"
                    Layout.fillWidth: true
                    visible: page.other.length > 0
                    spacing: Tokens.gapSmall
                    SectionTitle {
                        Layout.fillWidth: true
                        text: qsTr("From this build to %1").arg(page.other.split("/").pop())
                    }
                    AnswerWords {
                        Layout.fillWidth: true
                        runner: comparison
                    }
                    AnswerBody {
                        Layout.fillWidth: true
                        runner: comparison
                    }
                }
            }
        }
        behind: Component {
            ColumnLayout {
                spacing: Tokens.gapSmall

                SectionTitle {
                    Layout.fillWidth: true
                    text: qsTr("What was understood of the file")
                }
                TypedLine {
                    objectName: "wantedKey"
                    Layout.fillWidth: true
                    label: qsTr("Part of a key")
                    hint: qsTr("Type part of a key")
                    text: keys.wanted
                    onTextEdited: keys.wanted = text
                }
                Flow {
                    id: extents
                    Layout.fillWidth: true
                    spacing: Tokens.gapSmall
                    Accessible.role: Accessible.Grouping
                    Accessible.name: qsTr("What was understood of the file")
                    ChoiceButton {
                        objectName: "givenKeys"
                        width: Math.min(implicitWidth, extents.width)
                        text: qsTr("what the file says")
                        chosen: keys.givenOnly
                        onClicked: keys.givenOnly = true
                    }
                    ChoiceButton {
                        objectName: "allKeys"
                        width: Math.min(implicitWidth, extents.width)
                        text: qsTr("all it could say")
                        chosen: !keys.givenOnly
                        onClicked: keys.givenOnly = false
                    }
                }
                PlainText {
                    objectName: "keyTrouble"
                    Layout.fillWidth: true
                    visible: text.length > 0
                    text: keys.trouble
                    color: Tokens.stop
                    font.pixelSize: Tokens.typeSmall
                    wrapMode: Text.Wrap
                    Accessible.role: Accessible.AlertMessage
                    Accessible.name: text
                }
                PlainText {
                    objectName: "keyTold"
                    Layout.fillWidth: true
                    visible: text.length > 0
                    text: keys.told
                    color: Tokens.accent
                    font.pixelSize: Tokens.typeSmall
                    wrapMode: Text.Wrap
                    Accessible.role: Accessible.AlertMessage
                    Accessible.name: text
                }
                Rows {
                    objectName: "keys"
                    Layout.fillWidth: true
                    spacing: Tokens.gap
                    model: keys
                    row: ColumnLayout {
                        id: row
                        required property string key
                        required property string value
                        required property string origin
                        required property bool given
                        required property string spoken
                        required property string title
                        required property string heading
                        width: parent?.width ?? 0
                        spacing: Tokens.gapSmall
                        SectionTitle {
                            Layout.fillWidth: true
                            visible: text.length > 0
                            text: row.heading
                        }
                        PickRow {
                            objectName: "key_" + row.key
                            Layout.fillWidth: true
                            name: row.title
                            spoken: row.spoken
                            detail: row.value.length > 0 ? row.value : "–"
                            below: row.origin
                            onClicked: {
                                typing.removable = row.given
                                typing.ask(row.key, row.title, row.value)
                            }
                        }
                    }
                }
            }
        }
    }
}
