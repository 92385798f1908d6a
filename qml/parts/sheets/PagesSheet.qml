// All pages in their groups, to pick from.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property var pages     // list of {key, name, group, first, digit}
    required property string page
    signal asked(string key)

    title: qsTr("Pages")

    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened ? sheet.pages : []
            ColumnLayout {
                width: parent?.width ?? 0
                id: line
                required property var modelData
                spacing: 0
    
                SectionTitle {
                    Layout.fillWidth: true
                    Layout.topMargin: Tokens.gapSmall
                    visible: line.modelData.first
                    text: line.modelData.group
                }
                PageButton {
                    objectName: "listed_" + line.modelData.key
                    Layout.fillWidth: true
                    text: line.modelData.name
                    digit: line.modelData.digit
                    upright: false
                    current: line.modelData.key === sheet.page
                    onClicked: {
                        sheet.asked(line.modelData.key)
                        sheet.close()
                    }
                }
            }
        }
    }
}
