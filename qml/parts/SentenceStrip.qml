// The answer to the outage in plain words, in sight on every page. Where very large text would
// leave no room for the page, it scrolls in its place.
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

Flickable {
    id: strip

    required property string sentence
    required property int size      // of the type
    required property real most     // height it may take
    readonly property int edge: Tokens.gap

    implicitHeight: Math.min(most, words.implicitHeight + 2 * Tokens.gapSmall)
    contentWidth: width
    contentHeight: words.implicitHeight + 2 * Tokens.gapSmall
    interactive: contentHeight > height + 1
    boundsBehavior: Flickable.StopAtBounds
    maximumFlickVelocity: Look.still ? 1 : 2500
    clip: true
    ScrollBar.vertical: ScrollBar {
        policy: strip.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    PlainText {
        id: words
        objectName: "sentence"
        x: strip.edge
        y: Tokens.gapSmall
        width: strip.width - 2 * strip.edge
        text: strip.sentence
        color: Tokens.text
        font.pixelSize: strip.size
        font.weight: Font.DemiBold
        wrapMode: Text.WordWrap
        lineHeight: 1.08
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
