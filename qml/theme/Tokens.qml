// Colours, sizes and type by the role they play. A part names a role, never a value.
pragma Singleton
import QtQuick

QtObject {
    // Dark for the night, light for daylight; both are meant to be read at arm's length.
    property bool dark: true
    // Nothing but black, white and one colour beside them; goes with dark.
    property bool strong: false
    // 1 is the usual size; every type size follows it.
    property real textScale: 1

    // ground: the window; surface: what stands on it; well: what is sunk into it.
    readonly property color ground: dark ? "#000000" : "#ffffff"
    readonly property color surface: strong ? "#000000" : dark ? "#15120e" : "#f5f0e6"
    readonly property color well: dark ? "#0b0907" : "#ffffff"
    readonly property color raised: strong ? "#1c1c1c" : dark ? "#2a241b" : "#e6dccb"
    readonly property color pressed: dark ? "#453a29" : "#d3c4a8"
    readonly property color outline: strong ? "#d0d0d0" : dark ? "#857861" : "#74654c"
    // Divides, and tells nothing by itself.
    readonly property color hairline: strong ? "#767676" : dark ? "#2f281e" : "#d9cfbd"

    readonly property color text: strong ? "#ffffff" : dark ? "#f6eee0" : "#17120a"
    readonly property color quietText: strong ? "#ffffff" : dark ? "#c3b7a3" : "#4d4334"
    readonly property color accent: strong ? "#ffe14d" : dark ? "#ffb454" : "#8a4b00"
    readonly property color accentInk: strong ? "#000000" : dark ? "#1d1200" : "#ffffff"
    readonly property color focus: dark ? "#ffffff" : "#000000"

    readonly property color veil: dark ? "#c0000000" : "#80000000"  // over a page that waits

    // Severity: never without its mark and its word.
    readonly property color stop: dark ? "#ff8f70" : "#a3260a"
    readonly property color caution: dark ? "#f0c53f" : "#6f5200"
    readonly property color note: dark ? "#8fc9f2" : "#0a5287"

    // Series, from a set that people of every colour vision can tell apart [Okabe Ito]. Bands and
    // night are shades; what has to be seen of them is their edge, drawn in the colour of the line.
    readonly property color stored: dark ? "#e69f00" : "#9a5200"
    readonly property color storedRange: dark ? "#4a3508" : "#f9e6c6"  // eight members of ten
    readonly property color storedHalf: dark ? "#6b4c0b" : "#f3cf94"   // five of ten
    readonly property color end: dark ? "#fff3c4" : "#4a1f00"          // when they end
    readonly property color loads: dark ? "#56b4e9" : "#0072b2"
    // The loads by priority, the first below; each has a pattern as well.
    readonly property var stacks: dark ? ["#56b4e9", "#2fbf94", "#d98cb8"] : ["#0072b2", "#00705a", "#8f3f73"]
    readonly property color sun: dark ? "#f0e442" : "#756a00"
    readonly property color night: dark ? "#05070f" : "#dfe3ee"
    readonly property color nightMark: dark ? "#7f8cb8" : "#4a5680"
    readonly property color dayGround: dark ? "#1b1712" : "#fbf7ee"

    // From hardly any chance of lasting to nearly all, and the ink on each.
    readonly property var chanceFills: dark ? ["#0b0907", "#33260f", "#5c420d", "#b37a12", "#ffc46b"]
                                            : ["#ffffff", "#f7ead0", "#efca8c", "#c98a2b", "#6b3a00"]
    readonly property var chanceInks: dark ? ["#f6eee0", "#f6eee0", "#f6eee0", "#000000", "#1d1200"]
                                           : ["#17120a", "#17120a", "#17120a", "#17120a", "#ffffff"]

    // The candle.
    readonly property color wax: dark ? "#e8b064" : "#e0a24e"
    readonly property color sunWax: dark ? "#f6ec7c" : "#f3e35a"
    readonly property color scratch: dark ? "#2b1c06" : "#3d2706"
    readonly property color ghost: dark ? "#93856c" : "#74654c"
    readonly property color flame: dark ? "#ff9a3c" : "#d9600a"
    readonly property color flameHeart: dark ? "#fff3c4" : "#ffd98a"

    readonly property int touchTarget: 48
    readonly property int mainTarget: 56
    readonly property int gapSmall: 8
    readonly property int gap: 16
    readonly property int gapLarge: 24
    readonly property int corner: 10
    readonly property int focusWidth: 3
    readonly property int scratchLong: 26   // marks of the ruler of pages
    readonly property int scratchShort: 12

    readonly property int typeSentence: Math.round(30 * textScale)
    readonly property int typeSentenceNarrow: Math.round(23 * textScale)
    // On a hand's breadth the sentence and the name of the file leave room for the page; they are
    // large from the outset.
    readonly property int typeSentenceTight: Math.round(Math.min(23 * textScale, 30))
    readonly property int typeName: Math.round(Math.min(17 * textScale, 22))
    // A tag beside the name; likewise.
    readonly property int typeTag: Math.round(Math.min(14 * textScale, 18))
    readonly property int typeTitle: Math.round(20 * textScale)
    readonly property int typeBody: Math.round(17 * textScale)
    readonly property int typeSmall: Math.round(15 * textScale)
    readonly property int typeMark: Math.round(14 * textScale)
}
