// One field of a table: its name, what it holds, how it is changed, and what is wrong with it.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: row

    required property string key
    required property string kind
    required property string label
    required property string shown
    required property bool given
    required property bool optional
    required property var options
    required property var spans
    required property bool canLess
    required property bool canMore
    required property int least   // of a count
    required property int most
    required property string error
    signal asked(string key)      // for a number or for words
    signal put(string value)
    signal step(int by)
    signal turned(string value)   // one of several
    signal momentMoved(int months, int days, int minutes)
    signal hoursAdded(string span)
    signal hoursRemoved(int number)
    signal hoursMoved(int number, bool itsEnd, int minutes)

    objectName: "field_" + key.slice(key.indexOf(".") + 1)
    spacing: 4

    SectionTitle {
        Layout.fillWidth: true
        visible: row.kind !== "count"
        text: row.label
    }
    ActionButton {
        objectName: "type"
        Layout.fillWidth: true
        visible: row.kind === "number" || row.kind === "words"
        text: row.shown
        spoken: qsTr("%1: %2. Change").arg(row.label).arg(row.shown)
        atLeft: true
        quiet: !row.given
        onClicked: row.asked(row.key)
    }
    Loader {
        Layout.fillWidth: true
        active: row.kind === "choice" || row.kind === "several"
        visible: active
        sourceComponent: Flow {
            id: choices
            spacing: Tokens.gapSmall
            Accessible.role: Accessible.Grouping
            Accessible.name: row.label
            Repeater {
                // By number: of a list that is new with every choice each button would be made anew,
                // and the keyboard and a screen reader would lose the one they are at.
                model: row.options.length
                ChoiceButton {
                    required property int index
                    readonly property var modelData: row.options[index] ?? { value: "", label: "", detail: "", chosen: false, asks: "" }
                    objectName: "choose_" + modelData.value
                    width: Math.min(implicitWidth, choices.width)
                    text: modelData.label
                    detail: modelData.detail
                    chosen: modelData.chosen
                    several: row.kind === "several"
                    onClicked: {
                        if (row.kind === "several") {
                            row.turned(modelData.value)
                            return
                        }
                        if (modelData.chosen)
                            return
                        if (modelData.asks.length > 0)
                            row.asked(modelData.asks)
                        else
                            row.put(modelData.value)
                    }
                }
            }
        }
    }
    Loader {
        Layout.fillWidth: true
        active: row.kind === "count"
        visible: active
        sourceComponent: CountStepper {
            label: row.label
            shown: row.shown
            detail: ""
            held: Number(row.shown) || 0
            minimumValue: row.least
            maximumValue: row.most
            canLess: row.canLess
            canMore: row.canMore
            onLess: row.step(-1)
            onMore: row.step(1)
        }
    }
    Loader {
        Layout.fillWidth: true
        active: row.kind === "moment"
        visible: active
        sourceComponent: MomentField {
            Accessible.role: Accessible.Grouping
            Accessible.name: row.label
            shown: row.shown
            onMoved: (months, days, minutes) => row.momentMoved(months, days, minutes)
        }
    }
    Loader {
        Layout.fillWidth: true
        active: row.kind === "hours"
        visible: active
        sourceComponent: HoursField {
            Accessible.role: Accessible.Grouping
            Accessible.name: row.label
            spans: row.spans
            silent: row.shown
            onAdded: span => row.hoursAdded(span)
            onRemoved: number => row.hoursRemoved(number)
            onMoved: (number, itsEnd, minutes) => row.hoursMoved(number, itsEnd, minutes)
        }
    }
    PlainText {
        objectName: "error"
        Layout.fillWidth: true
        visible: text.length > 0
        text: row.error
        color: Tokens.stop
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
}
