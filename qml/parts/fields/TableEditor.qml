// The fields of a table there is one of, such as the inverter.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: editor

    required property ScenarioDocument document
    required property string table

    FieldsModel {
        id: keys
        document: editor.document
        table: editor.table
    }
    FieldsList {
        Layout.fillWidth: true
        fields: keys
    }
}
