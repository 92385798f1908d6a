// The plot in words, an hour a row, for whoever reads better than looks or listens.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Candlemark

FocusScope {
    id: table

    required property DaysModel days

    Rectangle {
        anchors.fill: parent
        radius: Tokens.corner
        color: Tokens.well
        border.width: 1
        border.color: Tokens.outline
    }
    ListView {
        id: rows
        objectName: "rows"
        anchors.fill: parent
        anchors.margins: 1
        clip: true
        focus: true
        activeFocusOnTab: true
        model: table.days
        currentIndex: table.days.row
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("The outage, an hour a row")
        Keys.onUpPressed: table.days.earlier()
        Keys.onDownPressed: table.days.later()
        ScrollBar.vertical: QuietBar { width: 10 }

        delegate: DaysTableRow {
            width: rows.width
            looked: index === table.days.row
            onTouched: table.days.row = index
        }
    }
    FocusRing {
        shown: rows.activeFocus
    }
}
