// Something that is opened by a touch and closed by another.
import QtQuick
import Candlemark

// A layout would keep a height of before where the width changes while the page is hidden.
Column {
    id: fold

    required property string title
    property bool open: false
    property Component inside
    property color colour: Tokens.text

    spacing: Tokens.gapSmall

    ActionButton {
        width: fold.width
        objectName: "fold"
        text: (fold.open ? "▾  " : "▸  ") + fold.title
        spoken: fold.open ? qsTr("Hide: %1").arg(fold.title) : qsTr("Show: %1").arg(fold.title)
        atLeft: true
        colour: fold.colour
        onClicked: fold.open = !fold.open
    }
    Loader {
        width: fold.width
        visible: fold.open
        active: fold.open
        sourceComponent: fold.inside
    }
}
