// Targets are large enough, nothing overlaps, no text is cut: on every page, at every size and
// text scale.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

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
        tryVerify(() => !(program.pageItem.busy ?? false))
        wait(50)
    }
    function look(program, page) {
        const root = program.contentItem
        const items = Walk.all(root)
        const buttons = items.filter(Walk.isButton)
        verify(buttons.length >= 5, page)

        for (const button of buttons) {
            const name = page + ": " + (button.spoken || button.text)
            verify(button.width >= Tokens.touchTarget, name + " is " + button.width + " wide")
            verify(button.height >= Tokens.touchTarget, name + " is " + button.height + " high")
            const place = Walk.place(button, root)
            verify(Walk.movesSideways(button) || place.x >= 0 && place.right <= root.width + 0.5, name + " leaves the screen")
        }
        apart(buttons, root, button => page + ": " + (button.spoken || button.text))

        const texts = items.filter(item => Walk.isText(item) && item.text.length > 0)
        verify(texts.length >= 8, page)
        for (const text of texts) {
            verify(!text.truncated, page + ", cut: " + text.text)
            verify(text.paintedWidth <= text.width + 1, page + ", too wide: " + text.text)
            const place = Walk.place(text, root)
            verify(Walk.movesSideways(text) || place.x >= -0.5 && place.right <= root.width + 0.5, page + ", leaves the screen: " + text.text)
        }
        apart(texts, root, text => page + ": " + text.text)
    }
    // What is in sight of each other does not overlap.
    function apart(items, root, name) {
        const places = items.map(item => Walk.seen(item, root))
        for (let i = 0; i < items.length; ++i)
            for (let j = i + 1; j < items.length; ++j)
                verify(!Walk.overlap(places[i], places[j]), name(items[i]) + " overlaps " + name(items[j]))
    }
    function cleanup() { Tokens.textScale = 1 }
}
