// One finding: mark and word of its severity, what was found, what would mend it; a touch opens the
// source of its rule.
import QtQuick
import Candlemark

Rectangle {
    id: finding

    required property string mark
    required property string word
    required property string where
    required property string text
    required property string mend
    required property int pin
    required property string spoken
    required property string source
    readonly property bool hasMore: source.length > 0 && source !== mend
    property bool opened: false
    readonly property color severity: mark === "stop" ? Tokens.stop : mark === "caution" ? Tokens.caution : mark === "note" ? Tokens.note : Tokens.text

    implicitHeight: Math.max(Tokens.touchTarget, words.implicitHeight + 2 * Tokens.gapSmall)
    radius: Tokens.corner
    color: Tokens.surface
    border.width: 1
    border.color: mark === "stop" ? Tokens.stop : Tokens.hairline
    activeFocusOnTab: hasMore
    Accessible.role: Accessible.ListItem
    Accessible.name: opened ? spoken + " " + more.text : spoken
    Accessible.focusable: hasMore
    Accessible.onPressAction: finding.open()
    Keys.onReturnPressed: finding.open()
    Keys.onSpacePressed: finding.open()

    function open() {
        finding.opened = finding.hasMore && !finding.opened
    }

    TapHandler {
        enabled: finding.hasMore
        onTapped: finding.open()
    }
    Rectangle {  // focus, drawn inside because lists are clipped
        anchors.fill: parent
        visible: finding.activeFocus
        radius: Tokens.corner
        color: "transparent"
        border.width: Tokens.focusWidth
        border.color: Tokens.focus
    }
    PlainText {
        id: sign
        visible: finding.hasMore
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Tokens.gapSmall
        width: finding.hasMore ? Tokens.gap : 0
        text: finding.opened ? "▾" : "▸"
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        Accessible.ignored: true
    }

    SeverityMark {
        id: plate
        x: Tokens.gapSmall
        y: Tokens.gapSmall
        visible: finding.mark.length > 0
        width: visible ? 28 : 0
        height: 28
        mark: finding.mark
        number: finding.pin > 0 ? finding.pin : ""
        colour: finding.severity
        ink: Tokens.dark ? Tokens.ground : Tokens.accentInk
    }
    // Positioners and not layouts: a row in a column of layouts keeps the height of its former width
    // when the window is made narrow, and what is below it stands upon it.
    Column {
        id: words
        anchors.left: plate.right
        anchors.leftMargin: Tokens.gapSmall
        anchors.right: sign.left
        anchors.rightMargin: Tokens.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        spacing: 2

        Flow {   // where there is no room beside the word, the place stands below it
            id: head
            readonly property real rest: Math.floor(width - said.width - spacing)
            width: parent.width
            spacing: Tokens.gapSmall
            PlainText {
                id: said
                width: finding.where.length === 0 ? head.width : Math.min(implicitWidth, head.width)
                text: finding.word
                wrapMode: Text.Wrap
                color: finding.severity
                font.pixelSize: Tokens.typeSmall
                font.bold: true
                Accessible.ignored: true
            }
            PlainText {
                width: head.rest < 0.4 * head.width ? head.width : head.rest
                visible: text.length > 0
                text: finding.where
                color: finding.severity
                font.pixelSize: Tokens.typeSmall
                wrapMode: Text.Wrap
                Accessible.ignored: true
            }
        }
        PlainText {
            width: parent.width
            text: finding.text
            color: Tokens.text
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
        PlainText {
            width: parent.width
            visible: text.length > 0
            text: finding.mend
            color: Tokens.quietText
            font.pixelSize: Tokens.typeSmall
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
        PlainText {
            id: more
            objectName: "source"
            width: parent.width
            visible: finding.opened
            text: qsTr("Source: %1").arg(finding.source)
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            font.italic: true
            wrapMode: Text.Wrap
            Accessible.ignored: true
        }
    }
}
