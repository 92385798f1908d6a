// The keyboard alone: pages by digits, scrolling, undo, and what the keyboard is at always in sight.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "keys"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function show(page) {
        program.page = page
        waitForRendering(program.contentItem)
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        wait(50)
    }

    function test_digits_open_pages() {
        open(1280, 800)
        for (const page of program.pages.filter(one => one.digit.length > 0)) {
            keyClick(Qt.Key_0 + Number(page.digit))
            compare(program.page, page.key)
        }
        const first = program.pages[0].key
        program.page = first
        keyClick(Qt.Key_PageDown, Qt.ControlModifier)
        compare(program.page, program.pages[1].key)
        keyClick(Qt.Key_PageUp, Qt.ControlModifier)
        compare(program.page, first)
        keyClick(Qt.Key_PageUp, Qt.ControlModifier)
        compare(program.page, first, "there is none before the first")
    }
    function test_digits_that_are_typed_open_nothing() {
        open(1280, 800)
        show("file")
        const line = Walk.named(program.contentItem, "wantedKey")
        line.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_2)
        compare(program.page, "file")
        compare(line.text, "2")
    }
    function test_page_keys_move_the_page() {
        open(390, 844)
        show("file")
        const area = () => { let found = null; for (const item of Walk.all(program.pageItem)) if (!found && item.contentY !== undefined && item.contentHeight > item.height + 1) found = item; return found }
        tryVerify(() => area() !== null)
        keyClick(Qt.Key_PageDown)
        verify(area().contentY > 100)
        keyClick(Qt.Key_PageUp)
        compare(area().contentY, 0)
        keyClick(Qt.Key_End)
        fuzzyCompare(area().contentY, area().contentHeight - area().height, 1)
        keyClick(Qt.Key_Home)
        compare(area().contentY, 0)
    }
    function test_changes_are_taken_back_and_made_again() {
        open(1280, 800)
        const before = program.scenario.text
        program.scenario.packs.more()
        const changed = program.scenario.text
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(program.scenario.text, before)
        keyClick(Qt.Key_Y, Qt.ControlModifier)
        compare(program.scenario.text, changed)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier)
        compare(program.scenario.text, changed)
    }
    function test_the_keyboard_is_always_in_sight_data() {
        const cases = []
        for (const [width, height, scale] of [[1280, 800, 1], [390, 844, 1], [844, 390, 1], [320, 480, 1], [800, 480, 2]])
            for (const page of ["loads", "file"])
                cases.push({ tag: page + " " + width + "x" + height + " at " + scale * 100 + " %", width: width, height: height, scale: scale, page: page })
        return cases
    }
    function test_the_keyboard_is_always_in_sight(one) {
        open(one.width, one.height, one.scale)
        show(one.page)
        const lost = []
        const seen = new Set()
        for (let stop = 0; stop < 80; ++stop) {
            keyClick(Qt.Key_Tab)
            wait(5)
            const item = program.activeFocusItem
            if (!item || seen.has(item) || item.parent === null)
                continue
            seen.add(item)
            const place = Walk.seen(item, program.contentItem)
            const least = Math.min(item.height, 40)
            if (place.bottom - Math.max(0, place.y) < least || Math.min(program.height, place.bottom) - place.y < least)
                lost.push(stop + " " + (item.spoken ?? item.objectName) + " at " + Math.round(place.y))
        }
        verify(seen.size > 6, seen.size)
        compare(lost.join("\n"), "")
    }
    function test_ctrl_q_closes_the_window() {
        open(1280, 800)
        keyClick(Qt.Key_Q, Qt.ControlModifier)
        tryVerify(() => !program.visible)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
