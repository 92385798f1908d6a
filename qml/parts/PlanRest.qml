// What the plan says besides its sentence: what more packs would do, and what the weather may do.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import Candlemark

Column {
    id: rest

    required property PlanRunner plan

    spacing: Tokens.gapSmall / 2

    component Line: PlainText {
        width: rest.width
        visible: text.length > 0
        color: Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Line {
        objectName: "range"
        text: rest.plan.range
    }
    Line {
        objectName: "chances"
        text: rest.plan.chances
    }
}
