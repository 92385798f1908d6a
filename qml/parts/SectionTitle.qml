// The name of a group of things on a page.
import QtQuick
import Candlemark

PlainText {
    color: Tokens.quietText
    font.pixelSize: Tokens.typeSmall
    font.bold: true
    wrapMode: Text.Wrap
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
