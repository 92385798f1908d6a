// Pictures of every page at seven sizes, in three themes, with text of 100 and 200 % and in two
// languages, and further down each page on the smallest screens; complaints about each as the tests
// of places have them. `cmake --build … --target screens_pictures` takes them all; one screen alone:
// test_touch_screens -input tests/qml/pictures/tst_real_every_page_now.qml pictures::test_page:320x480-contrast-200-de
import QtQuick
import QtTest
import Candlemark
import "../screens/Geometry.js" as Geometry
import "../screens/Walk.js" as Walk

TestCase {
    id: test
    name: "pictures"
    when: windowShown

    readonly property Component window: Component { Main {} }
    readonly property var sizes: [[320, 480], [390, 844], [844, 390], [800, 480], [800, 1280], [1280, 800], [1920, 1080]]
    readonly property int mostViews: 30   // of one page, from its beginning to its end

    function screens(sizes, themes, scales, languages) {
        const all = []
        for (const [width, height] of sizes)
            for (const theme of themes)
                for (const scale of scales)
                    for (const language of languages)
                        all.push({ tag: [width + "x" + height, theme, scale * 100, language].join("-"),
                                   width: width, height: height, theme: theme, scale: scale, language: language })
        return all
    }
    function start(screen) {
        const program = createTemporaryObject(window, test, {
            width: screen.width, height: screen.height, theme: screen.theme, textScale: screen.scale,
            language: screen.language })
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        return program
    }
    function show(program, page) {
        program.page = page.key
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        wait(200)  // charts lay themselves out over some frames
    }
    function take(program, name) {
        grabImage(program.contentItem).save(pictureFolder + "/" + name + ".png")
    }
    function complaints(program, page) {
        return Geometry.complaints(program.contentItem, Tokens.touchTarget).map(found => page.key + ": " + found)
    }
    // What moves up and down and takes most of the room.
    function scroller(item) {
        const moves = Walk.all(item).filter(one => one.contentY !== undefined && one.contentHeight > one.height + 1)
        moves.sort((one, other) => other.width * other.height - one.width * one.height)
        return moves.length > 0 ? moves[0] : null
    }

    function test_page_data() {
        return screens(sizes, ["dark", "light", "contrast"], [1, 2], ["en", "de"])
    }
    function test_page(screen) {
        const program = start(screen)
        let found = []
        for (const page of program.pages) {
            show(program, page)
            take(program, page.key + "-" + screen.tag)
            found = found.concat(complaints(program, page))
        }
        compare(found.join("\n"), "")
    }

    function test_down_data() {
        return screens(sizes.slice(0, 4), ["dark"], [1, 2], ["en", "de", "es"])
    }
    function test_down(screen) {
        const program = start(screen)
        let found = []
        for (const page of program.pages) {
            show(program, page)
            const moves = scroller(program.pageItem)
            for (let view = 1; moves && view < mostViews; ++view) {
                const last = moves.contentHeight - moves.height
                if (moves.contentY >= last - 1)
                    break
                moves.contentY = Math.min(last, moves.contentY + 0.9 * moves.height)
                wait(50)
                take(program, "down-" + page.key + "-" + screen.tag + "-" + String(view).padStart(2, "0"))
                found = found.concat(complaints(program, page))
            }
        }
        compare(found.join("\n"), "")
    }

    function cleanup() {
        Look.theme = "dark"
        Look.language = "en"
        Tokens.dark = true
        Tokens.strong = false
        Tokens.textScale = 1
    }
}
