// The candle of the outage as it stands at the moment looked at, and what its waxes mean.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: panel

    required property PlanRunner plan
    property bool legend: true

    spacing: Tokens.gapSmall / 2

    Taper {
        objectName: "taper"
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 180
        Layout.bottomMargin: Tokens.gapSmall
        candle: panel.plan.candle
        burnt: panel.plan.days.momentBurnt
        flameText: panel.plan.days.momentLeft
        textSize: Tokens.typeMark
        wax: Tokens.wax
        sunWax: Tokens.sunWax
        scratch: Tokens.scratch
        ghost: Tokens.ghost
        flame: Tokens.flame
        flameHeart: Tokens.flameHeart
        ink: Tokens.text
        quietInk: Tokens.quietText
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Candle")
        Accessible.description: panel.plan.candle.spoken
    }
    CandleLegend {
        Layout.fillWidth: true
        visible: panel.legend
    }
}
