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
    function looks() { return [{ tag: "dark", dark: true }, { tag: "light", dark: false }] }

    function test_the_sentence_stands_out_data() { return looks() }
    function test_the_sentence_stands_out(look) {
        Tokens.dark = look.dark
        verify(contrast(Tokens.text, Tokens.ground) >= 7)
    }
    function test_every_text_can_be_read_data() { return looks() }
    function test_every_text_can_be_read(look) {
        Tokens.dark = look.dark
        const pairs = [
            ["text", "ground"], ["text", "surface"], ["text", "raised"], ["text", "pressed"], ["text", "well"],
            ["quietText", "ground"], ["quietText", "surface"], ["quietText", "well"], ["quietText", "raised"],
            ["accentInk", "accent"], ["accent", "raised"], ["accent", "ground"],
            ["stop", "surface"], ["caution", "surface"], ["caution", "raised"], ["note", "surface"], ["stop", "ground"]]
        for (const [ink, paper] of pairs) {
            const ratio = contrast(Tokens[ink], Tokens[paper])
            verify(ratio >= 4.5, ink + " on " + paper + ": " + ratio.toFixed(2))
        }
    }
    function test_every_chance_can_be_read_data() { return looks() }
    function test_every_chance_can_be_read(look) {
        Tokens.dark = look.dark
        compare(Tokens.chanceFills.length, 5)
        for (let step = 0; step < 5; ++step) {
            const ratio = contrast(Qt.color(Tokens.chanceInks[step]), Qt.color(Tokens.chanceFills[step]))
            verify(ratio >= 4.5, "step " + step + ": " + ratio.toFixed(2))
        }
    }
    function test_every_line_and_mark_can_be_seen_data() { return looks() }
    function test_every_line_and_mark_can_be_seen(look) {
        Tokens.dark = look.dark
        const pairs = [
            ["stored", "dayGround"], ["stored", "night"], ["loads", "dayGround"], ["loads", "night"],
            ["sun", "dayGround"], ["sun", "night"], ["focus", "ground"], ["focus", "surface"],
            ["outline", "ground"], ["outline", "surface"], ["scratch", "wax"], ["scratch", "sunWax"],
            ["ghost", "ground"], ["text", "dayGround"], ["text", "night"]]
        for (const [ink, paper] of pairs) {
            const ratio = contrast(Tokens[ink], Tokens[paper])
            verify(ratio >= 3, ink + " on " + paper + ": " + ratio.toFixed(2))
        }
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
        Tokens.textScale = 1
    }
}
