// The pages beside the one that is shown: a ruler with a scratch for each.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Rectangle {
    id: rail

    required property var pages     // list of {key, name}
    required property string page   // the key of the one shown
    signal asked(string key)

    readonly property int room: Math.round(128 * Math.max(1, Tokens.textScale * 0.95))

    implicitWidth: room
    color: Tokens.surface
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Pages")

    Rectangle {
        width: 2
        height: parent.height
        color: Tokens.hairline
    }
    Column {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.topMargin: Tokens.gapSmall

        Repeater {
            model: rail.pages
            PageButton {
                required property var modelData
                objectName: "page_" + modelData.key
                width: rail.room
                height: Math.max(Tokens.mainTarget, implicitHeight)
                text: modelData.name
                upright: false
                current: modelData.key === rail.page
                onClicked: rail.asked(modelData.key)
            }
        }
    }
}
