// Until when, what to switch off next, what to read next: the largest words of the page. Who depends
// on a medical device reads before them by when to act.
pragma ComponentBehavior: Bound
import QtQuick
import Candlemark

Rows {
    id: sentences

    required property NowRunner runner
    required property string instead   // what is known where nothing can be asked of now
    required property int size         // of the type
    readonly property var shown: instead.length > 0 ? [instead]
        : runner.leading.length > 0 ? runner.leading : [qsTr("Working it out …")]

    spacing: Tokens.gapSmall + 2

    model: shown
    row: PlainText {
        required property string modelData
        required property int index
        objectName: "leading_" + index
        width: parent?.width ?? 0
        text: modelData
        color: sentences.runner.actFirst && index === 0 && sentences.instead.length === 0 ? Tokens.stop : Tokens.text
        font.pixelSize: sentences.size
        font.weight: Font.DemiBold
        wrapMode: Text.Wrap
        lineHeight: 1.05
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
