// What more there is to say and the findings where the page itself stands still: they scroll by
// finger, wheel and keys.
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
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
    ScrollBar.vertical: QuietBar {
        id: bar
        stepSize: 0.1
        policy: scroll.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    // A layout: a positioner that moves the list while its rows change would have it lay out rows
    // that are gone, which ends the program in Qt 6.4.
    ColumnLayout {
        id: list
        width: scroll.width - Tokens.gap
        spacing: Tokens.gap

        PlanRest {
            Layout.fillWidth: true
            plan: scroll.plan
        }
        FindingsList {
            Layout.fillWidth: true
            source: scroll.plan
        }
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
