// Targets are large enough, nothing overlaps, no text is cut: on every page, at every size and
// text scale.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry

TestCase {
    id: test
    name: "geometry"
    when: windowShown

    readonly property Component window: Component { Main {} }

    function test_screen_data() {
        const screens = []
        for (const [width, height] of [[1280, 800], [800, 1280], [390, 844], [1024, 600], [1920, 1080]])
            for (const scale of [1, 1.5, 2])
                screens.push({ tag: width + "x" + height + " at " + scale * 100 + " %",
                               width: width, height: height, scale: scale })
        return screens
    }
    function test_screen(screen) {
        Tokens.textScale = screen.scale
        const program = createTemporaryObject(window, test, {
            width: screen.width, height: screen.height, textScale: screen.scale })
        tryVerify(() => program.plan.answered && !program.plan.running)
        verify(program.pages.length >= 2)
        for (const page of program.pages) {
            program.page = page.key
            settle(program)
            look(program, page.key)
        }
    }
    // A page may ask a question of its own when it opens.
    function settle(program) {
        waitForRendering(program.contentItem)
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        wait(50)
    }
    function look(program, page) {
        const found = Geometry.complaints(program.contentItem, Tokens.touchTarget)
        compare(found.join("\n"), "", page)
    }
    function cleanup() { Tokens.textScale = 1 }
}
