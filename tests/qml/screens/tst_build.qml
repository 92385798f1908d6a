// What the unit is built of, by finger: the inverter, a part of a circuit, a charger, the goal, a
// place of one's own.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "build"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function show(page, width, height) {
        program = createTemporaryObject(window, test, { width: width ?? 1280, height: height ?? 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        program.page = page
        tryVerify(() => !(program.pageItem.busy ?? false), 20000)
        waitForRendering(program.contentItem)
    }
    function part(name, within) {
        let found = null
        tryVerify(() => found = Walk.named(within ?? program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(100)  // what was just made takes its place
        Walk.reveal(item)
        wait(30)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }
    function type(signs) {
        for (const sign of signs)
            tap(part("key_" + sign))
        tap(part("done", part("pad")))
    }

    function test_the_inverter_is_changed() {
        show("start")
        tap(part("fold", part("inverterFields")))
        tap(part("type", part("field_continuous")))
        type("3000")
        tryVerify(() => program.scenario.text.includes("continuous = \"3000 W\""))
        tap(part("choose_quasi_square", part("field_waveform")))
        tryVerify(() => program.scenario.text.includes("waveform = \"quasi_square\""))
    }
    function test_a_wire_of_a_circuit_is_made_thicker() {
        show("wiring")
        tap(part("fold", part("circuitFields")))
        tap(part("entry_5", part("circuits")))
        tap(part("entry_2", part("links")))
        tap(part("choose_14 AWG", part("links")))
        tryVerify(() => program.scenario.text.includes("{ switch = \"10 A\", rated_for = \"dc\" }, { wire = \"14 AWG\""))
    }
    function test_a_fuse_is_added_to_a_circuit_on_a_hands_breadth() {
        show("wiring", 390, 844)
        tap(part("fold", part("circuitFields")))
        const before = program.scenario.text.split("fuse =").length
        tap(part("add_fuse"))
        tryVerify(() => program.scenario.text.split("fuse =").length === before + 1)
        tap(part("removeEntry", part("links")))
        tryVerify(() => program.scenario.text.split("fuse =").length === before)
    }
    function test_a_charger_comes_with_its_hours() {
        show("sun")
        const chargers = part("chargerFields")
        tap(part("fold", chargers))
        tap(part("addEntry", chargers))
        tap(part("choose_generator", chargers))
        tap(part("addEvening", chargers))
        tryVerify(() => program.scenario.text.includes("kind = \"generator\""))
        verify(program.scenario.text.includes("hours = [\"17:00-22:00\"]"))
    }
    function test_the_goal_is_changed() {
        show("builds")
        tap(part("fold", part("goalFields")))
        tap(part("type", part("field_chance")))
        type("95")
        tryVerify(() => program.scenario.text.includes("chance = \"95 %\""))
    }
    function test_the_place_is_told_in_figures() {
        show("sun")
        tap(part("place"))
        tap(part("ownPlace"))
        tryVerify(() => program.scenario.text.includes("latitude = "))
        tap(part("fold", part("placeFields")))
        tap(part("type", part("field_irradiation[0]")))
        type("2.5")
        tryVerify(() => program.scenario.text.includes("irradiation = [\"2.5 kWh/m2\""))
    }
    function test_the_outage_begins_a_month_earlier() {
        show("days")
        tap(part("outage"))
        tap(part("less", part("month")))
        tryVerify(() => program.scenario.text.includes("starts = 2025-12-14T18:00:00        # local standard time"))
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
