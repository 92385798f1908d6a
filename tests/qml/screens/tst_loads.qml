// The Loads page by finger: add one from the library, type a number, say how sure it is, take it
// out, take that back.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "loads"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_loads"))
        waitForRendering(program.contentItem)
    }
    // Sheets lie beside the window's content.
    function part(name) {
        const found = Walk.named(program.contentItem.parent, name)
        verify(found, name)
        return found
    }
    function tap(item) {
        Walk.reveal(item)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
    }
    function field(name) { return part("field_" + name) }

    function test_a_load_is_added_in_three_touches() {
        open(1280, 800)
        const before = program.plan.sentence
        tap(part("addLoad"))
        tryVerify(() => Walk.named(program.contentItem.parent, "appliance_toaster"))
        tap(part("appliance_toaster"))
        tryVerify(() => program.scenario.text.includes("name = \"toaster\""))
        verify(program.scenario.changed)
        verify(Walk.named(program.contentItem, "load_5").chosen)
    }
    function test_the_library_is_narrowed_by_typing() {
        open(390, 844)
        tap(part("addLoad"))
        tryVerify(() => Walk.named(program.contentItem.parent, "wanted"))
        part("wanted").forceActiveFocus()
        for (const sign of "oxygen")
            keyClick(sign)
        tryVerify(() => !Walk.named(program.contentItem.parent, "appliance_toaster"))
        verify(part("appliance_oxygen concentrator 5 L/min").height >= Tokens.touchTarget)
    }
    function test_a_number_is_typed_with_a_finger() {
        open(1280, 800)
        tap(part("load_1"))
        tryVerify(() => Walk.named(program.contentItem, "field_power"))
        tap(Walk.named(field("power"), "type"))
        tryVerify(() => Walk.named(program.contentItem.parent, "key_9"))
        compare(part("typed").text, "120 W")
        for (const sign of ["9", "5", ".", "5"])
            tap(part("key_" + sign))
        compare(part("typed").text, "95.5 W")
        verify(part("readsAs").text.includes("95.5 W"))
        tap(Walk.named(part("pad"), "done"))
        tryVerify(() => /power = "95.5 W" +# table/.test(program.scenario.text))
    }
    function test_a_keyboard_types_too_and_a_comma_is_a_point() {
        open(1280, 800)
        tap(part("load_1"))
        tap(Walk.named(field("power"), "type"))
        tryVerify(() => part("pad").activeFocus)
        for (const sign of "80,5")
            keyClick(sign)
        keyClick(Qt.Key_Return)
        tryVerify(() => Walk.named(field("power"), "type").text === "80,5 W")
        verify(program.plan.answered)
    }
    function test_what_cannot_be_is_told_beside_the_field() {
        open(1280, 800)
        tap(part("load_1"))
        tap(Walk.named(field("power"), "type"))
        tryVerify(() => Walk.named(program.contentItem.parent, "key_0"))
        tap(part("key_0"))
        tap(Walk.named(part("pad"), "done"))
        tryVerify(() => Walk.named(field("power"), "error").visible)
        verify(program.scenario.text.includes("power = \"120 W\""))
    }
    function test_evidence_is_one_touch() {
        open(1280, 800)
        tap(part("load_1"))
        tap(Walk.named(field("evidence"), "choose_metered"))
        tryVerify(() => Walk.named(field("evidence"), "choose_metered").chosen)
        verify(!program.scenario.text.includes("evidence = \"guess\""))
    }
    function test_a_load_is_taken_out_and_taken_back() {
        open(1280, 800)
        const before = program.scenario.text
        tap(part("removeLoad"))
        verify(!program.scenario.text.includes("name = \"chest freezer\""))
        tap(part("undo"))
        compare(program.scenario.text, before)
        tap(part("redo"))
        verify(program.scenario.text !== before)
    }
    function test_on_a_hands_breadth_one_load_takes_the_place_of_the_list() {
        open(390, 844)
        verify(!Walk.named(program.contentItem, "field_name"))
        tap(part("load_0"))
        tryVerify(() => Walk.named(program.contentItem, "field_name"))
        verify(!Walk.named(program.contentItem, "load_0"))
        tap(part("backToList"))
        tryVerify(() => Walk.named(program.contentItem, "load_0"))
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
