// How many packs and panels to build: asked for by a touch, since it runs thousands of outages.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: pane

    required property ScenarioDocument document
    readonly property bool busy: answer.running
    property bool asked: false
    // Of the plot, the one that stands for the picked cell of the map; below 0 where none does.
    readonly property int point: frontier.present && map.row >= 0
        ? frontier.pointOf(Number(chances.packs[map.row] ?? 0), Number(chances.panels[map.column] ?? 0)) : -1

    spacing: Tokens.gapSmall

    AnswerRunner {
        id: answer
        document: pane.document
        question: pane.asked ? "packs" : ""
        firstAsks: ({ members: 64 })
    }
    ChanceGrid {
        id: chances
        runner: answer
    }
    BuildsPlot {
        id: frontier
        runner: answer
    }
    PlainText {
        Layout.fillWidth: true
        visible: answer.running
        text: qsTr("Thousands of outages are being run; the page stays free meanwhile.")
        color: Tokens.accent
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    RowLayout {
        Layout.fillWidth: true
        visible: answer.running
        spacing: Tokens.gapSmall

        Rectangle {
            objectName: "sweepProgress"
            Layout.fillWidth: true
            Layout.preferredHeight: Tokens.gap
            radius: Tokens.corner
            color: Tokens.raised
            border.width: 1
            border.color: Tokens.outline
            Accessible.role: Accessible.ProgressBar
            Accessible.name: qsTr("%1 % done").arg(Math.round(100 * answer.progress))

            Rectangle {
                width: parent.width * answer.progress
                height: parent.height
                radius: parent.radius
                color: Tokens.accent
            }
        }
        ActionButton {
            objectName: "stopBuilds"
            text: qsTr("Stop")
            spoken: qsTr("Stop working out packs and panels")
            onClicked: answer.stop()
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: pane.asked && answer.coarse
        text: qsTr("A first picture, of few members.")
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ActionButton {
        objectName: "askBuilds"
        Layout.fillWidth: true
        main: true
        text: pane.asked ? qsTr("Stop following changes") : qsTr("Work out packs and panels")
        onClicked: pane.asked = !pane.asked
    }
    AnswerWords {
        Layout.fillWidth: true
        visible: pane.asked && answer.sentence.length > 0
        runner: answer
    }
    BuildsPlotView {
        objectName: "buildsPlot"
        Layout.fillWidth: true
        visible: pane.asked && frontier.present
        plot: frontier
        chosen: pane.point
        told: pane.point >= 0 ? frontier.points[pane.point].words + " " + chances.half(map.row, map.column) : ""
        onPicked: (packs, panels) => map.pick(chances.packs.indexOf(String(packs)), chances.panels.indexOf(String(panels)))
    }
    PlainText {
        objectName: "plotMisses"
        Layout.fillWidth: true
        visible: pane.asked && chances.present && frontier.missing.length > 0
        text: frontier.missing
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ChanceMap {
        id: map
        objectName: "chances"
        Layout.fillWidth: true
        Layout.preferredHeight: implicitHeight
        visible: pane.asked && chances.present
        grid: chances
    }
    PlainText {
        objectName: "aboutBuild"
        Layout.fillWidth: true
        visible: pane.asked && chances.present
        text: map.row >= 0 ? chances.about(map.row, map.column) : qsTr("Touch a cell to read what is known of that build.")
        color: map.row >= 0 ? Tokens.text : Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    AnswerBody {
        Layout.fillWidth: true
        visible: pane.asked && chances.present
        runner: answer
    }
}
