// What the sun gives back: the place, the month, how the panels stand and how many there are; the
// recharge of each outage day with its range.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

SplitPage {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool busy: answer.running

    AnswerRunner {
        id: answer
        document: page.document
        question: "sun"
        trial: sun.trial
    }
    SunControls {
        id: sun
        document: page.document
    }
    Binding {
        target: page.plan
        property: "trial"
        value: sun.trial
    }
    RangeBars {
        id: days
        runner: answer
        series: "sun_days"
        names: "date"
        low: "low"
        likely: "likely"
        high: "high"
    }
    RangeBars {
        id: counts
        runner: answer
        series: "panels"
        names: "panels"
        low: "low"
        likely: "likely"
        high: "high"
    }
    WeatherChoices {
        id: weather
        document: page.document
    }
    OpeningDialog {
        id: weatherDialog
        title: qsTr("Choose a weather file")
        nameFilters: [qsTr("Hours of a year (*.epw *.csv)"), qsTr("All files (*)")]
        onAccepted: weather.choose(selectedFile)
    }
    PlaceSheet {
        id: places
        onPicked: name => sun.setPlace(name)
        onOwnPicked: sun.makePlaceOwn()
    }

    main: Component {
        ColumnLayout {
            spacing: Tokens.gap

            AnswerWords {
                Layout.fillWidth: true
                runner: answer
            }
            SectionTitle {
                Layout.fillWidth: true
                visible: days.count > 0
                text: qsTr("What each day gives back: likely, and from nine in ten to one in ten")
            }
            RangeBarsView {
                objectName: "sunDays"
                Layout.fillWidth: true
                visible: days.count > 0
                bars: days
                spoken: qsTr("What each day gives back")
            }
            CountStepper {
                objectName: "panels"
                Layout.fillWidth: true
                visible: page.document.panels.present
                label: page.document.panels.label
                shown: page.document.panels.shown
                detail: page.document.panels.detail
                held: page.document.panels.value
                minimumValue: page.document.panels.least
                maximumValue: page.document.panels.most
                canLess: page.document.panels.canLess
                canMore: page.document.panels.canMore
                onLess: page.document.panels.less()
                onMore: page.document.panels.more()
            }
            TiltControl {
                Layout.fillWidth: true
                visible: sun.hasPanels
                controls: sun
            }
            SectionTitle {
                Layout.fillWidth: true
                text: qsTr("Place")
            }
            ActionButton {
                objectName: "place"
                Layout.fillWidth: true
                text: sun.place
                spoken: qsTr("Place: %1. Change").arg(sun.place)
                atLeft: true
                onClicked: places.open()
            }
            ActionButton {
                objectName: "weatherFile"
                Layout.fillWidth: true
                text: weather.file === "" ? qsTr("Choose a weather file") : qsTr("Weather file: %1").arg(weather.file)
                spoken: weather.file === "" ? text : qsTr("Weather file: %1. Choose it").arg(weather.file)
                atLeft: true
                onClicked: weatherDialog.open()
            }
            PlainText {
                objectName: "weatherTrouble"
                Layout.fillWidth: true
                visible: text !== ""
                text: weather.trouble
                color: Tokens.stop
                font.pixelSize: Tokens.typeSmall
                wrapMode: Text.Wrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
            SectionTitle {
                Layout.fillWidth: true
                text: qsTr("Month")
            }
            EvenGrid {
                objectName: "months"
                Layout.fillWidth: true
                readonly property real least: 84 * Math.max(1, Tokens.textScale)
                columns: Math.max(2, Math.min(6, Math.floor((width + Tokens.gapSmall) / (least + Tokens.gapSmall))))
                model: sun.months
                Accessible.role: Accessible.Grouping
                Accessible.name: qsTr("Month")
                ChoiceButton {
                    required property string modelData
                    required property int index
                    objectName: "month_" + (index + 1)
                    leftPadding: 8
                    rightPadding: 4
                    text: modelData
                    chosen: index + 1 === sun.month
                    onClicked: sun.setMonth(index + 1)
                }
            }
            Fold {
                objectName: "panelFields"
                Layout.fillWidth: true
                title: qsTr("The panels")
                inside: Component {
                    EntriesEditor {
                        document: page.document
                        table: "panel"
                        adding: qsTr("Add other panels")
                        removing: qsTr("Take these panels out")
                    }
                }
            }
            Fold {
                objectName: "controllerFields"
                Layout.fillWidth: true
                title: qsTr("The charge controller")
                inside: Component {
                    TableEditor {
                        document: page.document
                        table: "charge_controller"
                    }
                }
            }
            Fold {
                objectName: "chargerFields"
                Layout.fillWidth: true
                title: qsTr("Other chargers")
                inside: Component {
                    EntriesEditor {
                        document: page.document
                        table: "charger"
                        adding: qsTr("Add a charger")
                        removing: qsTr("Take this charger out")
                    }
                }
            }
            Fold {
                objectName: "placeFields"
                Layout.fillWidth: true
                visible: sun.ownPlace
                title: qsTr("The place in figures")
                inside: Component {
                    TableEditor {
                        document: page.document
                        table: "place"
                    }
                }
            }
        }
    }
    behind: Component {
        ColumnLayout {
            spacing: Tokens.gap

            SectionTitle {
                Layout.fillWidth: true
                visible: counts.count > 0
                text: qsTr("What so many panels give a day")
                Accessible.ignored: true   // the picture has the same name
            }
            RangeBarsView {
                Layout.fillWidth: true
                visible: counts.count > 0
                bars: counts
                spoken: qsTr("What so many panels give a day")
            }
            AnswerBody {
                Layout.fillWidth: true
                runner: answer
            }
        }
    }
}
