// A name, its value, and in small what stands behind it.
import QtQuick
import Candlemark

Item {
    id: line

    required property string section
    required property string label
    required property string value
    required property string detail
    required property bool first   // of its section, whose name then stands above
    required property string spoken
    readonly property bool below: value.length > 24  // a long value stands under its name

    implicitHeight: words.height + 6
    Accessible.role: Accessible.ListItem
    Accessible.name: spoken

    Column {
        id: words
        width: parent.width
        spacing: 2

        PlainText {
            visible: line.first
            width: parent.width
            topPadding: Tokens.gapSmall
            text: line.section
            color: Tokens.accent
            font.pixelSize: Tokens.typeSmall
            font.bold: true
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
        Item {
            width: parent.width
            height: line.below ? name.height + amount.height : Math.max(name.height, amount.height)
            PlainText {
                id: name
                width: line.below ? parent.width : Math.round(parent.width * 0.56)
                text: line.label
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
            PlainText {
                id: amount
                y: line.below ? name.height : 0
                anchors.right: parent.right
                width: line.below ? parent.width : Math.round(parent.width * 0.4)
                horizontalAlignment: line.below ? Text.AlignLeft : Text.AlignRight
                text: line.value
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                font.bold: true
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
        PlainText {
            visible: text.length > 0
            width: parent.width
            text: line.detail
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
        Rectangle {
            width: parent.width
            height: 1
            color: Tokens.hairline
        }
    }
}
