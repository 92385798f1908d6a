// Two columns where there is room, one below the other where there is not.
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    property Component main
    property Component behind
    readonly property bool beside: width >= 860 * Math.max(1, Tokens.textScale * 0.85)

    Scroll {
        id: first
        width: page.beside ? Math.round(page.width * 0.56) : page.width
        height: page.height
        spacing: Tokens.gap

        Loader {
            Layout.fillWidth: true
            sourceComponent: page.main
        }
        Loader {
            Layout.fillWidth: true
            active: !page.beside
            visible: active
            sourceComponent: page.behind
        }
    }
    Rectangle {
        visible: page.beside
        x: first.width
        width: 1
        height: page.height
        color: Tokens.hairline
    }
    Scroll {
        visible: page.beside
        x: first.width + 1
        width: page.width - x
        height: page.height

        Loader {
            Layout.fillWidth: true
            active: page.beside
            sourceComponent: page.behind
        }
    }
}
