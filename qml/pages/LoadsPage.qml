// What is switched on during the outage: the list, and beside it (or in its place where there is
// no room) all that can be said of one load.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool beside: width >= 720 * Math.max(1, Tokens.textScale * 0.85)
    property int chosen: beside ? 0 : -1   // -1: the list alone
    readonly property bool editing: chosen >= 0 && chosen < loads.count

    onBesideChanged: if (beside && chosen < 0)
        chosen = 0

    LoadsModel {
        id: loads
        document: page.document
        plan: page.plan
    }
    FieldsModel {
        id: keys
        document: page.document
        table: "load"
        number: Math.max(0, page.chosen)
    }

    Scroll {
        id: list
        visible: page.beside || !page.editing
        width: page.beside ? Math.round(page.width * 0.44) : page.width
        height: page.height

        ActionButton {
            objectName: "addLoad"
            Layout.fillWidth: true
            main: true
            text: qsTr("Add a load")
            onClicked: appliances.open()
        }
        PlainText {
            Layout.fillWidth: true
            visible: loads.count === 0
            text: qsTr("Nothing is switched on yet.")
            color: Tokens.text
            font.pixelSize: Tokens.typeBody
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Repeater {
            model: loads
            PickRow {
                required property int index
                required property string draw
                required property string evidence
                required property string perDay
                required share
                required spoken
                objectName: "load_" + index
                Layout.fillWidth: true
                detail: draw
                below: evidence
                atRight: perDay
                ofSeveral: page.beside
                chosen: page.beside && index === page.chosen
                onClicked: page.chosen = index
            }
        }
    }
    Rectangle {
        visible: page.beside
        x: list.width
        width: 1
        height: page.height
        color: Tokens.hairline
    }
    Scroll {
        id: editor
        visible: page.editing
        x: page.beside ? list.width + 1 : 0
        width: page.width - x
        height: page.height

        ActionButton {
            objectName: "backToList"
            Layout.fillWidth: true
            visible: !page.beside
            text: qsTr("◀  All loads")
            spoken: qsTr("Back to all loads")
            atLeft: true
            onClicked: page.chosen = -1
        }
        FieldsList {
            id: fieldsList
            objectName: "fields"
            Layout.fillWidth: true
            fields: keys
        }
        ActionButton {
            objectName: "removeLoad"
            Layout.fillWidth: true
            Layout.topMargin: Tokens.gap
            text: qsTr("Take this load out")
            onClicked: {
                if (loads.remove(page.chosen))
                    page.chosen = page.beside ? Math.max(0, page.chosen - 1) : -1
            }
        }
    }
    ApplianceSheet {
        id: appliances
        objectName: "appliances"
        onPicked: name => page.show(loads.addLike(name))
        onOwnPicked: {
            page.show(loads.addOwn())
            fieldsList.type("load[" + page.chosen + "].power")
        }
    }

    function show(number) {
        if (number < 0)
            return
        page.chosen = number
        editor.contentY = 0
    }
}
