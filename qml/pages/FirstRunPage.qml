// Five short questions, one at a time; each answer is in the sentence above at once.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property FirstRun questions
    readonly property bool last: questions.number === questions.questions - 1
    signal leaving()          // without more answers
    signal finished()      // the answers are to become a file

    // So little room that the ways on are signs.
    readonly property bool tight: height < 300 * Math.max(1, Tokens.textScale * 0.85)
    readonly property int number: questions.number
    onNumberChanged: scroll.contentY = 0

    PlaceSheet {
        id: places
        onPicked: name => page.questions.setPlace(name)
    }

    Scroll {
        id: scroll
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: ways.top
        anchors.bottomMargin: Tokens.gapSmall

        PlainText {
            objectName: "firstQuestion"
            Layout.fillWidth: true
            text: page.questions.words
            color: Tokens.text
            font.pixelSize: Tokens.typeTitle
            font.bold: true
            wrapMode: Text.Wrap
            Accessible.role: Accessible.Heading
            Accessible.name: qsTr("Question %1 of %2: %3").arg(page.questions.number + 1).arg(page.questions.questions).arg(text)
        }
        PlainText {
            Layout.fillWidth: true
            text: page.questions.more
            color: Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        CountStepper {
            objectName: "firstCount"
            Layout.fillWidth: true
            Layout.maximumWidth: 480 * Tokens.textScale
            visible: page.questions.counts
            label: qsTr("How many")
            shown: String(page.questions.count)
            detail: ""
            held: page.questions.count
            minimumValue: page.questions.least
            maximumValue: page.questions.most
            canLess: page.questions.count > page.questions.least
            canMore: page.questions.count < page.questions.most
            onLess: page.questions.setCount(page.questions.count - 1)
            onMore: page.questions.setCount(page.questions.count + 1)
        }
        Flow {
            id: offers
            Layout.fillWidth: true
            visible: !page.questions.asksPlace
            spacing: Tokens.gapSmall
            // Batteries have long names.
            readonly property real wished: (page.number === 1 ? 230 : 168) * Math.max(1, Tokens.textScale * 0.9)
            readonly property int across: Math.max(1, Math.floor((width + spacing) / (wished + spacing)))
            Repeater {
                // By number: a list that is new with every answer would make each button anew.
                model: page.questions.options.length
                PictureButton {
                    required property int index
                    readonly property var modelData: page.questions.options[index] ?? { key: "", name: "", detail: "", picture: "", chosen: false }
                    objectName: "first_" + modelData.key
                    width: Math.floor((offers.width - (offers.across - 1) * offers.spacing) / offers.across)
                    text: modelData.name
                    detail: modelData.detail
                    picture: modelData.picture
                    chosen: modelData.chosen
                    several: page.questions.several
                    onClicked: page.questions.choose(modelData.key)
                }
            }
        }
        ActionButton {
            objectName: "firstPlace"
            Layout.fillWidth: true
            visible: page.questions.asksPlace
            main: true
            text: page.questions.place
            spoken: qsTr("Place: %1. Change").arg(page.questions.place)
            onClicked: places.open()
        }
    }
    GridLayout {
        id: ways
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Tokens.gapSmall
        columns: !page.tight && width < 330 * Tokens.textScale ? 2 : 4
        columnSpacing: Tokens.gapSmall
        rowSpacing: Tokens.gapSmall

        ActionButton {
            objectName: "firstLeave"
            Layout.fillWidth: true
            text: page.tight ? "✕" : qsTr("Leave")
            spoken: qsTr("Leave the questions; what was answered stays")
            onClicked: page.leaving()
        }
        ActionButton {
            objectName: "firstBack"
            Layout.fillWidth: true
            text: page.tight ? "◀" : qsTr("Back")
            spoken: qsTr("Back")
            enabled: page.questions.number > 0
            onClicked: page.questions.back()
        }
        PlainText {
            Layout.fillWidth: true
            Layout.columnSpan: parent.columns === 2 ? 2 : 1
            horizontalAlignment: Text.AlignHCenter
            visible: parent.columns === 4 && !page.tight
            text: qsTr("%1 of %2").arg(page.questions.number + 1).arg(page.questions.questions)
            color: Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            Accessible.ignored: true
        }
        ActionButton {
            objectName: "firstForth"
            Layout.fillWidth: true
            Layout.columnSpan: parent.columns === 2 ? 2 : 1
            main: true
            text: page.tight ? (page.last ? "✓" : "▶") : page.last ? qsTr("Done") : qsTr("Next")
            spoken: page.last ? qsTr("Done: make a file of it") : qsTr("To the next question")
            onClicked: {
                if (page.last)
                    page.finished()
                else
                    page.questions.forth()
            }
        }
    }
}
