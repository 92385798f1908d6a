// How sure a build is against what it weighs or costs. Each build that no other beats is a point
// with the interval of its chance, and below it a button of its own; both are touched alike. What a
// point is stands in its shape, its button and the words below, so that no colour is needed.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import Candlemark

Column {
    id: view

    required property BuildsPlot plot
    property int chosen: -1   // the point that was touched
    property string told      // what is known of it
    signal picked(int packs, int panels)

    readonly property int axisWidth: Math.round(52 * Math.max(1, Tokens.textScale))
    readonly property int tall: Math.round(230 * Math.max(1, Tokens.textScale * 0.8))
    readonly property int below: Tokens.typeMark + Tokens.gapSmall + 4
    readonly property int fan: 40   // between the scale and the buttons
    readonly property int button: Math.max(Tokens.mainTarget, Math.round(Tokens.typeMark * 3.6))
    readonly property int edge: 26  // beside the first and the last point
    readonly property int room: 18  // above the surest and below the least sure

    spacing: Tokens.gapSmall

    function up(share) {
        return view.room + (1 - share) * (view.tall - 2 * view.room)
    }
    function touch(number) {
        const point = view.plot.points[number]
        if (point)
            view.picked(point.packs, point.panels)
    }
    // Brings a point and its button into sight.
    function show(number) {
        const point = view.plot.points[number]
        if (!point)
            return
        const middle = (ground.across(point.across) + buttons.middles[number]) / 2
        sideways.contentX = Math.max(0, Math.min(sideways.contentWidth - sideways.width, middle - sideways.width / 2))
    }
    Timer {
        id: afterwards   // when the plot has its size
        interval: 0
        running: true
        onTriggered: view.show(view.chosen >= 0 ? view.chosen : view.plot.landing)
    }
    Connections {
        target: view.plot
        function onRead() { afterwards.start() }
    }

    // From one place to another, both in the same item.
    component Segment: Rectangle {
        property point from
        property point to
        x: from.x
        y: from.y - height / 2
        width: Math.hypot(to.x - from.x, to.y - from.y)
        height: 1
        transformOrigin: Item.Left
        rotation: Math.atan2(to.y - from.y, to.x - from.x) * 180 / Math.PI
        antialiasing: true
    }
    component Mark: Rectangle {
        property string kind   // "answer", "file", "plain"
        readonly property bool diamond: kind !== "file"
        width: kind === "answer" ? 18 : kind === "file" ? 14 : 9
        height: width
        rotation: diamond ? 45 : 0
        antialiasing: true
        color: kind === "answer" ? Tokens.accent : kind === "file" ? Tokens.dayGround : Tokens.loads
        border.width: kind === "plain" ? 0 : 3
        border.color: kind === "answer" ? Tokens.dayGround : Tokens.text
    }
    component Legend: Row {
        property alias kind: sign.kind
        property alias text: word.text
        spacing: Tokens.gapSmall
        Item {
            width: 24
            height: Math.max(20, word.implicitHeight)
            Mark {
                id: sign
                anchors.centerIn: parent
            }
        }
        PlainText {
            id: word
            width: Math.min(implicitWidth, view.width - 40)
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            wrapMode: Text.Wrap
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }

    Flow {
        width: parent.width
        spacing: Tokens.gapSmall
        visible: view.plot.measures.length > 1
        Accessible.role: Accessible.Grouping
        Repeater {
            model: view.plot.measures
            ChoiceButton {
                required property var modelData
                objectName: "measure_" + modelData.key
                text: modelData.name
                spoken: qsTr("Draw it against: %1").arg(modelData.name)
                chosen: view.plot.measure === modelData.key
                onClicked: view.plot.measure = modelData.key
            }
        }
    }
    PlainText {
        width: parent.width
        text: view.plot.heading
        color: Tokens.text
        font.pixelSize: Tokens.typeSmall
        font.bold: true
        wrapMode: Text.Wrap
        Accessible.ignored: true
    }
    Item {
        id: frame
        objectName: "buildsFrame"
        width: parent.width
        height: view.tall + view.below + view.fan + view.button + 22
        Accessible.role: Accessible.Chart
        Accessible.name: view.plot.heading
        Accessible.description: view.plot.spoken

        Repeater {
            model: view.plot.ticksUp
            PlainText {
                required property var modelData
                width: view.axisWidth - 6
                y: Math.max(0, Math.min(view.tall - height, view.up(modelData.at) - height / 2))
                horizontalAlignment: Text.AlignRight
                text: modelData.text
                color: Tokens.quietText
                font.pixelSize: Tokens.typeMark
                Accessible.ignored: true
            }
        }
        Flickable {
            id: sideways
            objectName: "buildsSideways"
            x: view.axisWidth
            width: parent.width - x
            height: parent.height
            contentWidth: Math.max(width, view.plot.points.length * (view.button + Tokens.gapSmall))
            contentHeight: height
            interactive: contentWidth > width + 1
            flickableDirection: Flickable.HorizontalFlick
            boundsBehavior: Flickable.StopAtBounds
            maximumFlickVelocity: Look.still ? 1 : 2500
            clip: true
            ScrollBar.horizontal: QuietBar {
                policy: sideways.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            }

            Rectangle {
                id: ground
                objectName: "buildsGround"
                width: sideways.contentWidth
                height: view.tall
                color: Tokens.dayGround
                border.width: 1
                border.color: Tokens.outline

                function across(share) {
                    return view.edge + share * (width - 2 * view.edge)
                }
                function up(share) {
                    return view.up(share)
                }

                Repeater {
                    model: view.plot.ticksUp
                    Rectangle {
                        required property var modelData
                        y: Math.round(ground.up(modelData.at))
                        width: ground.width
                        height: 1
                        color: Tokens.hairline
                    }
                }
                Repeater {   // the goal, as dashes
                    model: Math.ceil(ground.width / 14)
                    Rectangle {
                        required property int index
                        x: index * 14
                        y: Math.round(ground.up(view.plot.goalAt)) - 1
                        width: Math.min(9, ground.width - x)
                        height: 2
                        color: Tokens.text
                    }
                }
                Repeater {   // from each point to its button
                    model: view.plot.points
                    Item {
                        id: fanned
                        required property var modelData
                        required property int index
                        readonly property real at: ground.across(modelData.across)
                        Rectangle {
                            x: fanned.at
                            y: ground.up(fanned.modelData.up)
                            width: 1
                            height: ground.height + view.below - y
                            color: fanned.index === view.chosen ? Tokens.focus : Tokens.outline
                        }
                        Segment {
                            from: Qt.point(fanned.at, ground.height + view.below)
                            to: Qt.point(buttons.middles[fanned.index] ?? 0, ground.height + view.below + view.fan)
                            height: fanned.index === view.chosen ? 3 : 1
                            color: fanned.index === view.chosen ? Tokens.focus : Tokens.outline
                        }
                    }
                }
                Repeater {
                    model: view.plot.points
                    Item {
                        id: one
                        required property var modelData
                        required property int index
                        readonly property bool held: index === view.chosen
                        x: ground.across(modelData.across)
                        y: ground.up(modelData.up)
                        Rectangle {   // the interval, with its ends
                            x: -1
                            y: ground.up(one.modelData.high) - one.y
                            width: 2
                            height: ground.up(one.modelData.low) - ground.up(one.modelData.high)
                            color: Tokens.text
                        }
                        Repeater {
                            model: [one.modelData.low, one.modelData.high]
                            Rectangle {
                                required property real modelData
                                x: -5
                                y: ground.up(modelData) - one.y - 1
                                width: 10
                                height: 2
                                color: Tokens.text
                            }
                        }
                        Mark {
                            x: -width / 2
                            y: -height / 2
                            kind: one.modelData.answers ? "answer" : one.modelData.ofFile ? "file" : "plain"
                        }
                        Rectangle {
                            visible: one.held
                            x: -width / 2
                            y: -height / 2
                            width: 30
                            height: 30
                            radius: 15
                            color: "transparent"
                            border.width: 3
                            border.color: Tokens.focus
                        }
                    }
                }
                TapHandler {
                    onTapped: point => view.touch(view.plot.nearest(point.position.x - view.edge, point.position.y - view.room,
                                                                    ground.width - 2 * view.edge, view.tall - 2 * view.room, Tokens.touchTarget))
                }
            }
            Repeater {
                model: view.plot.ticksAcross
                PlainText {
                    required property var modelData
                    required property int index
                    readonly property int every: Math.ceil(1.4 * implicitWidth * (view.plot.ticksAcross.length - 1) / Math.max(1, ground.width))
                    visible: index % Math.max(1, every) === 0
                    x: Math.max(0, Math.min(ground.width - width, ground.across(modelData.at) - width / 2))
                    y: view.tall + 2
                    text: modelData.text
                    color: Tokens.quietText
                    font.pixelSize: Tokens.typeMark
                    Accessible.ignored: true

                    Rectangle {   // lines to the buttons pass behind the figures
                        z: -1
                        anchors.fill: parent
                        color: Tokens.ground
                    }
                }
            }
            Item {
                id: buttons
                objectName: "buildButtons"
                y: view.tall + view.below + view.fan
                width: sideways.contentWidth
                height: view.button

                // As near below their points as their widths allow.
                readonly property var middles: view.plot.middles(width, view.edge, view.button + Tokens.gapSmall)

                Repeater {
                    model: view.plot.points
                    T.Button {
                        id: choice
                        required property var modelData
                        required property int index
                        readonly property string spoken: modelData.words
                        readonly property bool held: index === view.chosen
                        objectName: "build_" + modelData.packs + "x" + modelData.panels
                        x: (buttons.middles[index] ?? 0) - width / 2
                        width: view.button
                        height: view.button
                        focusPolicy: Qt.StrongFocus
                        Accessible.role: Accessible.RadioButton
                        Accessible.name: spoken
                        Accessible.checkable: true
                        Accessible.checked: held
                        onClicked: view.touch(index)

                        SpokenAs {
                            item: choice
                            role: Accessible.RadioButton
                            checkable: true
                            checked: choice.held
                        }
                        onVisualFocusChanged: if (visualFocus)
                            view.show(index)
                        Keys.onReturnPressed: choice.clicked()
                        Keys.onEnterPressed: choice.clicked()
                        Keys.onLeftPressed: if (index > 0)
                            nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
                        Keys.onRightPressed: if (index + 1 < view.plot.points.length)
                            nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)

                        background: Rectangle {
                            radius: Tokens.corner
                            color: choice.down ? Tokens.pressed : choice.held ? Tokens.raised : Tokens.surface
                            border.width: choice.held || choice.visualFocus ? 3 : choice.modelData.answers ? 2 : 1
                            border.color: choice.held || choice.visualFocus ? Tokens.focus : choice.modelData.answers ? Tokens.accent : Tokens.outline
                        }
                        contentItem: Item {
                            PlainText {
                                anchors.centerIn: parent
                                text: choice.modelData.label
                                color: Tokens.text
                                font.pixelSize: Tokens.typeMark
                                font.bold: choice.held || choice.modelData.answers
                                Accessible.ignored: true
                            }
                        }
                    }
                }
            }
        }
        PlainText {
            // Over the left end of its line, below it where there is no room above.
            readonly property real line: view.up(view.plot.goalAt)
            x: view.axisWidth + 6
            y: line - height - 2 > 0 ? line - height - 2 : line + 3
            text: view.plot.goal
            color: Tokens.text
            font.pixelSize: Tokens.typeMark
            font.bold: true
            Accessible.ignored: true
        }
    }
    PlainText {
        objectName: "aboutPoint"
        width: parent.width
        text: view.chosen >= 0 ? view.told : qsTr("Touch a point or its button (packs × panels) to read what is known of that build.")
        color: view.chosen >= 0 ? Tokens.text : Tokens.quietText
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Flow {
        width: parent.width
        spacing: Tokens.gap
        Legend {
            kind: "answer"
            visible: view.plot.answerShown
            text: qsTr("the build of the answer")
        }
        Legend {
            kind: "file"
            visible: view.plot.fileShown
            text: qsTr("what the file has")
        }
        Legend {
            kind: "plain"
            text: view.plot.measure === "price" ? qsTr("no other is cheaper and as sure; the upright line is the interval, 19 times in 20")
                                                : qsTr("no other is lighter and as sure; the upright line is the interval, 19 times in 20")
        }
        PlainText {
            width: Math.min(implicitWidth, view.width)
            text: qsTr("on the buttons: packs × panels")
            wrapMode: Text.Wrap
            color: Tokens.quietText
            font.pixelSize: Tokens.typeMark
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
}
