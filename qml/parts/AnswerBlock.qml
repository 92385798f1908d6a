// The answer in figures, beside each other: until when nine times in ten, until when most likely,
// and the chance to the end; below each other where their words would not fit beside each other.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Grid {
    id: block

    required property var figures   // [{label, value, detail}]
    required property int size      // of the type of the values
    // A word of the labels needs about so much.
    readonly property bool stacked: cells.count > 0 && width / cells.count < 8 * Tokens.typeMark
    columns: stacked ? 1 : Math.max(1, cells.count)
    rowSpacing: stacked ? Tokens.gapSmall : 0

    Repeater {
        id: cells
        model: block.figures
        Item {
            id: figure
            required property var modelData
            required property int index
            width: block.columns > 0 ? block.width / block.columns : 0
            implicitHeight: words.implicitHeight
            height: implicitHeight
            Accessible.role: Accessible.StaticText
            Accessible.name: [modelData.label, modelData.value, modelData.detail].filter(text => text !== "").join(", ")

            Rectangle {
                visible: figure.index > 0 && !block.stacked
                width: 1
                height: block.height
                color: Tokens.outline
            }
            Item {
                id: words
                // A label and its value on one line where there is room for both.
                readonly property bool level: block.stacked && value.implicitWidth < 0.6 * width
                x: figure.index > 0 && !block.stacked ? Tokens.gapSmall : 0
                width: parent.width - x - (figure.index + 1 < cells.count && !block.stacked ? Tokens.gapSmall : 0)
                implicitHeight: detail.visible ? detail.y + detail.height : detail.y
                PlainText {
                    id: label
                    width: words.level ? parent.width - value.implicitWidth - Tokens.gapSmall : parent.width
                    text: figure.modelData.label
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeMark
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
                PlainText {
                    id: value
                    objectName: "figure_" + figure.index
                    x: words.level ? parent.width - width : 0
                    y: words.level ? 0 : label.height
                    width: words.level ? Math.ceil(implicitWidth) : parent.width
                    text: figure.modelData.value
                    color: Tokens.accent
                    font.pixelSize: block.size
                    font.weight: Font.DemiBold
                    wrapMode: Text.WordWrap
                    // A long word in a narrow column is set smaller rather than over the next one.
                    fontSizeMode: block.stacked ? Text.FixedSize : Text.HorizontalFit
                    minimumPixelSize: Tokens.typeMark * 0.6
                    Accessible.ignored: true
                }
                PlainText {
                    id: detail
                    y: Math.max(label.height, value.y + value.height)
                    width: parent.width
                    visible: text.length > 0
                    text: figure.modelData.detail
                    horizontalAlignment: words.level ? Text.AlignRight : Text.AlignLeft
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeMark
                    wrapMode: Text.Wrap
                    Accessible.ignored: true
                }
            }
        }
    }
}
