// The findings where the page itself stands still: a list that scrolls by finger, wheel and keys.
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Flickable {
    id: scroll

    required property PlanRunner plan

    contentWidth: width
    contentHeight: list.implicitHeight
    implicitHeight: list.implicitHeight
    boundsBehavior: Flickable.StopAtBounds
    clip: true
    activeFocusOnTab: interactive
    interactive: contentHeight > height
    Keys.onUpPressed: bar.decrease()
    Keys.onDownPressed: bar.increase()
    ScrollBar.vertical: ScrollBar {
        id: bar
        stepSize: 0.1
        policy: scroll.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    FindingsList {
        id: list
        width: scroll.width - (scroll.interactive ? Tokens.gap : 0)
        source: scroll.plan
    }
    Rectangle {  // focus, drawn inside because the list is clipped
        parent: scroll
        anchors.fill: parent
        visible: scroll.activeFocus
        radius: Tokens.corner
        color: "transparent"
        border.width: Tokens.focusWidth
        border.color: Tokens.focus
    }
}
