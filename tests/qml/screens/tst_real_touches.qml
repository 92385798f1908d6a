// From the start to a changed answer in at most five touches, counted, on the engine's own answers.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "touches"
    when: windowShown

    property var program: null
    property int touches: 0
    readonly property Component window: Component { Main {} }

    function start(size) {
        touches = 0
        program = createTemporaryObject(window, test, { width: size.width, height: size.height })
        tryVerify(() => program.plan.answered && !program.plan.running, 30000)
        waitForRendering(program.contentItem)
    }
    function sizes() {
        return [{ tag: "1280x800", width: 1280, height: 800 }, { tag: "390x844", width: 390, height: 844 }]
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 20000, name)
        return found
    }
    // A finger scrolls to what it touches; that is not counted as a touch.
    function tap(item) {
        Walk.reveal(item)
        ++touches
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }
    function answer_changes(before) {
        tryVerify(() => program.plan.sentence + program.plan.range !== before && !program.plan.running, 30000)
        verify(touches <= 5, touches + " touches")
        console.log("touches:", touches)
    }
    function told() { return program.plan.sentence + program.plan.range }

    function test_add_a_load_data() { return sizes() }
    function test_add_a_load(size) {
        start(size)
        const before = told()
        tap(part("page_loads"))
        tap(part("addLoad"))
        tap(part("appliance_toaster"))
        answer_changes(before)
    }
    function test_change_packs_data() { return sizes() }
    function test_change_packs(size) {
        start(size)
        const before = told()
        tap(Walk.named(part("packs"), "more"))
        answer_changes(before)
    }
    function test_change_panels_data() { return sizes() }
    function test_change_panels(size) {
        start(size)
        const before = told()
        for (let touch = 0; touch < 4 && told() === before; ++touch) {
            tap(Walk.named(part("panels"), "more"))
            tryVerify(() => !program.plan.running, 30000)
            wait(50)
        }
        answer_changes(before)
    }
    function test_change_days_data() { return sizes() }
    function test_change_days(size) {
        start(size)
        const before = told()
        for (let touch = 0; touch < 4 && told() === before; ++touch) {
            tap(Walk.named(part("days"), "less"))
            tryVerify(() => !program.plan.running, 30000)
            wait(50)
        }
        answer_changes(before)
    }
    function test_check_a_tool_data() { return sizes() }
    function test_check_a_tool(size) {
        start(size)
        tap(part("page_start"))
        tryVerify(() => !program.pageItem.busy && part("answerSentence").text.length > 0, 30000)
        const before = part("uses").bars.spoken
        tap(part("addTool"))
        tap(part("appliance_sump pump 1/2 hp"))
        tryVerify(() => program.pageItem.tool === "sump pump 1/2 hp" && part("uses").bars.spoken !== before, 30000)
        verify(touches <= 5)
        console.log("touches:", touches)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
