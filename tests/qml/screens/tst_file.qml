// The File page by finger: every key, a version, a copied text, another file.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "file"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }
    // Where nothing is left of other runs.
    readonly property string folder: pictureFolder + "/../kept-" + Date.now()

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800, workFolder: test.folder })
        program.scenario.openExample()
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_file"))
        waitForRendering(program.contentItem)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(100)  // what was just made takes its place
        Walk.reveal(item)
        wait(30)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }

    function test_every_key_can_be_changed_in_words() {
        part("wantedKey").forceActiveFocus()
        for (const sign of "idle")
            keyClick(sign)
        tryVerify(() => part("keys").count === 1)
        tap(part("key_inverter.idle"))
        part("words").text = "20 W"
        tap(part("done"))
        tryVerify(() => program.scenario.text.includes("idle = \"20 W\""))
        tap(part("key_inverter.idle"))
        part("words").text = "20 V"
        tap(part("done"))
        tryVerify(() => part("wordsTrouble").text.includes("inverter.idle"))
        tap(part("close"))
        tryVerify(() => part("keyTrouble").text.includes("inverter.idle"))
        verify(program.scenario.text.includes("idle = \"20 W\""))
    }
    function test_a_key_is_taken_out_and_comes_back() {
        const before = program.scenario.text
        tap(part("key_inverter.idle"))
        const button = part("takeOut")
        verify(button.height >= Tokens.touchTarget)
        grabImage(program.contentItem.parent).save(pictureFolder + "/key-sheet-1280x800-dark.png")
        tap(button)
        tryVerify(() => !program.scenario.text.includes("idle = "))
        tryVerify(() => part("keyTold").text.startsWith("inverter.idle was taken out. "))
        const row = part("key_inverter.idle")
        tryVerify(() => row.below.startsWith("Taken out; now draw with nothing plugged in: "), 20000, row.below)
        const place = Walk.seen(row, program.contentItem)
        verify(place.bottom - place.y >= Tokens.touchTarget, "what holds instead is in sight")
        grabImage(program.contentItem.parent).save(pictureFolder + "/key-taken-out-1280x800-dark.png")
        tap(part("undo"))
        compare(program.scenario.text, before)
        tryVerify(() => !Walk.named(program.contentItem.parent, "keyTold"))
    }
    function test_a_key_the_file_needs_stays() {
        const before = program.scenario.text
        tap(part("key_outage.lasts"))
        tap(part("takeOut"))
        tryVerify(() => part("wordsTrouble").text.startsWith("outage.lasts stays"))
        grabImage(program.contentItem.parent).save(pictureFolder + "/key-stays-1280x800-dark.png")
        compare(program.scenario.text, before)
    }
    function test_what_the_file_leaves_open_is_not_taken_out() {
        tap(part("allKeys"))
        tap(part("key_inverter.restart_voltage"))
        part("words")
        verify(!Walk.named(program.contentItem.parent, "takeOut"))
    }
    function test_what_the_file_leaves_open_is_told_too() {
        const given = part("keys").count
        tap(part("allKeys"))
        tryVerify(() => part("keys").count > given)
        tap(part("givenKeys"))
        tryVerify(() => part("keys").count === given)
    }
    function test_a_text_goes_out_and_comes_back() {
        const before = program.scenario.text
        tap(part("copyText"))
        program.scenario.packs.more()
        verify(program.scenario.text !== before)
        tap(part("pasteText"))
        compare(program.scenario.text, before)
    }
    function test_a_version_that_was_saved_over_is_taken_up_and_compared_with() {
        const file = "file://" + pictureFolder + "/../saved_by_a_test.toml"
        verify(program.scenario.saveAs(file))
        const first = program.scenario.text
        program.scenario.packs.more()
        verify(program.scenario.save())
        const fold = part("versions")
        tap(Walk.named(fold, "fold"))
        tryVerify(() => Walk.all(fold).some(item => item.modelData && item.modelData.path))
        const newest = Walk.all(fold).find(item => item.modelData && item.modelData.path)
        program.pageItem.compareWith("file://" + newest.modelData.path)
        tryVerify(() => program.pageItem.busy, 5000)
        tryVerify(() => !program.pageItem.busy && part("answerSentence").text.length > 0, 30000)
        tap(newest)
        tryCompare(program.scenario, "text", first)
        verify(program.scenario.canUndo)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
