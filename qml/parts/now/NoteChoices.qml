// Several things to pick one from, each a touch; two beside each other where there are many words.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Flow {
    id: choices

    required property var all        // {key, name, detail}
    required property string chosen  // key
    required property string prefix  // of the names by which a test finds them
    property int across: 0           // so many in a row, of one width; 0: as their words are long
    signal picked(string key)

    spacing: Tokens.gapSmall
    Accessible.role: Accessible.Grouping

    Repeater {
        model: choices.all
        ChoiceButton {
            required property var modelData
            readonly property real share: Math.floor((choices.width - (choices.across - 1) * choices.spacing)
                                                     / Math.max(1, choices.across))
            objectName: choices.prefix + "_" + modelData.key
            width: choices.across > 0 && implicitWidth <= share ? share : Math.min(implicitWidth, choices.width)
            text: modelData.name
            detail: modelData.detail
            chosen: modelData.key === choices.chosen
            leftPadding: 8
            rightPadding: 4
            onClicked: choices.picked(modelData.key)
        }
    }
}
