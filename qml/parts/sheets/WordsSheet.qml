// Words typed with a keyboard, of the tablet or of the table.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property string key
    property bool removable: false   // it can also be left out of the file
    property string trouble          // why what was asked is not done; the sheet then stays
    signal done(string key, string words)
    signal takenOut(string key)

    function ask(key, label, words) {
        sheet.key = key
        sheet.title = label
        sheet.trouble = ""
        field.text = words
        sheet.open()
    }

    title: ""
    onOpened: {
        field.forceActiveFocus(Qt.PopupFocusReason)
        field.selectAll()
    }

    TypedLine {
        id: field
        objectName: "words"
        Layout.fillWidth: true
        label: sheet.title
        onEntered: accept.clicked()
    }
    PlainText {
        objectName: "wordsTrouble"
        Layout.fillWidth: true
        visible: text.length > 0
        text: sheet.trouble
        color: Tokens.stop
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    ActionButton {
        id: accept
        objectName: "done"
        Layout.fillWidth: true
        main: true
        text: qsTr("Done")
        enabled: field.text.trim().length > 0
        onClicked: {
            sheet.trouble = ""
            sheet.done(sheet.key, field.text.trim())
            if (sheet.trouble.length === 0)
                sheet.close()
        }
    }
    PlainText {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gap
        visible: sheet.removable
        text: qsTr("Taken out, the file is silent on it; what holds then is told. Comment lines stay, and it can be undone.")
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    ActionButton {
        objectName: "takeOut"
        Layout.fillWidth: true
        visible: sheet.removable
        text: qsTr("Take it out of the file")
        spoken: qsTr("Take %1 out of the file").arg(sheet.title)
        onClicked: {
            sheet.trouble = ""
            sheet.takenOut(sheet.key)
            if (sheet.trouble.length === 0)
                sheet.close()
        }
    }
}
