// The findings that have an hour, each above it with a line down to it: the same mark and number as
// in the list. A touch opens what was found; those of hours too close to each other are one pin.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Candlemark

Item {
    id: row

    required property DaysModel days
    required property PlotWindow view
    readonly property int size: Tokens.touchTarget
    readonly property int mark: 30
    readonly property int lead: 14   // between the marks and the frame
    readonly property var shown: {
        row.days.edition   // another plan has other pins
        return row.days.pinsIn(row.view.from, row.view.to, row.width, row.size)
    }

    implicitHeight: size + lead

    function colour(mark) {
        return mark === "stop" ? Tokens.stop : mark === "caution" ? Tokens.caution : Tokens.note
    }

    Repeater {
        model: row.shown
        T.Button {
            id: pin
            required property var modelData
            required property int index
            readonly property string spoken: modelData.text
            readonly property color colour: row.colour(modelData.mark)
            objectName: "pin_" + index
            x: modelData.x - width / 2
            width: row.size
            height: row.size
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.Button
            Accessible.name: spoken
            Keys.onReturnPressed: pin.clicked()
            Keys.onEnterPressed: pin.clicked()
            onClicked: sheet.show(modelData.of)

            contentItem: Item {
                SeverityMark {
                    anchors.centerIn: parent
                    width: row.mark
                    height: row.mark
                    mark: pin.modelData.mark
                    number: pin.modelData.number
                    colour: pin.colour
                    ink: Tokens.dark ? Tokens.ground : Tokens.accentInk
                    Accessible.ignored: true
                }
            }
            background: Rectangle {
                radius: Tokens.corner
                color: pin.down ? Tokens.pressed : "transparent"
                border.width: pin.visualFocus ? Tokens.focusWidth : 0
                border.color: Tokens.focus
            }
            Repeater {   // from the mark to each of its hours
                model: pin.modelData.places
                Item {
                    id: lead
                    required property real modelData
                    readonly property real across: modelData - pin.modelData.x
                    Rectangle {
                        x: pin.width / 2
                        y: pin.height / 2 + row.mark / 2
                        width: Math.hypot(lead.across, row.lead + (pin.height - row.mark) / 2)
                        height: 2
                        transformOrigin: Item.Left
                        rotation: Math.atan2(row.lead + (pin.height - row.mark) / 2, lead.across) * 180 / Math.PI
                        antialiasing: true
                        color: pin.colour
                    }
                }
            }
        }
    }
    Sheet {
        id: sheet
        objectName: "pinFindings"
        title: qsTr("What was found then")
        breadth: 560

        property var findings: []

        function show(of) {
            findings = row.days.findingsOf(of)
            open()
        }

        Repeater {
            model: sheet.opened ? sheet.findings : []
            FindingRow {
                required property var modelData
                Layout.fillWidth: true
                mark: modelData.mark
                word: modelData.word
                where: modelData.where
                text: modelData.text
                mend: modelData.mend
                pin: modelData.pin
                spoken: modelData.spoken
                source: modelData.source
            }
        }
    }
}
