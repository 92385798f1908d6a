// Something that is moved in steps: what it stands at, and the steps below it. The steps are the
// same all the while, so that a finger can rest on one.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: line

    required property string words
    required property var steps   // {by, text, spoken}; nought goes back to the latest
    property bool canLess: true
    property bool canMore: true
    signal stepped(int by)

    spacing: 4

    PlainText {
        objectName: "stands"
        Layout.fillWidth: true
        visible: text.length > 0
        text: line.words
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        font.bold: true
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Flow {
        id: all
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        readonly property int across: Tokens.textScale > 1.3 ? 2 : line.steps.length
        Repeater {
            model: line.steps
            ActionButton {
                required property var modelData
                objectName: "step_" + modelData.by
                width: Math.floor((all.width - (all.across - 1) * all.spacing) / all.across)
                leftPadding: 2
                rightPadding: 2
                font.pixelSize: Tokens.typeSmall
                text: modelData.text
                spoken: modelData.spoken
                enabled: modelData.by < 0 ? line.canLess : line.canMore
                autoRepeat: true
                onClicked: line.stepped(modelData.by)
            }
        }
    }
}
