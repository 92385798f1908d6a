// One entry of the log: what it is about, the number, the time, and what will be written.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property NoteDraft draft
    readonly property bool low: parent !== null && parent.height < 620 * Math.max(1, Tokens.textScale * 0.8)
        && parent.width > parent.height * 1.3
    readonly property bool twoColumns: low
    readonly property bool padAlone: low && draft.typesNumber   // what it is about stands beside it

    title: draft.kind === "volts" ? qsTr("Volts or display")
         : draft.kind === "meter" ? qsTr("Plug-in meter")
         : draft.kind === "sun" ? qsTr("Sun today")
         : draft.kind === "thermometer" ? qsTr("Thermometer")
         : draft.kind === "switched" ? qsTr("Switched on or off") : qsTr("It happened")
    breadth: twoColumns ? 800 : 440
    padding: low ? Tokens.gapSmall : Tokens.gap
    onOpened: if (draft.typesNumber)
        pad.forceActiveFocus(Qt.PopupFocusReason)

    foot: NoteEnd {
        Layout.fillWidth: true
        visible: !sheet.twoColumns
        draft: sheet.draft
        onWriteAsked: sheet.write()
    }

    function pick(key) {
        sheet.draft.pick(key)
        if (sheet.draft.typesNumber)
            pad.forceActiveFocus(Qt.OtherFocusReason)
    }
    function write() {
        if (sheet.draft.write())
            sheet.close()
    }

    GridLayout {
        Layout.fillWidth: true
        columns: sheet.twoColumns ? 2 : 1
        columnSpacing: Tokens.gap
        rowSpacing: Tokens.gapSmall

        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Tokens.gapSmall

            NoteChoices {
                Layout.fillWidth: true
                visible: all.length > 0 && !sheet.padAlone
                all: sheet.draft.choices
                chosen: sheet.draft.what
                prefix: "what"
                onPicked: key => sheet.pick(key)
            }
            NotePad {
                id: pad
                objectName: "notePad"
                Layout.fillWidth: true
                visible: sheet.draft.typesNumber
                draft: sheet.draft
                onDone: sheet.write()
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            spacing: Tokens.gapSmall

            NoteChoices {
                Layout.fillWidth: true
                visible: all.length > 0 && sheet.padAlone
                all: sheet.draft.choices
                chosen: sheet.draft.what
                prefix: "what"
                onPicked: key => sheet.pick(key)
            }
            NoteChoices {
                Layout.fillWidth: true
                visible: all.length > 0
                all: sheet.draft.details
                chosen: sheet.draft.detail
                across: sheet.draft.kind === "meter" ? 0 : 2
                prefix: "detail"
                onPicked: key => {
                    sheet.draft.pickDetail(key)
                    if (sheet.draft.typesNumber)
                        pad.forceActiveFocus(Qt.OtherFocusReason)
                }
            }
            StepsLine {
                objectName: "packsCounted"
                Layout.fillWidth: true
                visible: sheet.draft.most > 1
                words: qsTr("%1 of %2 packs").arg(sheet.draft.count).arg(sheet.draft.most)
                canLess: sheet.draft.count > 1
                canMore: sheet.draft.count < sheet.draft.most
                steps: [{ by: -1, text: "−", spoken: qsTr("One pack fewer") },
                        { by: 1, text: "+", spoken: qsTr("One pack more") }]
                onStepped: by => sheet.draft.setCount(sheet.draft.count + by)
            }
            StepsLine {
                objectName: "expectedBy"
                Layout.fillWidth: true
                visible: sheet.draft.asksBy
                words: qsTr("by %1").arg(sheet.draft.byWords)
                steps: [{ by: -360, text: qsTr("−6 h"), spoken: qsTr("Expected six hours earlier") },
                        { by: -60, text: qsTr("−1 h"), spoken: qsTr("Expected an hour earlier") },
                        { by: 60, text: qsTr("+1 h"), spoken: qsTr("Expected an hour later") },
                        { by: 360, text: qsTr("+6 h"), spoken: qsTr("Expected six hours later") }]
                onStepped: by => sheet.draft.stepBy(by)
            }
            NoteEnd {
                Layout.fillWidth: true
                visible: sheet.twoColumns
                draft: sheet.draft
                onWriteAsked: sheet.write()
            }
            StepsLine {
                objectName: "noteTime"
                Layout.fillWidth: true
                words: sheet.draft.atWords
                canLess: sheet.draft.canEarlier
                canMore: sheet.draft.canLater
                steps: [{ by: -60, text: qsTr("−1 h"), spoken: qsTr("An hour earlier") },
                        { by: -10, text: qsTr("−10 min"), spoken: qsTr("Ten minutes earlier") },
                        { by: 10, text: qsTr("+10 min"), spoken: qsTr("Ten minutes later") },
                        { by: 0, text: qsTr("now"), spoken: qsTr("Back to now") }]
                onStepped: by => {
                    if (by === 0)
                        sheet.draft.toNow()
                    else
                        sheet.draft.step(by)
                }
            }
        }
    }
}
