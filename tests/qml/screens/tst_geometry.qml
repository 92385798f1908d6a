// Targets are large enough, nothing overlaps, no text is cut: at every size, look and text scale.
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
        for (const [width, height] of [[1280, 800], [800, 1280], [390, 844], [1024, 600]])
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
        waitForRendering(program.contentItem)
        wait(50)
        const root = program.contentItem
        const items = Walk.all(root)
        const buttons = items.filter(Walk.isButton)
        verify(buttons.length >= 10)

        for (const button of buttons) {
            verify(button.width >= Tokens.touchTarget, button.spoken + " is " + button.width + " wide")
            verify(button.height >= Tokens.touchTarget, button.spoken + " is " + button.height + " high")
            const place = Walk.place(button, root)
            verify(place.x >= 0 && place.right <= root.width + 0.5, button.spoken + " leaves the screen")
        }
        for (let i = 0; i < buttons.length; ++i)
            for (let j = i + 1; j < buttons.length; ++j)
                verify(!Walk.overlap(Walk.place(buttons[i], root), Walk.place(buttons[j], root)),
                       buttons[i].spoken + " overlaps " + buttons[j].spoken)

        const texts = items.filter(item => Walk.isText(item) && item.text.length > 0)
        verify(texts.length >= 15)
        for (const text of texts) {
            verify(!text.truncated, "cut: " + text.text)
            verify(text.paintedWidth <= text.width + 1, "too wide: " + text.text)
            const place = Walk.place(text, root)
            verify(place.x >= -0.5 && place.right <= root.width + 0.5, "leaves the screen: " + text.text)
        }
        for (let i = 0; i < texts.length; ++i)
            for (let j = i + 1; j < texts.length; ++j)
                verify(!Walk.overlap(Walk.place(texts[i], root), Walk.place(texts[j], root)),
                       texts[i].text + " overlaps " + texts[j].text)
    }
    function cleanup() { Tokens.textScale = 1 }
}
