import QtQuick
import QtTest
import Candlemark

TestCase {
    name: "tokens"

    // [WCAG 2.1] "relative luminance" and "contrast ratio".
    function luminance(colour) {
        function part(value) {
            return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4)
        }
        return 0.2126 * part(colour.r) + 0.7152 * part(colour.g) + 0.0722 * part(colour.b)
    }
    function contrast(a, b) {
        const x = luminance(a), y = luminance(b)
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05)
    }
    function test_black_on_white_has_the_ratio_of_the_standard() {
        fuzzyCompare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 0.001)
    }
    function looks() {
        return [{ tag: "dark", dark: true, strong: false }, { tag: "light", dark: false, strong: false },
                { tag: "contrast", dark: true, strong: true }]
    }

    function test_the_sentence_stands_out_data() { return looks() }
    function test_the_sentence_stands_out(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        verify(contrast(Tokens.text, Tokens.ground) >= 7)
    }
    // Each mark or text, and all it lies on.
    readonly property var texts: ({
        text: ["ground", "surface", "well", "raised", "pressed", "dayGround", "night"],
        quietText: ["ground", "surface", "well", "raised"],
        accent: ["ground", "surface", "raised"],
        accentInk: ["accent"],
        stop: ["ground", "surface"], caution: ["ground", "surface", "raised"], note: ["ground", "surface"]
    })
    readonly property var marks: ({
        // The store: its line and its edges on the day, the night, and the shades between them.
        stored: ["dayGround", "night", "storedRange", "storedHalf", "surface"],
        end: ["dayGround", "night", "storedRange", "storedHalf"],
        // The line at which the packs are empty, and the limit beside a bar.
        stop: ["dayGround", "night", "storedRange", "storedHalf", "ground", "surface"],
        caution: ["ground", "surface"], note: ["ground", "surface"],
        // The line of the sun and that of the moment have an edge of the day's ground, which lies
        // on what they cross.
        sun: ["dayGround", "surface", "ground"],
        text: ["dayGround", "ground"],
        loads: ["dayGround", "night", "surface", "ground"],
        nightMark: ["dayGround"],
        outline: ["ground", "surface", "dayGround"],
        accent: ["ground", "surface", "raised", "dayGround"],
        focus: ["ground", "surface", "raised", "dayGround"],
        ghost: ["ground"],
        scratch: ["wax", "sunWax"],
        flame: ["ground"]
    })

    // The least ratio of these pairs, each of which is at least so much.
    function least(pairs, atLeast) {
        let found = 99
        for (const ink of Object.keys(pairs)) {
            for (const paper of pairs[ink]) {
                const ratio = contrast(Tokens[ink], Tokens[paper])
                verify(ratio >= atLeast, ink + " on " + paper + ": " + ratio.toFixed(2))
                found = Math.min(found, ratio)
            }
        }
        return found
    }
    function test_every_text_can_be_read_data() { return looks() }
    function test_every_text_can_be_read(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        console.log(look.tag, "least contrast of a text:", least(texts, 4.5).toFixed(2))
    }
    // The number in the mark of a finding.
    function test_the_number_of_a_finding_can_be_read_data() { return looks() }
    function test_the_number_of_a_finding_can_be_read(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        const ink = Tokens.dark ? Tokens.ground : Tokens.accentInk
        for (const mark of ["stop", "caution", "note"])
            verify(contrast(ink, Tokens[mark]) >= 4.5, mark)
    }
    function test_the_loads_of_each_priority_are_seen_data() { return looks() }
    function test_the_loads_of_each_priority_are_seen(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        verify(Tokens.stacks.length >= 3)
        for (const colour of Tokens.stacks)
            for (const paper of ["dayGround", "night", "surface"]) {
                const ratio = contrast(Qt.color(colour), Tokens[paper])
                verify(ratio >= 3, colour + " on " + paper + ": " + ratio.toFixed(2))
            }
    }
    // Pale wax on a pale page is seen by its edge.
    function test_the_candle_stands_out_data() { return looks() }
    function test_the_candle_stands_out(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        for (const wax of ["wax", "sunWax"])
            verify(Math.max(contrast(Tokens[wax], Tokens.ground), contrast(Tokens.scratch, Tokens.ground)) >= 3, wax)
    }
    function test_every_chance_can_be_read_data() { return looks() }
    function test_every_chance_can_be_read(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        compare(Tokens.chanceFills.length, 5)
        for (let step = 0; step < 5; ++step) {
            const ratio = contrast(Qt.color(Tokens.chanceInks[step]), Qt.color(Tokens.chanceFills[step]))
            verify(ratio >= 4.5, "step " + step + ": " + ratio.toFixed(2))
        }
    }
    function test_every_line_and_mark_can_be_seen_data() { return looks() }
    function test_every_line_and_mark_can_be_seen(look) {
        Tokens.dark = look.dark
        Tokens.strong = look.strong
        console.log(look.tag, "least contrast of a mark:", least(marks, 3).toFixed(2))
    }
    function test_targets_are_as_large_as_a_finger() {
        verify(Tokens.touchTarget >= 48)
        verify(Tokens.mainTarget >= 56)
        verify(Tokens.gapSmall >= 8)
    }
    function test_every_type_size_doubles_with_the_text_scale() {
        const sizes = ["typeSentence", "typeSentenceNarrow", "typeTitle", "typeBody", "typeSmall",
                       "typeMark"]
        Tokens.textScale = 1
        const before = sizes.map(size => Tokens[size])
        Tokens.textScale = 2
        sizes.forEach((size, i) => compare(Tokens[size], 2 * before[i], size))
        Tokens.textScale = 1
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.strong = false
        Tokens.textScale = 1
    }
}
