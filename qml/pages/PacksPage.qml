// The packs of the unit, each kind a row with its charge, age and lead, and what happens when one is
// plugged onto the rest; beside it all that can be said of one kind.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool beside: width >= 720 * Math.max(1, Tokens.textScale * 0.85)
    property int chosen: beside ? 0 : -1   // -1: the list alone
    // The kind that is plugged onto the rest: the one looked at, or else the last.
    property string joins
    readonly property bool busy: joining.running
    readonly property bool editing: chosen >= 0 && chosen < packs.count

    onBesideChanged: if (beside && chosen < 0)
        chosen = 0

    PacksModel {
        id: packs
        document: page.document
    }
    AnswerRunner {
        id: joining
        document: page.document
        question: "join"
        pack: page.joins
    }
    FieldsModel {
        id: keys
        document: page.document
        table: "pack"
        number: Math.max(0, page.chosen)
    }

    Scroll {
        id: list
        visible: page.beside || !page.editing
        width: page.beside ? Math.round(page.width * 0.44) : page.width
        height: page.height

        Repeater {
            model: packs
            PickRow {
                required property int index
                required property string held
                required property string state
                required property real charge
                shareColour: Tokens.stored
                required spoken
                objectName: "pack_" + index
                Layout.fillWidth: true
                detail: held
                below: state
                share: charge
                ofSeveral: page.beside
                chosen: page.beside && index === page.chosen
                onClicked: {
                    page.chosen = index
                    page.joins = name
                }
            }
        }
        ActionButton {
            objectName: "addPack"
            Layout.fillWidth: true
            text: qsTr("Add another kind of pack")
            onClicked: {
                const number = packs.add()
                if (number >= 0)
                    page.chosen = number
            }
        }
        Fold {
            objectName: "gauge"
            Layout.fillWidth: true
            visible: joining.knows("gauge")
            title: qsTr("What the voltmeter means")
            inside: Component { GaugePane { document: page.document } }
        }
        SectionTitle {
            Layout.fillWidth: true
            Layout.topMargin: Tokens.gap
            text: qsTr("Plugging one onto the rest")
        }
        JoinAdvice {
            objectName: "join"
            Layout.fillWidth: true
            runner: joining
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
        visible: page.editing
        x: page.beside ? list.width + 1 : 0
        width: page.width - x
        height: page.height

        ActionButton {
            objectName: "backToList"
            Layout.fillWidth: true
            visible: !page.beside
            text: qsTr("◀  All packs")
            spoken: qsTr("Back to all packs")
            atLeft: true
            onClicked: page.chosen = -1
        }
        FieldsList {
            objectName: "fields"
            Layout.fillWidth: true
            fields: keys
        }
        ActionButton {
            objectName: "removePack"
            Layout.fillWidth: true
            Layout.topMargin: Tokens.gap
            enabled: packs.count > 1
            text: qsTr("Take this kind out")
            onClicked: {
                if (packs.remove(page.chosen))
                    page.chosen = page.beside ? Math.max(0, page.chosen - 1) : -1
            }
        }
    }
}
