// The Now page by finger and by keyboard: how many touches each of the six entries takes, what is
// written, taken back and struck; and where everything stands at every size.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "now"
    when: windowShown

    property var program: null
    property int touches: 0   // beside the digits of the number
    property int digits: 0
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        Tokens.textScale = scale ?? 1
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        compare(program.page, "now", "the outage runs")
        tryVerify(() => program.pageItem && program.pageItem.answer.answered && !program.pageItem.busy)
        waitForRendering(program.contentItem)
        touches = 0
        digits = 0
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        Walk.reveal(item)
        ++touches
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(20)
    }
    function type(number) {
        for (const sign of number) {
            tap(part("key_" + sign))
            --touches
            ++digits
        }
    }
    function written(what, text, most) {
        tap(part("writeNote"))
        tryVerify(() => program.scenario.text.endsWith(text), 2000, program.scenario.text.slice(-160))
        verify(touches <= most && most <= 4, what + ": " + touches + " touches")
        console.log(what + ": " + touches + " touches and " + digits + " digits")
        verify(part("writtenWords").text.length > 0)
    }

    function sizes() {
        return [{ tag: "390x844", width: 390, height: 844 }, { tag: "844x390", width: 844, height: 390 },
                { tag: "1280x800", width: 1280, height: 800 }]
    }
    function test_volts_data() { return sizes() }
    function test_volts(size) {
        open(size.width, size.height)
        tap(part("note_volts"))
        type("129")
        written("volts", "at = 2026-01-15T21:30:00\nreads = \"12.9 V\"\n", 2)
    }
    function test_volts_of_a_pack_after_a_rest() {
        open(390, 844)
        tap(part("note_volts"))
        tap(part("what_main"))
        type("132")
        tap(part("detail_8 h"))
        written("volts of a pack, rested", "pack = \"main\"\nreads = \"13.2 V\"\nrested = \"8 h\"\n", 4)
    }
    function test_meter_data() { return sizes() }
    function test_meter(size) {
        open(size.width, size.height)
        tap(part("note_meter"))
        tap(part("what_chest freezer"))
        type("1.15")
        written("meter", "metered = {energy = \"1.15 kWh\", over = \"1 d\"}\n", 3)
    }
    function test_sun_data() { return sizes() }
    function test_sun(size) {
        open(size.width, size.height)
        tap(part("note_sun"))
        type("420")
        tap(part("detail_grey"))
        written("sun", "sun = \"420 Wh\"\nsky = \"grey\"\n", 3)
    }
    function test_thermometer_data() { return sizes() }
    function test_thermometer(size) {
        open(size.width, size.height)
        tap(part("note_thermometer"))
        tap(part("what_chest freezer"))
        type("-11")
        written("thermometer", "keeps = \"chest freezer\"\ntemperature = \"-11 degC\"\n", 3)
    }
    function test_switched_data() { return sizes() }
    function test_switched(size) {
        open(size.width, size.height)
        tap(part("note_switched"))
        tap(part("what_furnace blower"))
        written("switched", "load = \"furnace blower\"\nhappened = \"switched off\"\n", 3)
    }
    function test_happened_data() { return sizes() }
    function test_happened(size) {
        open(size.width, size.height)
        tap(part("note_happened"))
        tap(part("what_left"))
        tap(part("detail_expansion"))
        written("happened", "pack = \"expansion\"\ncount = 1\nhappened = \"pack left\"\n", 4)
    }
    function test_the_time_is_now_and_moves_in_steps() {
        open(390, 844)
        tap(part("note_switched"))
        tap(part("what_furnace blower"))
        tap(Walk.named(part("noteTime"), "step_-10"))
        written("ten minutes ago", "at = 2026-01-15T21:20:00\nload = \"furnace blower\"\nhappened = \"switched off\"\n", 4)
    }
    function test_an_entry_is_taken_back() {
        open(390, 844)
        const before = program.scenario.text
        tap(part("note_volts"))
        type("129")
        tap(part("writeNote"))
        tryVerify(() => program.scenario.text !== before)
        tap(part("undoNote"))
        compare(program.scenario.text, before)
    }
    function test_an_entry_is_struck_and_stays_readable() {
        open(390, 844)
        tap(part("note_volts"))
        type("129")
        tap(part("writeNote"))
        tryVerify(() => program.pageItem.log.count === 1)
        tap(Walk.named(part("entry_0"), "strike"))
        tryVerify(() => program.pageItem.log.count === 2)
        verify(Walk.all(part("log")).some(item => item.objectName === "entryWords" && item.font.strikeout))
        verify(program.scenario.text.includes("reads = \"12.9 V\""))
        verify(program.scenario.text.includes("strikes = 2026-01-15T21:30:00"))
    }
    function test_by_keyboard_alone() {
        open(1280, 800)
        keyClick("1")
        tryVerify(() => Walk.named(program.contentItem.parent, "notePad"))
        tryVerify(() => part("notePad").activeFocus)
        for (const sign of "128")
            keyClick(sign)
        keyClick(Qt.Key_Return)
        tryVerify(() => program.scenario.text.endsWith("reads = \"12.8 V\"\n"))
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        tryVerify(() => !program.scenario.text.includes("[[log]]"))
    }
    function test_everything_has_its_place_data() {
        const screens = []
        for (const [width, height] of [[390, 844], [844, 390], [800, 480], [1280, 800], [1920, 1080]])
            for (const scale of [1, 2])
                screens.push({ tag: width + "x" + height + " at " + scale * 100 + " %",
                               width: width, height: height, scale: scale })
        return screens
    }
    function test_everything_has_its_place(screen) {
        open(screen.width, Math.max(480, screen.height), screen.scale)
        compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).join("\n"), "")
        for (const kind of ["volts", "meter", "sun", "thermometer", "switched", "happened"]) {
            const button = part("note_" + kind)
            const place = Walk.place(button, program.contentItem)
            verify(button.height >= Tokens.mainTarget, kind)
            verify(place.y >= 0 && place.bottom <= program.contentItem.height + 0.5, kind + " is in sight")
            tap(button)
            tryVerify(() => Walk.named(program.contentItem.parent, "writeNote"))
            wait(30)
            const sheet = part("writeNote").parent
            const cut = Walk.all(sheet.parent).filter(item => Walk.isText(item) && item.text.length > 0
                && (item.truncated || item.paintedWidth > item.width + 1)).map(item => item.text)
            compare(cut.join("\n"), "", kind)
            keyClick(Qt.Key_Escape)
            tryVerify(() => !Walk.named(program.contentItem.parent, "writeNote"))
        }
    }
    function test_the_sentences_are_the_largest_words() {
        open(390, 844)
        const first = part("leading_0")
        const larger = Walk.all(program.pageItem).filter(item => Walk.isText(item) && item.text.length > 12
            && item.font.pixelSize > first.font.pixelSize)
        compare(larger.length, 0)
        compare(part("leading_1").font.pixelSize, first.font.pixelSize)
        compare(part("leading_2").font.pixelSize, first.font.pixelSize)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
