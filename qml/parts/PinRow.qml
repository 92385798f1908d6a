// The findings that have an hour, each above it: the same mark and number as in the list.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Item {
    id: row

    required property var pins
    required property PlotWindow view
    readonly property int size: 26

    implicitHeight: size + 4

    Repeater {
        model: row.pins
        Item {
            id: pin
            required property var modelData
            readonly property color colour: modelData.mark === "stop" ? Tokens.stop : modelData.mark === "caution" ? Tokens.caution : Tokens.note
            visible: modelData.at >= row.view.from && modelData.at <= row.view.to
            x: (modelData.at - row.view.from) * row.view.stretch * row.width - width / 2
            width: row.size
            height: row.height
            Rectangle {
                anchors.horizontalCenter: parent.horizontalCenter
                y: row.size - 2
                width: 2
                height: 14
                color: pin.colour
            }
            SeverityMark {
                width: row.size
                height: row.size
                mark: pin.modelData.mark
                number: pin.modelData.number > 0 ? pin.modelData.number : ""
                colour: pin.colour
                ink: Tokens.dark ? Tokens.ground : Tokens.accentInk
                Accessible.role: Accessible.Graphic
                Accessible.name: pin.modelData.text
            }
        }
    }
}
