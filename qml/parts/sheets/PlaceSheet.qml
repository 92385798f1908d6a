// The built-in places to pick from, narrowed by typing; no network is asked.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    signal picked(string name)
    signal ownPicked()

    title: qsTr("Pick the nearest place")
    breadth: 520
    onOpened: {
        places.wanted = ""
        wanted.forceActiveFocus(Qt.PopupFocusReason)
    }

    PlacesModel {
        id: places
    }
    TypedLine {
        id: wanted
        objectName: "wantedPlace"
        Layout.fillWidth: true
        label: qsTr("Part of its name")
        hint: qsTr("Type part of a name")
        text: places.wanted
        onTextEdited: places.wanted = text
    }
    ActionButton {
        objectName: "ownPlace"
        Layout.fillWidth: true
        text: qsTr("A place of your own, in figures")
        onClicked: {
            sheet.ownPicked()
            sheet.close()
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: places.count === 0
        text: qsTr("No built-in place is called so. Give your own in figures.")
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: sheet.opened ? places : null
        PickRow {
            required spoken
            objectName: "place_" + name
            Layout.fillWidth: true
            onClicked: {
                sheet.picked(name)  // first: the list goes with the sheet
                sheet.close()
            }
        }
    }
}
