// The pages beside the one that is shown, in groups by when they are wanted: a ruler with a scratch
// for each. It scrolls where the window is too low for all of them.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Rectangle {
    id: rail

    required property var pages     // list of {key, name, group, first, digit}
    required property string page   // the key of the one shown
    signal asked(string key)

    // As wide as its longest name, with a scratch before and a digit behind it.
    readonly property int room: Math.max(Math.round(136 * Math.max(1, Tokens.textScale * 0.95)), longest(pages)
                                         + Tokens.scratchLong + 3 * Tokens.gapSmall + Math.round(0.7 * Tokens.typeMark))

    implicitWidth: room
    color: Tokens.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Pages")

    function longest(pages) {
        return Math.ceil(Math.max(0, ...pages.map(one => letters.advanceWidth(one.name))))
    }
    FontMetrics {
        id: letters
        font.pixelSize: Tokens.typeBody
        font.bold: true
    }
    // Once the rows have their places.
    Timer {
        id: settling
        interval: 0
        onTriggered: rail.reveal()
    }
    function reveal() {
        for (let at = 0; at < column.children.length; ++at) {
            const child = column.children[at]
            if (child.objectName !== "line_" + rail.page)
                continue
            const last = Math.max(0, scroll.contentHeight - scroll.height)
            if (child.y < scroll.contentY || child.y + child.height > scroll.contentY + scroll.height)
                scroll.contentY = Math.min(last, Math.max(0, child.y - scroll.height / 3))
        }
    }
    onPageChanged: settling.restart()
    onHeightChanged: settling.restart()

    Rectangle {
        width: 2
        height: parent.height
        color: Tokens.hairline
    }
    Flickable {
        id: scroll
        objectName: "railScroll"
        anchors.fill: parent
        contentWidth: width
        contentHeight: column.height + 2 * Tokens.gapSmall
        interactive: contentHeight > height + 1
        boundsBehavior: Flickable.StopAtBounds
        maximumFlickVelocity: Look.still ? 1 : 2500
        clip: true
        ScrollBar.vertical: QuietBar {
            width: 6
            policy: scroll.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
        }

        Column {
            id: column
            y: Tokens.gapSmall
            width: parent.width
            onHeightChanged: settling.restart()

            Repeater {
                model: rail.pages
                Column {
                    id: line
                    required property var modelData
                    readonly property string key: modelData.key
                    objectName: "line_" + key
                    width: column.width

                    PlainText {
                        visible: line.modelData.first
                        width: parent.width - Tokens.gapSmall
                        leftPadding: Tokens.gapSmall
                        topPadding: line.y > 0 ? Tokens.gapSmall : 0
                        text: line.modelData.group
                        color: Tokens.quietText
                        font.pixelSize: Tokens.typeMark
                        wrapMode: Text.Wrap
                        Accessible.role: Accessible.Heading
                        Accessible.name: text
                    }
                    PageButton {
                        objectName: "page_" + line.key
                        width: parent.width
                        text: line.modelData.name
                        digit: line.modelData.digit
                        upright: false
                        current: line.key === rail.page
                        onClicked: rail.asked(line.key)
                    }
                }
            }
        }
    }
}
