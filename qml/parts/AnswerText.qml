// The answer in plain words, in the largest type on the page; its range below it.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: answer

    required property string sentence
    required property string range
    required property bool narrow

    spacing: Tokens.gapSmall / 2

    Text {
        objectName: "sentence"
        Layout.fillWidth: true
        text: answer.sentence
        color: Tokens.text
        font.pixelSize: answer.narrow ? Tokens.typeSentenceNarrow : Tokens.typeSentence
        font.weight: Font.DemiBold
        wrapMode: Text.WordWrap
        lineHeight: 1.08
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Text {
        objectName: "range"
        Layout.fillWidth: true
        visible: text.length > 0
        text: answer.range
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.WordWrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
