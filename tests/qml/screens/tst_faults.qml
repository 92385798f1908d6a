// A fault of the engine is a page: the file and the work are there, and a way back.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "faults"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        program.scenario.openExample()
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(50)
        Walk.reveal(item)
        wait(30)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }
    function change(key, value) {
        program.page = "file"
        part("wantedKey").text = key
        tap(part("allKeys"))
        tap(part("key_" + key))
        part("words").text = value
        tap(part("done"))
    }
    function fail() {
        change("title", "a fault of ours")
        tryVerify(() => program.scenario.fault.length > 0)
        program.page = "days"
        part("faultTitle")
    }

    function test_a_fault_is_a_page_with_a_way_back_data() {
        return [{ tag: "1280x800", width: 1280, height: 800, scale: 1 }, { tag: "390x844", width: 390, height: 844, scale: 2 }]
    }
    function test_a_fault_is_a_page_with_a_way_back(screen) {
        Tokens.textScale = screen.scale
        open(screen.width, screen.height)
        const before = program.scenario.text
        fail()
        verify(part("faultWords").text.includes("still here"))
        verify(part("faultReason").text.includes("a level lies below zero"))
        verify(part("sentence").text.length > 0)
        verify(!program.plan.answered, "no figures of another text")
        for (const name of ["backToGood", "toTheKeys", "copyFaulty", "openExample"])
            verify(part(name).height >= Tokens.touchTarget && part(name).width >= Tokens.touchTarget, name)
        grabImage(program.contentItem.parent).save(pictureFolder + "/fault-" + screen.tag + ".png")
        tap(part("backToGood"))
        compare(program.scenario.text, before)
        compare(program.scenario.fault, "")
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing)
        verify(!Walk.named(program.contentItem.parent, "faultTitle"))
        verify(program.scenario.canUndo)
    }
    function test_the_file_can_be_changed_by_hand() {
        open(1280, 800)
        fail()
        tap(part("toTheKeys"))
        compare(program.page, "file")
        part("titleField")
        change("title", "mended")
        program.page = "days"
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing)
        verify(!Walk.named(program.contentItem.parent, "faultTitle"))
    }
    function test_a_fault_that_was_kept_does_not_end_the_next_start() {
        const folder = pictureFolder + "/../kept-faults-" + Date.now()
        program = createTemporaryObject(window, test, { width: 1280, height: 800, workFolder: folder })
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing)
        fail()
        wait(1300)
        const again = createTemporaryObject(window, test, { width: 1280, height: 800, workFolder: folder })
        tryVerify(() => again.plan.answered && !again.plan.running)
        program.destroy()
        again.destroy()
        wait(100)
        program = createTemporaryObject(window, test, { width: 1280, height: 800, workFolder: folder })
        tryVerify(() => program.scenario.title === "a fault of ours")
        part("faultTitle")
        verify(!program.scenario.hasGood, "nothing was worked out yet")
        tap(part("openExample"))
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing)
        // It stays for whoever wants it.
        program.page = "file"
        tap(part("takeUp"))
        compare(program.scenario.title, "a fault of ours")
        verify(part("noticeWords").text.includes("taken up again"))
        tap(part("heard"))
        tryVerify(() => !Walk.named(program.contentItem.parent, "noticeWords"))
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
