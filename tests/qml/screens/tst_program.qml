// The whole window on a plan made by hand, by finger and by key.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "program"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        verify(program)
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        const found = Walk.named(program.contentItem, name)
        verify(found, name)
        return found
    }
    function tap(item) {
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
    }
    function button(of, name) { return Walk.named(part(of), name) }

    function test_the_first_start_opens_an_example_and_says_so() {
        verify(part("exampleTag").visible)
        compare(part("title").text, "Ice storm, four nights")
        verify(part("sentence").text.length > 0)
    }
    function test_a_tap_on_more_packs_makes_the_candle_grow() {
        const before = program.plan.candle.likely
        const spoken = part("taper").candle.spoken
        tap(button("packs", "more"))
        tryVerify(() => part("taper").candle.spoken !== spoken)
        compare(program.scenario.packs.shown, "4")
        verify(program.scenario.text.includes("count = 4"))
        verify(program.scenario.changed)
    }
    // A figure to read, not a judgement: machines differ.
    function test_a_step_is_followed_by_a_new_plot_and_the_time_is_printed() {
        const times = []
        for (let i = 0; i < 8; ++i) {
            const spoken = part("taper").candle.spoken
            const begun = Date.now()
            tap(button("packs", i % 2 ? "less" : "more"))
            while (part("taper").candle.spoken === spoken && Date.now() - begun < 5000)
                wait(1)
            grabImage(program.contentItem)  // draws a frame, where waiting may miss the one just drawn
            times.push(Date.now() - begun)
        }
        times.sort((a, b) => a - b)
        console.log("step to new plot, drawn and read back, ms: median", times[4], "largest", times[7])
    }
    function test_comments_of_the_file_stay_when_a_number_is_turned() {
        tap(button("days", "less"))
        tryVerify(() => program.scenario.days.shown === "3")
        verify(program.scenario.text.includes("# local standard time, dinner time"))
    }
    function test_a_finger_on_the_plot_moves_the_moment() {
        const plot = part("frame")
        const before = program.plan.days.row
        touchEvent(plot).press(0, plot, plot.width * 0.6, plot.height / 2).commit()
        touchEvent(plot).release(0, plot, plot.width * 0.6, plot.height / 2).commit()
        tryVerify(() => program.plan.days.row > before)
        compare(part("moment").name, program.plan.days.momentTime)
    }
    function test_keys_move_the_moment_too() {
        const plot = part("plot")
        plot.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Right)
        keyClick(Qt.Key_Right)
        compare(program.plan.days.row, 2)
        keyClick(Qt.Key_Left)
        compare(program.plan.days.row, 1)
        keyClick(Qt.Key_Home)
        compare(program.plan.days.row, 0)
    }
    function test_the_plot_is_drawn_nearer_by_buttons_and_follows_the_moment() {
        const view = part("plot").view
        compare(view.stretch, 1)
        tap(part("nearer"))
        tap(part("nearer"))
        compare(view.stretch, 4)
        compare(view.from, 0)
        for (let i = 0; i < 20; ++i)
            tap(part("later"))
        verify(view.from > 0)
        verify(program.plan.days.momentAt <= view.to + 0.0001)
        tap(part("farther"))
        tap(part("farther"))
        compare(view.stretch, 1)
        verify(!part("farther").enabled)
    }
    function test_two_fingers_draw_the_plot_nearer() {
        const plot = part("frame")
        const view = part("plot").view
        const event = touchEvent(plot)
        const middle = plot.width / 2
        const y = plot.height / 2
        event.press(0, plot, middle - 20, y).press(1, plot, middle + 20, y).commit()
        for (let step = 1; step <= 12; ++step) {
            wait(16)
            event.move(0, plot, middle - 20 - 8 * step, y).move(1, plot, middle + 20 + 8 * step, y).commit()
        }
        event.release(0, plot, middle - 116, y).release(1, plot, middle + 116, y).commit()
        tryVerify(() => view.stretch > 1.5)
        tap(part("farther"))
    }
    function test_an_hour_opens_its_working() {
        for (let i = 0; i < 3; ++i)
            tap(part("later"))
        const plan = program.plan
        tap(part("moment"))
        const texts = () => Walk.all(program.contentItem.parent).filter(Walk.isText).map(item => item.text)
        tryVerify(() => texts().some(text => text.includes("goes to the loads")))
        verify(plan.days.momentWorking.length >= 5)
        keyClick(Qt.Key_Escape)
    }
    function test_the_plot_can_be_read_as_a_table() {
        tap(part("asTable"))
        const rows = part("rows")
        compare(rows.count, 49)
        rows.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Down)
        compare(program.plan.days.row, 1)
    }
    function test_every_control_is_reached_by_the_tab_key() {
        const wanted = Walk.all(program.contentItem).filter(item => Walk.isButton(item) && item.enabled)
        verify(wanted.length >= 10)
        const reached = new Set()
        part("open").forceActiveFocus(Qt.TabFocusReason)
        for (let i = 0; i < 60; ++i) {
            reached.add(program.activeFocusItem)
            keyClick(Qt.Key_Tab)
        }
        for (const item of wanted)
            verify(reached.has(item), item.spoken)
        verify(reached.has(part("plot")))
    }
    function test_the_look_turns_light_and_back() {
        const dark = program.color.toString()
        tap(part("theme"))
        verify(program.color.toString() !== dark)
        tap(part("theme"))
        compare(program.color.toString(), dark)
    }
    function test_a_file_that_is_missing_is_told_and_the_example_stays() {
        program.scenario.open("file:///no/such/file.toml")
        verify(part("trouble").text.includes("file.toml"))
        verify(program.scenario.example)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
