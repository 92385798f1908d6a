// Every page in both looks and three sizes, as the engine answers the example: nothing cut or one
// over the other, nothing blank. The pictures stand in the build folder, to be looked at.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry

TestCase {
    id: test
    name: "pictures"
    when: windowShown

    readonly property Component window: Component { Main {} }

    function test_page_data() {
        const screens = []
        for (const [width, height] of [[1280, 800], [800, 1280], [390, 844]])
            for (const dark of [true, false])
                screens.push({ tag: width + "x" + height + (dark ? "-dark" : "-light"),
                               width: width, height: height, dark: dark })
        return screens
    }
    function test_page(screen) {
        const program = createTemporaryObject(window, test, {
            width: screen.width, height: screen.height, darkLook: screen.dark })
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        for (const page of program.pages) {
            program.page = page.key
            tryVerify(() => !(program.pageItem.busy ?? false), 60000)
            wait(250)  // charts lay themselves out over some frames
            const found = Geometry.complaints(program.contentItem, Tokens.touchTarget)
            const picture = grabImage(program.contentItem)
            picture.save(pictureFolder + "/" + page.key + "-" + screen.tag + ".png")
            compare(found.join("\n"), "", page.key)
            verify(colours(picture) >= 6, page.key + " is blank")
        }
    }
    function colours(picture) {
        const seen = new Set()
        for (let x = 4; x < picture.width; x += 7)
            for (let y = 4; y < picture.height; y += 7)
                seen.add(picture.pixel(x, y).toString())
        return seen.size
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
