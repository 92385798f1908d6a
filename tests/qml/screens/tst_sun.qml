// The Sun page by finger: the panel is turned, the month is picked, the place is typed.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "sun"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_sun"))
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

    function test_every_day_has_a_bar_with_its_range() {
        verify(part("sunDays").bars.count >= 4)
        verify(part("sunDays").bars.spoken.includes(" to "))
    }
    function test_a_finger_turns_the_panel() {
        const picture = part("tiltPicture")
        Walk.reveal(picture)
        const event = touchEvent(picture)
        event.press(0, picture, picture.width * 0.2, picture.height - 20).commit()
        wait(16)
        for (let step = 1; step <= 8; ++step) {
            event.move(0, picture, picture.width * (0.2 + 0.02 * step), picture.height - 20 - 12 * step).commit()
            wait(16)
        }
        event.release(0, picture, picture.width * 0.36, picture.height - 116).commit()
        verify(picture.tilt !== 60)
        verify(program.scenario.text.includes("tilt = \"" + picture.tilt + " deg\""))
        program.scenario.undo()   // one drag is one step
        verify(program.scenario.text.includes("tilt = \"60 deg\""))
        compare(picture.tilt, 60)
        verify(!program.scenario.canUndo)
    }
    function test_buttons_turn_it_too() {
        const before = part("tiltPicture").tilt
        tap(Walk.named(part("tilt"), "less"))
        compare(part("tiltPicture").tilt, before - 5)
        tap(Walk.named(part("tilt"), "more"))
        compare(part("tiltPicture").tilt, before)
    }
    function test_a_month_is_one_touch_and_changes_the_bars() {
        const before = part("sunDays").bars.spoken
        tap(part("month_7"))
        verify(part("month_7").chosen)
        tryVerify(() => part("sunDays").bars.spoken !== before, 20000)
    }
    function test_a_place_is_found_by_typing() {
        tap(part("place"))
        tryVerify(() => part("wantedPlace").activeFocus)
        for (const sign of "miami")
            keyClick(sign)
        tryVerify(() => Walk.named(program.contentItem.parent, "place_Miami FL"))
        wait(300)  // the list settles
        tap(part("place_Miami FL"))
        tryVerify(() => program.scenario.text.includes("name = \"Miami FL\""))
    }
    function test_a_weather_file_can_be_chosen() {
        compare(part("weatherFile").text, "Choose a weather file")
        compare(part("weatherFile").contentItem.textFormat, Text.PlainText)
    }
    function test_more_panels_are_one_touch() {
        tap(Walk.named(part("panels"), "more"))
        compare(program.scenario.panels.shown, "4")
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
