// How the panels stand: a picture whose panel a finger turns, and buttons that do the same. The
// answers follow the finger; the file changes once, when it is lifted.
import QtQuick
import QtQuick.Layouts
import Candlemark

ColumnLayout {
    id: control

    required property SunControls controls

    spacing: Tokens.gapSmall

    TiltPicture {
        id: picture
        objectName: "tiltPicture"
        Layout.fillWidth: true
        Layout.preferredHeight: 150
        tilt: control.controls.tilt
        noon: control.controls.noon
        ground: Tokens.outline
        panel: Tokens.loads
        sun: Tokens.sun
        ray: Tokens.sun
        activeFocusOnTab: true
        // As a screen reader reads and turns it.
        property real value: control.controls.tilt
        property real minimumValue: 0
        property real maximumValue: 90
        property real stepSize: 5
        onValueChanged: {
            if (value === control.controls.tilt)
                return
            control.controls.setTilt(value)
            picture.value = Qt.binding(() => control.controls.tilt)
        }
        Accessible.onIncreaseAction: control.controls.more()
        Accessible.onDecreaseAction: control.controls.less()
        Accessible.role: Accessible.Slider
        Accessible.name: qsTr("Tilt of the panels")
        Accessible.description: control.controls.tiltText
        Keys.onUpPressed: control.controls.more()
        Keys.onDownPressed: control.controls.less()
        Keys.onRightPressed: control.controls.more()
        Keys.onLeftPressed: control.controls.less()

        FocusRing {
            shown: picture.activeFocus
        }
        TapHandler {
            onTapped: point => control.controls.setTilt(picture.tiltTowards(point.position.x, point.position.y))
        }
        DragHandler {
            target: null
            onCentroidChanged: if (active)
                control.controls.turn(picture.tiltTowards(centroid.position.x, centroid.position.y))
            onActiveChanged: if (!active)
                control.controls.settle()
        }
    }
    PlainText {
        Layout.fillWidth: true
        visible: text.length > 0
        text: control.controls.noonText
        color: Tokens.quietText
        font.pixelSize: Tokens.typeMark
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    CountStepper {
        objectName: "tilt"
        Layout.fillWidth: true
        label: qsTr("Tilt from level")
        shown: control.controls.tiltText
        detail: ""
        stacked: true
        held: control.controls.tilt
        minimumValue: 0
        maximumValue: 90
        stepSize: 5
        canLess: control.controls.canLess
        canMore: control.controls.canMore
        onLess: control.controls.less()
        onMore: control.controls.more()
    }
}
