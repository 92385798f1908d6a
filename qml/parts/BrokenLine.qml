// A row of a text that cannot be read: a line of it, what is wrong with it, or lines left out.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: row

    required property string kind     // line, error, gap
    required property int line        // 0: of no line
    required property string text     // of the line; of an error its key
    required property string found
    required property string remedy
    required property int number      // of the error
    signal changeAsked()
    signal mendAsked()

    implicitHeight: kind === "error" ? wrong.implicitHeight : kind === "gap" ? gap.implicitHeight : words.implicitHeight

    PlainText {
        id: gap
        visible: row.kind === "gap"
        leftPadding: Tokens.gapSmall
        text: "⋯"
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        Accessible.ignored: true
    }
    PickRow {
        id: words
        objectName: "line_" + row.line
        visible: row.kind === "line"
        width: parent.width
        name: row.text.length > 0 ? row.text : " "
        detail: qsTr("line %1").arg(row.line)
        spoken: qsTr("Line %1: %2. Change").arg(row.line).arg(row.text)
        onClicked: row.changeAsked()
    }
    Rectangle {
        id: wrong
        visible: row.kind === "error"
        width: parent.width
        implicitHeight: column.implicitHeight + 2 * Tokens.gapSmall
        radius: Tokens.corner
        color: Tokens.surface
        border.width: 2
        border.color: Tokens.stop

        ColumnLayout {
            id: column
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.margins: Tokens.gapSmall
            anchors.verticalCenter: parent.verticalCenter
            spacing: Tokens.gapSmall

            PlainText {
                objectName: "wrongWords"
                Layout.fillWidth: true
                text: (row.line > 0 ? qsTr("Line %1").arg(row.line) + ": " : "") + (row.text.length > 0 ? row.text + ": " : "") + row.found
                color: Tokens.stop
                font.pixelSize: Tokens.typeSmall
                font.bold: true
                wrapMode: Text.Wrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
            PlainText {
                Layout.fillWidth: true
                visible: text.length > 0
                text: row.remedy
                color: Tokens.text
                font.pixelSize: Tokens.typeSmall
                wrapMode: Text.Wrap
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
            ActionButton {
                objectName: "mend_" + row.number
                Layout.fillWidth: true
                text: qsTr("Mend here")
                spoken: qsTr("Mend here: %1").arg(row.found)
                onClicked: row.mendAsked()
            }
        }
    }
}
