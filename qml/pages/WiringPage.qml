// Whether fuse, wire, switch, connector and outlet suit what is drawn: the build as a picture, and
// what was found about each part.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Layouts
import Candlemark

Item {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool busy: answer.running

    AnswerRunner {
        id: answer
        document: page.document
        question: "wiring"
    }
    WiringPicture {
        id: picture
        runner: answer
    }

    Scroll {
        anchors.fill: parent
        spacing: Tokens.gap

        AnswerWords {
            Layout.fillWidth: true
            runner: answer
        }
        WiringDrawing {
            id: drawing
            objectName: "wiring"
            Layout.fillWidth: true
            Layout.preferredHeight: implicitHeight
            visible: picture.present
            picture: picture
        }
        PlainText {
            objectName: "aboutPart"
            Layout.fillWidth: true
            visible: picture.present
            text: drawing.chosen >= 0 && drawing.chosen < picture.boxes.length ? picture.boxes[drawing.chosen].spoken
                                                                              : qsTr("Touch a part to read what was found about it.")
            color: drawing.chosen >= 0 ? Tokens.text : Tokens.quietText
            font.pixelSize: Tokens.typeBody
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        Fold {
            objectName: "circuitFields"
            Layout.fillWidth: true
            title: qsTr("Change the circuits")
            inside: Component {
                CircuitsEditor {
                    document: page.document
                }
            }
        }
        Fold {
            objectName: "caseFields"
            Layout.fillWidth: true
            title: qsTr("The case")
            inside: Component {
                TableEditor {
                    document: page.document
                    table: "case"
                }
            }
        }
        AnswerBody {
            Layout.fillWidth: true
            runner: answer
        }
    }
}
