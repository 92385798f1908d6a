// The sentences of a page's own answer; the sentence of the outage stands above all pages.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: words

    required property AnswerRunner runner

    spacing: Tokens.gapSmall / 2

    Text {
        objectName: "answerSentence"
        Layout.fillWidth: true
        text: words.runner.sentence
        color: Tokens.text
        font.pixelSize: Tokens.typeTitle
        font.weight: Font.DemiBold
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Text {
        Layout.fillWidth: true
        visible: text.length > 0
        text: words.runner.rest
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
