// What departs from the plan, what cannot be true, and what it was before the last reading; the
// hazards that the log calls for stand open above.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: further

    required property NowRunner runner
    required property bool shown

    spacing: Tokens.gapSmall

    Rows {
        Layout.fillWidth: true
        model: further.shown ? further.runner.further : []
        row: PlainText {
            required property string modelData
            required property int index
            objectName: "further_" + index
            width: parent?.width ?? 0
            text: modelData
            color: Tokens.text
            font.pixelSize: Tokens.typeBody
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
    Rows {
        Layout.fillWidth: true
        model: further.shown ? further.runner.cautions : null
        row: FindingRow {
            width: parent?.width ?? 0
        }
    }
}
