// The Wiring page by finger: a part is touched and tells what was found about it.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "wiring"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        program.page = "wiring"
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

    function test_a_touched_part_tells_about_itself() {
        open(1280, 800)
        verify(part("wiring").picture.boxes.length >= 4)
        const hint = part("aboutPart").text
        tap(part("box_0"))
        compare(part("aboutPart").text, part("wiring").picture.boxes[0].spoken)
        tap(part("box_0"))
        compare(part("aboutPart").text, hint)
    }
    function test_on_a_hands_breadth_it_is_moved_sideways() {
        open(390, 844)
        const drawing = part("wiring")
        verify(drawing.interactive)
        Walk.reveal(drawing)
        const event = touchEvent(drawing)
        event.press(0, drawing, 300, 60).commit()
        for (let step = 1; step <= 10; ++step) {
            wait(16)
            event.move(0, drawing, 300 - 25 * step, 60).commit()
        }
        event.release(0, drawing, 50, 60).commit()
        tryVerify(() => drawing.contentX > 20)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
