// The printers that the system knows, one a row.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property var printers: []   // [{name, detail}]
    signal picked(string name)

    title: qsTr("Print on")

    function ask(printers) {
        sheet.printers = printers
        sheet.open()
    }

    Rows {
        Layout.fillWidth: true
        model: sheet.printers
        row: PickRow {
            required property var modelData
            objectName: "printer_" + modelData.name
            width: parent?.width ?? 0
            name: modelData.name
            detail: modelData.detail
            onClicked: {
                sheet.close()
                sheet.picked(modelData.name)
            }
        }
    }
    PlainText {
        objectName: "noPrinter"
        Layout.fillWidth: true
        visible: sheet.printers.length === 0
        text: qsTr("This computer knows no printer. Save the PDF, and print it where there is one.")
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
