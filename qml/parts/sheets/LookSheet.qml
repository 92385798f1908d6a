// How things are shown: theme, size of the text, motion, units, clock, language.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    title: qsTr("How it is shown")
    breadth: 560

    component Wish: ColumnLayout {
        id: wish
        required property string name
        required property string title
        required property var options   // {value, label} each
        required property var held
        signal picked(var value)
        Layout.fillWidth: true
        spacing: 4
        SectionTitle {
            Layout.fillWidth: true
            text: wish.title
        }
        Flow {
            id: choices
            Layout.fillWidth: true
            spacing: Tokens.gapSmall
            Accessible.role: Accessible.Grouping
            Accessible.name: wish.title
            Repeater {
                model: wish.options
                ChoiceButton {
                    required property var modelData
                    objectName: wish.name + "_" + modelData.value
                    width: Math.min(implicitWidth, choices.width)
                    text: modelData.label
                    chosen: modelData.value === wish.held
                    onClicked: wish.picked(modelData.value)
                }
            }
        }
    }

    Wish {
        name: "theme"
        title: qsTr("Theme")
        options: [
            { value: "dark", label: qsTr("dark, for the night") },
            { value: "light", label: qsTr("light, for daylight") },
            { value: "contrast", label: qsTr("strong contrast") },
            { value: "system", label: qsTr("as the system") }
        ]
        held: Look.theme
        onPicked: value => Look.theme = value
    }
    Wish {
        name: "textSize"
        title: qsTr("Size of the text")
        options: [
            { value: 1, label: qsTr("%1 %").arg(100) },
            { value: 1.25, label: qsTr("%1 %").arg(125) },
            { value: 1.5, label: qsTr("%1 %").arg(150) },
            { value: 1.75, label: qsTr("%1 %").arg(175) },
            { value: 2, label: qsTr("%1 %").arg(200) }
        ]
        held: Tokens.textScale
        onPicked: value => Look.textScale = value
    }
    Wish {
        name: "motion"
        title: qsTr("Motion")
        options: [
            { value: false, label: qsTr("lists glide on") },
            { value: true, label: qsTr("nothing moves by itself") }
        ]
        held: Look.still
        onPicked: value => Look.still = value
    }
    Wish {
        name: "units"
        title: qsTr("Units")
        options: [
            { value: "metric", label: qsTr("metric") },
            { value: "us", label: qsTr("with °F, lb and ft beside") }
        ]
        held: Look.units
        onPicked: value => Look.units = value
    }
    Wish {
        name: "clock"
        title: qsTr("Clock")
        options: [
            { value: "24", label: qsTr("24 hours") },
            { value: "12", label: qsTr("12 hours, AM and PM") }
        ]
        held: Look.clock
        onPicked: value => Look.clock = value
    }
    Wish {
        name: "language"
        title: qsTr("Language")
        options: Look.languages
        held: Look.language
        onPicked: value => Look.language = value
    }
}
