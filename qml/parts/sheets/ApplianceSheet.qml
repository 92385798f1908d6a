// The library of appliances and tools to pick from, narrowed by typing.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    property bool ownOffered: true     // also something that is not in the library
    property bool motorsOnly: false
    signal picked(string name)
    signal ownPicked()

    title: qsTr("Pick what it is")
    breadth: 560
    onOpened: appliances.wanted = ""

    AppliancesModel {
        id: appliances
        motorsOnly: sheet.motorsOnly
    }
    TypedLine {
        objectName: "wanted"
        Layout.fillWidth: true
        label: qsTr("Part of its name")
        hint: qsTr("Type part of a name")
        text: appliances.wanted
        onTextEdited: appliances.wanted = text
    }
    ActionButton {
        objectName: "own"
        Layout.fillWidth: true
        visible: sheet.ownOffered
        text: qsTr("Something else")
        onClicked: {
            sheet.close()
            sheet.ownPicked()
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: appliances.count === 0
        text: qsTr("Nothing in the library is called so.")
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: sheet.opened ? appliances : null
        PickRow {
            required property string key  // what the list calls it, in every language
            required property string note
            required spoken
            objectName: "appliance_" + key
            Layout.fillWidth: true
            below: note
            onClicked: {
                sheet.close()
                sheet.picked(key)
            }
        }
    }
}
