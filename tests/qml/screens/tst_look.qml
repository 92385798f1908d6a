// How things are shown, by finger: theme, size, clock, units, language.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "look"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function start(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        Walk.reveal(item)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }
    function pick(name) {
        tap(part("look"))
        tap(part(name))
        tap(part("close"))
        tryVerify(() => !Walk.named(program.contentItem.parent, "close"))
        tryVerify(() => program.plan.answered && !program.plan.running)
    }

    function test_theme_and_size_are_one_touch_each() {
        start(1280, 800)
        pick("theme_light")
        verify(!Tokens.dark)
        pick("textSize_1.5")
        compare(Tokens.textScale, 1.5)
        pick("textSize_1")
        pick("theme_dark")
        verify(Tokens.dark)
    }
    function test_the_clock_of_twelve_hours_is_on_every_moment() {
        start(1280, 800)
        verify(/\d\d:00$/.test(program.plan.days.momentTime))
        pick("clock_12")
        tryVerify(() => / (AM|PM)$/.test(program.plan.days.momentTime))
        pick("clock_24")
        tryVerify(() => /\d\d:00$/.test(program.plan.days.momentTime))
    }
    function test_units_of_the_united_states_stand_beside() {
        start(1280, 800)
        program.page = "storage"
        tryVerify(() => !program.pageItem.busy, 60000)
        verify(Walk.named(part("field_temperature"), "type").text === "12 °C")
        pick("units_us")
        tryVerify(() => Walk.named(part("field_temperature"), "type").text === "12 °C (54 °F)")
        verify(program.scenario.text.includes("temperature = \"12 degC\""))
        pick("units_metric")
    }
    function test_in_german_data() {
        return [{ tag: "1280x800", width: 1280, height: 800 }, { tag: "800x1280", width: 800, height: 1280 },
                { tag: "390x844", width: 390, height: 844 }]
    }
    function test_in_german(size) {
        start(size.width, size.height)
        Look.language = "de"
        tryVerify(() => program.plan.answered && !program.plan.running)
        compare(program.scenario.packs.label, "Zusatzakkus")
        for (const page of program.pages) {
            program.page = page.key
            tryVerify(() => !(program.pageItem.busy ?? false), 30000)
            wait(100)
            compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).join("\n"), "", page.key)
            grabImage(program.contentItem).save(pictureFolder + "/" + page.key + "-" + size.tag + "-german.png")
        }
        verify(program.pages.some(page => page.name === "Sonne"))
        Look.language = "en"
        tryVerify(() => program.pages.some(page => page.name === "Sun"))
    }
    function cleanup() {
        Look.language = "en"
        Look.clock = "24"
        Look.units = "metric"
        Look.textScale = 1
        Look.theme = "dark"
    }
}
