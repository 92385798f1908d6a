// What the page at hand answers, how it is used, and the keys.
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Candlemark

Sheet {
    id: sheet

    required property string page
    required property string pageName

    // By the key of the page: what it answers, then what one can do there.
    readonly property var told: ({
        packs: [qsTr("Each kind of pack you have: how full it is, how old, what may be joined to what. Touch one to change it."),
                qsTr("Under “What the voltmeter means”, type what you read: you see how full the pack may be, and how sure that is."),
                qsTr("Before two packs are joined, look at “Plugging one onto the rest”: it says what current would flow.")],
        builds: [qsTr("How many packs and panels reach the chance you want. Each cell is one build: packs down, panels across."),
                 qsTr("The same days of sun and the same doubts are run for every build, so that one is fairly held against the other.")],
        start: [qsTr("Whether a motor starts on this unit, and what stands in its way: the inverter, the battery, a fuse or the cold."),
                qsTr("Pick a tool or pump; the bars show how much of each limit it takes.")],
        wiring: [qsTr("Whether every fuse, wire, switch and connector suits what is drawn through it, from the bus outwards."),
                 qsTr("A part that fails is named with what would fit. A drawing can be printed.")],
        days: [qsTr("Until when the loads are carried: nine times in ten, most likely, and the chance to the end."),
               qsTr("Slide along the plot to read an hour. Change packs, panels or days below; the answer follows."),
               qsTr("The candle burns down through the days; what the sun puts back lets it grow.")],
        loads: [qsTr("What must stay on, and when. A figure read from a plug-in meter counts more than a label, a label more than a guess."),
                qsTr("The priority says who goes without first: 1 is life and health, 5 is work.")],
        sun: [qsTr("What the panels give back in that place and month, from dull to bright days."),
              qsTr("Turn the panel with a finger, or with the buttons, to see what another tilt gives.")],
        now: [qsTr("While the outage runs: until when from now, what to switch off next, what to read next."),
              qsTr("What you write down is kept in your file and never changed.")],
        storage: [qsTr("Whether a pack that stood for months is ready, and when it must be topped up.")],
        print: [qsTr("A card for the lid, a report, the wiring: on paper, to be read without the program.")],
        file: [qsTr("Your file is a plain text. Every key it has or could have can be changed here, with what holds where it is silent."),
               qsTr("The last ten versions you saved over can be had again.")]
    })
    readonly property var keys: [
        [qsTr("1 to 9, 0"), qsTr("a page, as numbered beside it")],
        [qsTr("Ctrl PageUp, Ctrl PageDown"), qsTr("the page before, the page after")],
        [qsTr("PageUp, PageDown, Home, End"), qsTr("move what is shown")],
        [qsTr("Tab, arrows, Space, Return"), qsTr("go through and press")],
        [qsTr("Ctrl N, O, S, Shift S"), qsTr("new, open, save, save as")],
        [qsTr("Ctrl Z, Ctrl Y"), qsTr("take back, make again")],
        [qsTr("Ctrl Q"), qsTr("close; unsaved work is kept")],
        [qsTr("F1, Escape"), qsTr("this help, close what lies above")]
    ]

    title: qsTr("Help: %1").arg(sheet.pageName)
    breadth: 620

    component Words: PlainText {
        Layout.fillWidth: true
        color: Tokens.text
        font.pixelSize: Tokens.typeBody
        wrapMode: Text.Wrap
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened ? sheet.told[sheet.page] ?? [] : []
            Words {
                width: parent?.width ?? 0
                required property string modelData
                objectName: "helpWords"
                text: modelData
            }
        }
    }
    Words {
        color: Tokens.quietText
        font.pixelSize: Tokens.typeSmall
        text: qsTr("Every page: the sentence on top is the answer to the file as it stands. Stops and cautions say what would mend them. Figures are arithmetic, not approval.")
    }
    SectionTitle {
        Layout.fillWidth: true
        Layout.topMargin: Tokens.gapSmall
        text: qsTr("Keys")
    }
    // A positioner: a layout of Qt 6.4 may lay out rows that are gone.
    Column {
        Layout.fillWidth: true
        spacing: Tokens.gapSmall
        Repeater {
            model: sheet.opened ? sheet.keys : []
            Words {
                width: parent?.width ?? 0
                required property var modelData
                font.pixelSize: Tokens.typeSmall
                text: qsTr("%1: %2").arg(modelData[0]).arg(modelData[1])
            }
        }
    }
}
