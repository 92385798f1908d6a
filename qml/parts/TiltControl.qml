// How the panels stand: a picture whose panel a finger turns, and buttons that do the same.
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
                control.controls.setTilt(picture.tiltTowards(centroid.position.x, centroid.position.y))
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
        canLess: control.controls.canLess
        canMore: control.controls.canMore
        onLess: control.controls.less()
        onMore: control.controls.more()
    }
}
