// What is doubtful about this computer's clock, and how it is put right; nothing while all is well
// and nothing was put right.
import QtQuick
import QtQuick.Layouts
import Candlemark

Rectangle {
    id: panel

    required property NowClock clock
    readonly property string words: clock.outside.length > 0 ? clock.outside
        : clock.doubt.length > 0 ? clock.doubt : clock.off

    visible: words.length > 0
    implicitHeight: column.implicitHeight + 2 * Tokens.gapSmall
    radius: Tokens.corner
    color: Tokens.surface
    border.width: clock.within ? 1 : 2
    border.color: clock.within ? Tokens.hairline : Tokens.caution

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.margins: Tokens.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        spacing: Tokens.gapSmall

        PlainText {
            objectName: "clockWords"
            Layout.fillWidth: true
            text: panel.words
            color: panel.clock.within && panel.clock.doubt.length === 0 ? Tokens.quietText : Tokens.text
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        Flow {
            id: ways
            Layout.fillWidth: true
            spacing: Tokens.gapSmall
            ActionButton {
                objectName: "clockWrong"
                width: Math.min(implicitWidth, ways.width)
                visible: panel.clock.canSetRight
                text: qsTr("The clock is wrong")
                onClicked: right.begin()
            }
            ActionButton {
                objectName: "beginNow"
                width: Math.min(implicitWidth, ways.width)
                visible: !panel.clock.within
                text: qsTr("The power went out now")
                onClicked: panel.clock.beginNow()
            }
            ActionButton {
                objectName: "lastLonger"
                width: Math.min(implicitWidth, ways.width)
                visible: panel.clock.over
                text: qsTr("It is still out")
                onClicked: panel.clock.lastLonger()
            }
        }
    }
    Sheet {
        id: right
        objectName: "clockSheet"
        property string at
        title: qsTr("What time is it?")

        function begin() {
            right.at = panel.clock.guess
            right.open()
        }
        PlainText {
            Layout.fillWidth: true
            text: qsTr("By local standard time: in summer an hour less than clocks show.")
            color: Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        StepsLine {
            Layout.fillWidth: true
            words: panel.clock.wordsOf(right.at)
            steps: [{ by: -1440, text: qsTr("−1 day"), spoken: qsTr("A day earlier") },
                    { by: -60, text: qsTr("−1 h"), spoken: qsTr("An hour earlier") },
                    { by: 60, text: qsTr("+1 h"), spoken: qsTr("An hour later") },
                    { by: 1440, text: qsTr("+1 day"), spoken: qsTr("A day later") }]
            onStepped: by => right.at = panel.clock.stepped(right.at, by)
        }
        StepsLine {
            Layout.fillWidth: true
            words: ""
            steps: [{ by: -10, text: qsTr("−10 min"), spoken: qsTr("Ten minutes earlier") },
                    { by: -1, text: qsTr("−1 min"), spoken: qsTr("A minute earlier") },
                    { by: 1, text: qsTr("+1 min"), spoken: qsTr("A minute later") },
                    { by: 10, text: qsTr("+10 min"), spoken: qsTr("Ten minutes later") }]
            onStepped: by => right.at = panel.clock.stepped(right.at, by)
        }
        ActionButton {
            objectName: "clockRight"
            Layout.fillWidth: true
            main: true
            text: qsTr("This is the time")
            onClicked: if (panel.clock.setRight(right.at))
                right.close()
        }
    }
}
