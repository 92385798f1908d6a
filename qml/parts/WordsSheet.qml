// Words typed with a keyboard, of the tablet or of the table.
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property string key
    signal done(string key, string words)

    function ask(key, label, words) {
        sheet.key = key
        sheet.title = label
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
    ActionButton {
        id: accept
        objectName: "done"
        Layout.fillWidth: true
        main: true
        text: qsTr("Done")
        enabled: field.text.trim().length > 0
        onClicked: {
            sheet.done(sheet.key, field.text.trim())
            sheet.close()
        }
    }
}
