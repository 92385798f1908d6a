// The pages below the one that is shown, for a hand's breadth. With very large text the names do
// not fit beside each other: then one button names the page and opens the list of all.
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
    readonly property int columns: Math.ceil(pages.length / 2)
    readonly property string pageName: pages.find(one => one.key === page)?.name ?? ""

    implicitHeight: folded ? fold.height : grid.height
    color: Tokens.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Pages")

    Rectangle {
        width: parent.width
        height: 2
        color: Tokens.hairline
    }
    Grid {
        id: grid
        visible: !bar.folded
        width: parent.width
        columns: bar.columns
        Repeater {
            model: bar.folded ? [] : bar.pages
            PageButton {
                required property var modelData
                objectName: "page_" + modelData.key
                width: bar.width / bar.columns
                text: modelData.name
                upright: true
                current: modelData.key === bar.page
                onClicked: bar.asked(modelData.key)
            }
        }
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
