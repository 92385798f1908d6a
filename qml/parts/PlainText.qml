// Every word on the screen: shown letter by letter as it is, never read as markup, for much of it
// comes from a file that somebody else wrote.
import QtQuick

Text {
    textFormat: Text.PlainText
}
