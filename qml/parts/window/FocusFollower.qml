// Follows the keyboard through the window: what it comes to is scrolled into sight. A finger or a
// pointer has it in sight already, and nothing may move away under them.
import QtQuick
import Candlemark

KeyScroll {
    id: follower

    required property var focused   // the item at which the keyboard is

    onFocusedChanged: follower.settling.restart()

    function follow() {
        const item = follower.focused
        if (item && item.focusReason !== Qt.MouseFocusReason)
            follower.bringIntoSight(item)
    }
    // Once what came with it has its place.
    readonly property Timer settling: Timer {
        interval: 0
        onTriggered: follower.follow()
    }
}
