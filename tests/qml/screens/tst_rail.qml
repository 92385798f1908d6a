// Every page is reached by finger and by key, at every size from a small phone on.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "rail"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale })
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(30)
        Walk.reveal(item)
        wait(30)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }

    function test_every_page_is_reached_data() {
        const screens = []
        for (const [width, height] of [[320, 480], [390, 844], [568, 320], [844, 390], [800, 480], [1920, 1080]])
            for (const scale of width === 568 || width === 1920 ? [1] : [1, 2])
                screens.push({ tag: width + "x" + height + " at " + scale * 100 + " %", width: width, height: height, scale: scale })
        return screens
    }
    function test_every_page_is_reached(screen) {
        open(screen.width, screen.height, screen.scale)
        compare(program.width, screen.width)
        compare(program.height, screen.height)
        verify(program.pages.length >= 9)
        for (const page of program.pages) {
            let way = Walk.named(program.contentItem, "page_" + page.key)
            if (!way) {
                tap(part("pageList"))
                way = part("listed_" + page.key)
            }
            tap(way)
            tryCompare(program, "page", page.key)
            const bar = Walk.named(program.contentItem, "allPages")
            if (bar)
                verify(bar.parent.height <= Tokens.mainTarget, "one row")
            wait(30)
            const shown = Walk.named(program.contentItem, "page_" + page.key)
            if (shown) {
                const place = Walk.seen(shown, program.contentItem)
                verify(place.right - place.x >= Math.min(shown.width, Tokens.touchTarget) - 1, page.key + " is in sight across")
                verify(place.bottom - place.y >= Tokens.touchTarget - 1, page.key + " is in sight")
            }
        }
    }
    function test_the_list_of_all_stands_beside_the_row() {
        open(390, 844, 1)
        tap(part("allPages"))
        tap(part("listed_storage"))
        compare(program.page, "storage")
    }
    function test_groups_are_named_and_pages_told_with_their_digit() {
        open(1280, 800, 1)
        const texts = Walk.all(program.contentItem).filter(Walk.isText).map(item => item.text)
        for (const group of ["Build", "Plan", "After", "Paper and file"])
            verify(texts.includes(group), group)
        const digits = program.pages.map(page => page.digit).filter(digit => digit.length > 0)
        compare(digits[0], "1")
        compare(new Set(digits).size, digits.length)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
