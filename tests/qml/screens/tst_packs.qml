// The Packs page by finger: a charge is typed, an age is picked, another kind is added.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "packs"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_packs"))
        waitForRendering(program.contentItem)
    }
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

    function test_a_charge_is_typed_and_told_in_its_row() {
        open(1280, 800)
        tap(part("pack_1"))
        tryVerify(() => Walk.named(program.contentItem, "field_charge"))
        tap(Walk.named(part("field_charge"), "type"))
        tryVerify(() => Walk.named(program.contentItem.parent, "key_8"))
        tap(part("key_8"))
        tap(part("key_0"))
        tap(Walk.named(part("pad"), "done"))
        tryVerify(() => part("pack_1").below.startsWith("80 % full"))
    }
    function test_a_value_is_left_open_again() {
        open(1280, 800)
        tap(Walk.named(part("field_current_limit"), "type"))
        tryVerify(() => Walk.named(program.contentItem.parent, "leaveOpen"))
        tap(part("leaveOpen"))
        tryVerify(() => !program.scenario.text.includes("current_limit = \"100 A\""))
        tap(part("undo"))
        verify(program.scenario.text.includes("current_limit = \"100 A\""))
    }
    function test_an_age_is_one_touch() {
        open(390, 844)
        tap(part("pack_0"))
        tryVerify(() => Walk.named(program.contentItem, "field_age"))
        tap(Walk.named(part("field_age"), "choose_end_of_life"))
        tryVerify(() => program.scenario.text.includes("age = \"end_of_life\""))
    }
    function test_another_kind_is_added_and_taken_out() {
        open(1280, 800)
        tap(part("addPack"))
        tryVerify(() => Walk.named(program.contentItem, "pack_2"))
        tap(part("removePack"))
        tryVerify(() => !Walk.named(program.contentItem, "pack_2"))
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
