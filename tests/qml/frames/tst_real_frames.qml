// How long the thread of the screen works on a frame while a finger turns the panel and while packs are
// added and taken away, as processor time and on the engine's own answers. No test of the suite: it
// prints figures. `cmake --build … --target screens_frames` runs it.
import QtQuick
import QtTest
import Candlemark
import "../screens/Walk.js" as Walk

TestCase {
    id: test
    name: "frames"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        quiet()
    }
    function quiet() {
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        const found = Walk.named(program.contentItem.parent, name)
        verify(found, name)
        return found
    }
    // From a touch to the end of the frame that shows it.
    function frame(touch) {
        const before = processor.milliseconds()
        touch()
        waitForRendering(program.contentItem, 2000)
        return processor.milliseconds() - before
    }
    function tell(what, spent) {
        spent.sort((one, other) => one - other)
        const at = share => spent[Math.min(spent.length - 1, Math.floor(share * spent.length))].toFixed(1)
        console.log(what + ": " + spent.length + " frames, processor time in ms: median " + at(0.5)
                    + ", 99th percentile " + at(0.99) + ", most " + at(1))
    }
    function test_the_tilt_is_dragged() {
        program.page = "sun"
        quiet()
        const picture = part("tiltPicture")
        Walk.reveal(picture)
        waitForRendering(program.contentItem)
        const event = touchEvent(picture)
        event.press(0, picture, picture.width * 0.2, picture.height - 20).commit()
        const spent = []
        const before = picture.tilt
        let moved = false
        for (let step = 1; step <= 100; ++step) {
            const share = Math.abs((step % 80) - 40) / 40
            spent.push(frame(() => event.move(0, picture, picture.width * (0.2 + 0.2 * share),
                                              picture.height - 20 - 110 * share).commit()))
            moved = moved || picture.tilt !== before
        }
        event.release(0, picture).commit()
        verify(moved)
        tell("tilt dragged", spent)
    }
    function test_packs_are_added_and_taken_away() {
        const packs = part("packs")
        const more = Walk.named(packs, "more")
        const less = Walk.named(packs, "less")
        const spent = []
        for (let step = 0; step < 100; ++step) {
            const button = step % 8 < 4 ? more : less
            spent.push(frame(() => {
                touchEvent(button).press(0, button).commit()
                touchEvent(button).release(0, button).commit()
            }))
        }
        verify(program.scenario.canUndo)
        tell("packs stepped", spent)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
