// The Starting page by finger: the limits of a start, another tool, the packs that help.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "start"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_start"))
        tryVerify(() => !program.pageItem.busy && part("answerSentence").text.length > 0, 20000)
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

    function test_each_limit_has_a_bar_and_the_limit_a_line() {
        verify(part("uses").bars.count >= 3)
        verify(part("uses").bars.limitAt > 0)
        verify(part("uses").bars.spoken.includes("%"))
    }
    function test_a_tool_of_the_library_is_checked_in_three_touches() {
        tap(part("addTool"))
        tryVerify(() => Walk.named(program.contentItem.parent, "appliance_sump pump 1/2 hp"))
        tap(part("appliance_sump pump 1/2 hp"))
        tryVerify(() => Walk.named(program.contentItem, "tool_sump pump 1/2 hp"), 20000)
        tryVerify(() => program.pageItem.tool === "sump pump 1/2 hp", 20000)
        tryVerify(() => part("uses").bars.only === "sump pump 1/2 hp")
        verify(part("uses").bars.count >= 3)
    }
    function test_more_packs_ease_their_limits() {
        const before = part("uses").bars.spoken
        tap(Walk.named(part("packs"), "more"))
        tryVerify(() => part("uses").bars.spoken !== before, 20000)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
