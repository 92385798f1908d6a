// What will be written, what to beware of, and the touch that writes it.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: end

    required property NoteDraft draft
    signal writeAsked()

    spacing: Tokens.gapSmall

    PlainText {
        objectName: "noteCautions"
        Layout.fillWidth: true
        visible: text.length > 0
        text: end.draft.beware.length > 0 ? "▲ " + end.draft.beware : ""
        color: Tokens.caution
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: end.draft.beware
    }
    PlainText {
        objectName: "noteSaid"
        Layout.fillWidth: true
        visible: text.length > 0
        text: end.draft.trouble.length > 0 ? end.draft.trouble : end.draft.said
        color: end.draft.trouble.length > 0 ? Tokens.stop : Tokens.text
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ActionButton {
        objectName: "writeNote"
        Layout.fillWidth: true
        main: true
        text: qsTr("Write it down")
        font.pixelSize: Tokens.typeTitle
        enabled: end.draft.ready
        onClicked: end.writeAsked()
    }
}
