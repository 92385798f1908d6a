// The pages below the one that is shown, for a hand's breadth: one row that is drawn sideways, and a
// button that lists them all. With very large text the names do not fit beside each other: then one
// button names the page and opens the list.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Rectangle {
    id: bar

    required property var pages     // list of {key, name}
    required property string page
    signal asked(string key)
    signal listAsked()

    readonly property bool folded: Tokens.textScale > 1.3
    readonly property string pageName: pages.find(one => one.key === page)?.name ?? ""

    implicitHeight: Tokens.mainTarget + (folded ? Math.max(0, fold.implicitHeight - Tokens.mainTarget) : 0)
    color: Tokens.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Pages")

    // The page that is shown stands in the middle, so that its neighbours are a touch away.
    // Once the rows have their places.
    Timer {
        id: settling
        interval: 0
        onTriggered: bar.reveal()
    }
    function reveal() {
        for (let at = 0; at < row.children.length; ++at) {
            const child = row.children[at]
            if (child.objectName !== "page_" + bar.page)
                continue
            const last = Math.max(0, scroll.contentWidth - scroll.width)
            scroll.contentX = Math.min(last, Math.max(0, child.x + child.width / 2 - scroll.width / 2))
        }
    }
    onPageChanged: settling.restart()
    onWidthChanged: settling.restart()
    onPagesChanged: settling.restart()

    Rectangle {
        width: parent.width
        height: 2
        color: Tokens.hairline
    }
    Flickable {
        id: scroll
        objectName: "barScroll"
        visible: !bar.folded
        anchors.left: parent.left
        anchors.right: all.left
        height: parent.height
        contentWidth: row.width
        contentHeight: height
        flickableDirection: Flickable.HorizontalFlick
        boundsBehavior: Flickable.StopAtBounds
        maximumFlickVelocity: Look.still ? 1 : 2500
        clip: true

        Row {
            id: row
            height: scroll.height
            onWidthChanged: settling.restart()
            Repeater {
                model: bar.folded ? [] : bar.pages
                PageButton {
                    required property var modelData
                    objectName: "page_" + modelData.key
                    width: Math.max(Tokens.touchTarget, implicitWidth)
                    height: row.height
                    text: modelData.name
                    upright: true
                    current: modelData.key === bar.page
                    onClicked: bar.asked(modelData.key)
                }
            }
        }
    }
    Rectangle {
        visible: !bar.folded
        anchors.right: all.left
        width: 1
        height: parent.height
        color: Tokens.outline
    }
    ActionButton {
        id: all
        objectName: "allPages"
        visible: !bar.folded
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.rightMargin: 4
        width: Tokens.touchTarget
        leftPadding: 0
        rightPadding: 0
        text: "▴"
        spoken: qsTr("All pages; this is %1").arg(bar.pageName)
        onClicked: bar.listAsked()
    }
    ActionButton {
        id: fold
        objectName: "pageList"
        visible: bar.folded
        width: parent.width
        text: qsTr("%1 ▴").arg(bar.pageName)
        spoken: qsTr("Pages; this is %1").arg(bar.pageName)
        onClicked: bar.listAsked()
    }
}
