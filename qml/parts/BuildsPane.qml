// How sure each build is: while thousands of outages are run a bar tells how far they are and a
// button stops them; a first picture of few members comes before the whole.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: pane

    required property AnswerRunner runner
    // Of the plot, the one that stands for the picked cell of the map; below 0 where none does.
    readonly property int point: frontier.present && map.row >= 0
        ? frontier.pointOf(Number(chances.packs[map.row] ?? 0), Number(chances.panels[map.column] ?? 0)) : -1

    spacing: Tokens.gap

    ChanceGrid {
        id: chances
        runner: pane.runner
    }
    BuildsPlot {
        id: frontier
        runner: pane.runner
    }
    AnswerWords {
        Layout.fillWidth: true
        visible: pane.runner.sentence.length > 0
        runner: pane.runner
    }
    PlainText {
        Layout.fillWidth: true
        visible: text.length > 0
        text: pane.runner.running ? qsTr("Thousands of outages are being run; the page stays free meanwhile.")
            : pane.runner.coarse ? qsTr("A first picture, of few members.") : ""
        color: pane.runner.running ? Tokens.accent : Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    RowLayout {
        Layout.fillWidth: true
        visible: pane.runner.running
        spacing: Tokens.gapSmall

        Rectangle {
            objectName: "sweepProgress"
            readonly property real heardPercent: 100 * pane.runner.progress
            Layout.fillWidth: true
            Layout.preferredHeight: Tokens.gap
            radius: Tokens.corner
            color: Tokens.raised
            border.width: 1
            border.color: Tokens.outline
            Accessible.role: Accessible.ProgressBar
            Accessible.name: qsTr("%1 % done").arg(Math.round(100 * pane.runner.progress))

            Rectangle {
                width: parent.width * pane.runner.progress
                height: parent.height
                radius: parent.radius
                color: Tokens.accent
            }
        }
        ActionButton {
            objectName: "stopBuilds"
            text: qsTr("Stop")
            spoken: qsTr("Stop working out packs and panels")
            onClicked: pane.runner.stop()
        }
    }
    ActionButton {
        objectName: "askBuilds"
        Layout.fillWidth: true
        visible: !pane.runner.running && pane.runner.stopped
        main: true
        text: qsTr("Work out packs and panels")
        onClicked: pane.runner.askAgain()
    }
    BuildsPlotView {
        objectName: "buildsPlot"
        Layout.fillWidth: true
        visible: frontier.present
        plot: frontier
        chosen: pane.point
        told: pane.point >= 0 ? frontier.points[pane.point].words + " " + chances.half(map.row, map.column) : ""
        onPicked: (packs, panels) => map.pick(chances.packs.indexOf(String(packs)), chances.panels.indexOf(String(panels)))
    }
    PlainText {
        objectName: "plotMisses"
        Layout.fillWidth: true
        visible: chances.present && frontier.missing.length > 0
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
        visible: chances.present
        grid: chances
    }
    PlainText {
        objectName: "aboutBuild"
        Layout.fillWidth: true
        visible: chances.present
        text: map.row >= 0 ? chances.about(map.row, map.column) : qsTr("Touch a cell to read what is known of that build.")
        color: map.row >= 0 ? Tokens.text : Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
