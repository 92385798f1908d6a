// The Days page as an instrument: whole in the first view of every screen, read by a finger, drawn
// nearer until it tells hours, and walked by a screen reader.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "days"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function start(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
        wait(100)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }

    function sizes() {
        return [[390, 844], [844, 390], [800, 480], [800, 1280], [1920, 1080], [1280, 800]].map(
            ([width, height]) => ({ tag: width + "x" + height, width: width, height: height }))
    }
    function test_it_stands_whole_in_the_first_view_data() { return sizes() }
    function test_it_stands_whole_in_the_first_view(size) {
        start(size.width, size.height)
        for (const name of ["answerBlock", "plot", "frame", "nearer", "asTable"]) {
            const place = Walk.place(part(name), program.contentItem)
            verify(place.y >= 0 && place.bottom <= size.height + 0.5, name + " ends at " + place.bottom)
            verify(place.x >= 0 && place.right <= size.width + 0.5, name)
        }
        verify(part("frame").height >= 54)
        compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).join("\n"), "")
    }
    function test_the_answer_is_told_once_in_figures() {
        start(1280, 800)
        compare(part("figure_0").text, program.plan.days.told[0].value)
        program.page = "loads"
        tryVerify(() => !Walk.named(program.contentItem, "answerBlock"))
        verify(part("sentence").text.length > 0)
    }
    function test_a_pin_opens_what_was_found() {
        start(390, 844)
        const pin = part("pin_0")
        verify(pin.width >= 48 && pin.height >= 48)
        tap(pin)
        const texts = () => Walk.all(program.contentItem.parent).filter(Walk.isText).map(item => item.text)
        tryVerify(() => texts().includes("The inverter switches off at 10.5 V."))
        keyClick(Qt.Key_Escape)
    }
    function test_the_axis_tells_hours_when_it_is_drawn_near() {
        start(1280, 800)
        const plot = part("plot")
        const steps = () => plot.axis.ticks.length > 1 ? Math.round((plot.axis.ticks[1].at - plot.axis.ticks[0].at) * 48) : 99
        let before = steps()
        verify(before > 1)
        while (plot.view.canNearer) {
            plot.view.nearer(0.5)
            verify(steps() <= before)
            before = steps()
        }
        compare(before, 1)
        fuzzyCompare((plot.view.to - plot.view.from) * 48, 6, 0.001)
    }
    function test_an_hour_of_the_axis_tells_all_of_it_to_a_reader() {
        start(1280, 800)
        const plot = part("plot")
        const tick = plot.axis.ticks[1]
        const hour = part("hour_" + tick.row)
        verify(hour.Accessible.name.includes("stored"))
        verify(hour.Accessible.name.startsWith(program.plan.days.data(program.plan.days.index(tick.row, 0), 257)))
        hour.Accessible.pressAction()
        compare(program.plan.days.row, tick.row)
        plot.Accessible.increaseAction()
        compare(program.plan.days.row, tick.row + 1)
        verify(plot.Accessible.description.startsWith(program.plan.days.momentTime))
    }
    function drag(from, to) {
        const plot = part("frame")
        const y = plot.height / 2
        const event = touchEvent(plot)
        event.press(0, plot, plot.width * from, y).commit()
        for (let step = 1; step <= 12; ++step) {
            wait(16)
            event.move(0, plot, plot.width * (from + (to - from) * step / 12), y).commit()
        }
        event.release(0, plot, plot.width * to, y).commit()
        wait(30)
    }
    function test_a_finger_reads_the_whole_plot_and_moves_along_a_near_one() {
        start(1280, 800)
        const view = part("plot").view
        drag(0.3, 0.6)
        const row = program.plan.days.row
        verify(row > 10, row)
        compare(view.from, 0)
        tryVerify(() => Walk.named(program.contentItem, "readOut"))
        view.nearer(0.5)
        view.nearer(0.5)
        const from = view.from
        drag(0.8, 0.4)
        verify(view.from > from)
        compare(program.plan.days.row, row)
    }
    function test_the_end_key_goes_to_the_end() {
        start(1280, 800)
        part("plot").forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_End)
        compare(program.plan.days.row, 48)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
