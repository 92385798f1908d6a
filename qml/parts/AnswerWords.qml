// The sentences of a page's own answer; the sentence of the outage stands above all pages.
import QtQuick
import Candlemark

// A layout would keep a height of before where the width changes by steps.
Column {
    id: words

    required property AnswerRunner runner

    spacing: Tokens.gapSmall / 2

    Announced {
        item: sentence
        text: words.runner.sentence
        settled: !words.runner.running
    }
    PlainText {
        id: sentence
        objectName: "answerSentence"
        width: words.width
        text: words.runner.sentence
        color: Tokens.text
        font.pixelSize: Tokens.typeTitle
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        Accessible.role: Accessible.Notification
        Accessible.name: text
    }
    PlainText {
        width: words.width
        visible: text.length > 0
        text: words.runner.rest
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
