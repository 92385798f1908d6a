// The answer to the outage in plain words, in sight on every page, and on the page of the days in
// figures as well. Where there is little room the figures stand for the words; where very large text
// would leave none for the page, it scrolls in its place.
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Flickable {
    id: strip

    required property string sentence
    required property int size      // of the type
    required property real most     // height it may take
    property var figures: []        // of AnswerBlock
    property bool settled: true     // the sentence is not about to be another
    readonly property int edge: Tokens.gap
    readonly property bool told: figures.length > 0
    readonly property bool tight: width < 620 * Math.max(1, Tokens.textScale * 0.85)
    readonly property bool low: told && (tight || most < 170 * Math.max(1, Tokens.textScale))
    readonly property int valueSize: tight ? Tokens.typeBody : Tokens.typeTitle

    implicitHeight: Math.min(most, content.height + 2 * Tokens.gapSmall)
    contentWidth: width
    contentHeight: content.height + 2 * Tokens.gapSmall
    interactive: contentHeight > height + 1
    boundsBehavior: Flickable.StopAtBounds
    maximumFlickVelocity: Look.still ? 1 : 2500
    clip: true
    ScrollBar.vertical: QuietBar {
        policy: strip.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    Item {
        id: content
        x: strip.edge
        y: Tokens.gapSmall
        width: strip.width - 2 * strip.edge
        height: strip.told ? block.y + block.height : words.height

        PlainText {
            id: words
            objectName: "sentence"
            visible: !strip.low
            width: content.width
            text: strip.sentence
            color: Tokens.text
            font.pixelSize: Math.min(strip.size, strip.tight ? Tokens.typeBody : strip.told ? Tokens.typeSentenceNarrow : strip.size)
            font.weight: Font.DemiBold
            wrapMode: Text.Wrap
            lineHeight: 1.08
            Accessible.role: Accessible.Notification
            Accessible.name: text
        }
        Announced {
            item: strip.low ? block : words
            text: strip.sentence
            settled: strip.settled
        }
        AnswerBlock {
            id: block
            objectName: "answerBlock"
            visible: strip.told
            y: strip.low ? 0 : words.height + Tokens.gapSmall
            width: content.width
            figures: strip.figures
            size: strip.valueSize
            Accessible.role: strip.low ? Accessible.Notification : Accessible.Grouping
            Accessible.name: strip.low ? strip.sentence : ""
        }
    }
}
