// While an outage runs: until when from now, what goes off next and what to read next; the days with
// what burnt so far; and six buttons that write down what was read, done or seen.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool ownSentence: true   // that of the plan, which knows no reading, is not shown
    readonly property bool busy: runner.running
    readonly property bool answered: runner.answered && nowClock.within   // an answer of before is stale
    readonly property real growth: Math.max(1, Tokens.textScale * 0.85)
    // Three rows of buttons beside the words take so much.
    readonly property bool low: height < Math.max(245, 175 * growth)
    readonly property string arrangement: width >= 900 * growth ? "wide"
        : !low && (width > height * 1.4 || width >= 620 * growth && width > height * 0.8) ? "beside" : "phone"
    // Too low for the buttons to stay in sight: they scroll with the rest.
    readonly property bool tight: arrangement === "phone" && height < 320 * growth
    readonly property int edge: Tokens.gap
    readonly property alias clock: nowClock
    readonly property alias log: entries
    readonly property alias answer: runner

    function tell(words) {
        told.text = page.document.text
        told.words = words
    }
    function note(kind) {
        draft.begin(kind)
        sheet.open()
    }

    // One step back is that entry as long as nothing came after it.
    Connections {
        target: page.document
        function onTextChanged() {
            if (page.document.text !== told.text)
                told.words = ""
        }
    }
    Repeater {
        model: ["volts", "meter", "sun", "thermometer", "switched", "happened"]
        Item {
            id: key
            required property string modelData
            required property int index
            Shortcut {
                sequence: String(key.index + 1)
                enabled: nowClock.within && !sheet.opened
                onActivated: page.note(key.modelData)
            }
        }
    }

    WrittenStrip {
        id: told
        objectName: "written"
        width: page.width
        onUndoAsked: page.document.undo()
    }
    Scroll {
        id: reading
        objectName: "reading"
        edge: page.edge
        anchors.top: told.bottom
        anchors.left: parent.left
        width: page.arrangement === "wide" ? Math.round(page.width * 0.46)
             : page.arrangement === "beside" ? page.width - buttons.width - page.edge : page.width
        anchors.bottom: page.arrangement === "phone" && !page.tight ? buttons.top : parent.bottom
        anchors.bottomMargin: page.arrangement === "phone" && !page.tight ? Tokens.gapSmall : 0
        spacing: Tokens.gap

        ClockPanel {
            Layout.fillWidth: true
            clock: nowClock
        }
        NowSentences {
            Layout.fillWidth: true
            runner: runner
            instead: nowClock.within ? "" : page.plan.sentence
            size: page.arrangement === "wide" && page.width >= 1000 * page.growth ? Tokens.typeSentenceNarrow + 3
                : Tokens.typeSentenceTight
        }
        Loader {
            Layout.fillWidth: true
            Layout.preferredHeight: active ? Math.max(420, item?.leastHeight ?? 0) : 0
            active: page.arrangement !== "wide" && page.answered
            visible: active
            sourceComponent: Component { PlotPane { days: runner.days } }
        }
        Loader {
            Layout.fillWidth: true
            active: page.tight
            visible: active
            sourceComponent: Component {
                NoteButtons {
                    objectName: "noteButtons"
                    columns: 2
                    enabled: nowClock.within
                    onAsked: kind => page.note(kind)
                }
            }
        }
        NowFurther {
            Layout.fillWidth: true
            runner: runner
            shown: page.answered
        }
        LogList {
            objectName: "log"
            Layout.fillWidth: true
            entries: entries
            onStruck: page.tell(qsTr("Struck. It stays readable."))
        }
        Fold {
            objectName: "behind"
            Layout.fillWidth: true
            visible: page.answered
            title: qsTr("What stands behind it")
            inside: Component { FindingsList { source: runner } }
        }
    }
    Loader {
        id: beside
        anchors.top: told.bottom
        anchors.topMargin: page.edge
        anchors.left: reading.right
        anchors.right: parent.right
        anchors.rightMargin: page.edge
        anchors.bottom: buttons.top
        anchors.bottomMargin: page.edge
        active: page.arrangement === "wide" && page.answered
        visible: active
        sourceComponent: Component { PlotPane { days: runner.days } }
    }
    NoteButtons {
        id: buttons
        objectName: "noteButtons"
        visible: !page.tight
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Tokens.gapSmall
        anchors.right: parent.right
        anchors.rightMargin: page.edge
        columns: page.arrangement === "beside" ? 2 : Tokens.textScale > 1.5 && page.arrangement === "phone" ? 2 : 3
        width: page.arrangement === "phone" ? page.width - 2 * page.edge
             : page.arrangement === "wide" ? page.width - reading.width - page.edge
             : Math.round(Math.min(page.width * 0.4, 250 * page.growth))
        enabled: nowClock.within
        onAsked: kind => page.note(kind)
    }
    NoteSheet {
        id: sheet
        objectName: "noteSheet"
        draft: draft
    }
    // Behind what shows them: the page is taken down in the order in which it stands here, and what
    // shows the days would be left without any.
    NowClock {
        id: nowClock
        document: page.document
    }
    NowRunner {
        id: runner
        document: page.document
        at: nowClock.asked
    }
    LogModel {
        id: entries
        document: page.document
        clock: nowClock
        odd: runner.odd
    }
    NoteDraft {
        id: draft
        document: page.document
        clock: nowClock
        onWrote: page.tell(qsTr("Written down. %1").arg(draft.written))
    }
}
