// What the waxes of the candle mean.
import QtQuick
import Candlemark

Flow {
    spacing: Tokens.gapSmall / 2

    LegendEntry { kind: "wax"; text: qsTr("packs carry") }
    LegendEntry { kind: "sunWax"; text: qsTr("sun puts back") }
    LegendEntry { kind: "doubt"; text: qsTr("may be less") }
    LegendEntry { kind: "missing"; text: qsTr("burnt, missing") }
}
