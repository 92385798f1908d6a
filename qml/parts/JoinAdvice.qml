// What happens when a pack is plugged onto the rest: the advice, and the current as it falls.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: advice

    required property AnswerRunner runner

    spacing: Tokens.gap

    Curve {
        id: current
        runner: advice.runner
        series: "course"
        across: "at"
        up: "current"
    }
    AnswerWords {
        Layout.fillWidth: true
        runner: advice.runner
    }
    CurveFrame {
        objectName: "joinCurrent"
        Layout.fillWidth: true
        visible: current.present
        curve: current
        colour: Tokens.stored
    }
    AnswerBody {
        Layout.fillWidth: true
        runner: advice.runner
    }
}
