// Stands in the place of a page whose file cannot be read: its lines, each error beside the line it
// is on, and a way to mend it there.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    // So little room that the lines need all of it.
    readonly property bool tight: height < 240 * Math.max(1, Tokens.textScale * 0.85)

    clip: true

    BrokenText {
        id: broken
        document: page.document
        whole: whole.chosen
    }
    WordsSheet {
        id: typing
        property var asked: ({})
        onDone: (key, words) => typing.trouble = broken.mend(typing.asked, words)
    }

    // What is wrong is in sight at once.
    Timer {
        id: settling
        interval: 0
        onTriggered: {
            lines.forceLayout()
            if (!broken.whole)
                page.goTo(broken.nextError(-1))
        }
    }
    Connections {
        target: broken
        function onShown() { settling.restart() }
    }
    onHeightChanged: settling.restart()

    function type(asked, remedy) {
        if (asked.title === undefined)
            return
        typing.asked = asked
        typing.ask(asked.key, asked.title, asked.words)
        typing.trouble = remedy
    }
    function goTo(row) {
        if (row < 0)
            return
        lines.currentIndex = row
        lines.positionViewAtIndex(row, ListView.Center)
    }

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Tokens.gapSmall
        spacing: Tokens.gapSmall

        PlainText {
            objectName: "mendTitle"
            Layout.fillWidth: true
            Layout.leftMargin: Tokens.gapSmall
            visible: !page.tight
            text: broken.errors === 1 ? qsTr("One thing in this file cannot be read. Your file is as it was.")
                                      : qsTr("%1 things in this file cannot be read. Your file is as it was.").arg(broken.errors)
            color: Tokens.stop
            font.pixelSize: Tokens.typeBody
            font.bold: true
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        Flow {
            id: ways
            Layout.fillWidth: true
            visible: !page.tight
            spacing: Tokens.gapSmall
            ActionButton {
                objectName: "nextError"
                width: Math.min(implicitWidth, ways.width)
                visible: broken.errors > 1
                text: qsTr("Next")
                spoken: qsTr("To the next thing that cannot be read")
                onClicked: {
                    const next = broken.nextError(lines.currentIndex)
                    page.goTo(next >= 0 ? next : broken.nextError(-1))
                }
            }
            ChoiceButton {
                id: whole
                objectName: "wholeText"
                width: Math.min(implicitWidth, ways.width)
                several: true
                chosen: false
                text: qsTr("the whole text")
                onClicked: chosen = !chosen
            }
        }
        ListView {
            id: lines
            objectName: "brokenLines"
            Layout.fillWidth: true
            Layout.fillHeight: true
            model: broken
            spacing: 2
            boundsBehavior: Flickable.StopAtBounds
            maximumFlickVelocity: Look.still ? 1 : 2500
            highlightMoveDuration: 0
            clip: true
            currentIndex: -1
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Lines of the file")
            ScrollBar.vertical: QuietBar {
                width: 10
                policy: lines.contentHeight > lines.height + 1 ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            }
            delegate: BrokenLine {
                required property int index
                width: lines.width - 12
                onChangeAsked: page.type(broken.ofLine(line), "")
                onMendAsked: page.type(broken.mending(number), remedy)
            }
        }
    }
}
