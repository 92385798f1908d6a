// The answer in figures, beside each other: until when nine times in ten, until when most likely,
// and the chance to the end.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Row {
    id: block

    required property var figures   // [{label, value, detail}]
    required property int size      // of the type of the values

    Repeater {
        id: cells
        model: block.figures
        Item {
            id: figure
            required property var modelData
            required property int index
            width: cells.count > 0 ? block.width / cells.count : 0
            implicitHeight: words.implicitHeight
            height: implicitHeight
            Accessible.role: Accessible.StaticText
            Accessible.name: [modelData.label, modelData.value, modelData.detail].filter(text => text !== "").join(", ")

            Rectangle {
                visible: figure.index > 0
                width: 1
                height: block.height
                color: Tokens.outline
            }
            Column {
                id: words
                x: figure.index > 0 ? Tokens.gapSmall : 0
                width: parent.width - x - (figure.index + 1 < cells.count ? Tokens.gapSmall : 0)
                PlainText {
                    id: label
                    width: parent.width
                    text: figure.modelData.label
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeMark
                    wrapMode: Text.WordWrap
                    Accessible.ignored: true
                }
                PlainText {
                    id: value
                    objectName: "figure_" + figure.index
                    width: parent.width
                    text: figure.modelData.value
                    color: Tokens.accent
                    font.pixelSize: block.size
                    font.weight: Font.DemiBold
                    wrapMode: Text.WordWrap
                    // A long word in a narrow column is set smaller rather than over the next one.
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: Tokens.typeMark * 0.6
                    Accessible.ignored: true
                }
                PlainText {
                    width: parent.width
                    visible: text.length > 0
                    text: figure.modelData.detail
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeMark
                    wrapMode: Text.WordWrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
