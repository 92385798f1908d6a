// How many packs and panels, and what the voltmeter means, by finger on the engine's own answers.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "builds"
    when: windowShown

    property var program: null
    property int largestGap: 0
    property double lastTick: 0
    readonly property Component window: Component { Main {} }

    Timer {
        id: pulse
        interval: 5
        repeat: true
        onTriggered: {
            const now = Date.now()
            if (test.lastTick > 0)
                test.largestGap = Math.max(test.largestGap, now - test.lastTick)
            test.lastTick = now
        }
    }
    function init() {
        open(1280, 800)
    }
    function open(width, height) {
        if (program)
            program.close()
        program = createTemporaryObject(window, test, { width: width, height: height })
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        program.page = "packs"
        tryVerify(() => !(program.pageItem.busy ?? false), 20000)
        waitForRendering(program.contentItem)
    }
    function part(name, within) {
        let found = null
        tryVerify(() => found = Walk.named(within ?? program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(50)
        Walk.reveal(item)
        wait(30)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }

    function test_every_build_is_a_cell_to_touch() {
        lastTick = 0
        largestGap = 0
        pulse.start()
        program.page = "builds"
        tryVerify(() => Walk.named(program.contentItem, "chances"), 120000)
        pulse.stop()
        console.log("largest gap of the screen's thread while the sweep ran and was shown, ms:", largestGap)
        const map = part("chances")
        verify(map.grid.packs.length >= 4)
        verify(map.grid.panels.length >= 3)
        compare(map.grid.cells.length, map.grid.packs.length * map.grid.panels.length)
        const more = Number(map.grid.cells[map.grid.cells.length - 1].text)
        const less = Number(map.grid.cells[0].text)
        verify(more >= less)
        const cells = part("chanceCells")
        wait(100)
        Walk.reveal(cells)
        wait(50)
        touchEvent(cells).press(0, cells, map.cell * 1.5, map.cell * 2.5).commit()
        touchEvent(cells).release(0, cells, map.cell * 1.5, map.cell * 2.5).commit()
        compare(map.row, 2)
        compare(map.column, 1)
        verify(part("aboutBuild").text.includes("Packs: 3, panels: 1."))
        map.forceActiveFocus()
        keyClick(Qt.Key_Right)
        verify(part("aboutBuild").text.includes("Packs: 3, panels: 2."))
        grabImage(program.contentItem).save(pictureFolder + "/builds-1280x800-dark.png")
    }
    // {tag, width, height, dark}
    function test_the_builds_that_no_other_beats_are_points_to_touch_data() {
        const screens = []
        for (const [width, height] of [[1280, 800], [800, 1280], [390, 844]])
            for (const dark of [true, false])
                screens.push({ tag: width + "x" + height + (dark ? "-dark" : "-light"),
                               width: width, height: height, dark: dark })
        return screens
    }
    function test_the_builds_that_no_other_beats_are_points_to_touch(screen) {
        open(screen.width, screen.height)
        Tokens.dark = screen.dark
        wait(100)
        const asked = Date.now()
        program.page = "builds"
        tryVerify(() => Walk.named(program.contentItem, "buildsPlot"), 120000)
        console.log("from the touch to the first plot, ms:", Date.now() - asked)
        const view = part("buildsPlot")
        tryVerify(() => view.plot.points.length > 4 && view.plot.points.some(point => point.answers)
                        && !Walk.named(program.contentItem, "sweepProgress"), 120000)
        console.log("from the touch to the whole plot, ms:", Date.now() - asked)
        wait(100)

        // By weight, by price: fewer points than the table has rows, each with a button.
        for (const measure of ["weight", "price"]) {
            tap(part("measure_" + measure))
            compare(view.plot.measure, measure)
            let least = 1e9
            for (const point of view.plot.points) {
                const button = part("build_" + point.packs + "x" + point.panels)
                least = Math.min(least, button.width, button.height)
                verify(button.spoken.includes("Packs: " + point.packs + ", panels: " + point.panels))
                verify(button.spoken.includes("kg"))
                verify(button.spoken.includes("in all"))
                verify(/\d+ % \(/.test(button.spoken), button.spoken)
            }
            verify(least >= Tokens.touchTarget, least)
            console.log(measure, "points:", view.plot.points.length, "least button, px:", least)
        }
        tap(part("measure_weight"))

        // A button does what a cell of the map does.
        const map = part("chances")
        const answer = view.plot.points[view.plot.landing]
        verify(answer.answers)
        wait(100)
        tap(part("build_" + answer.packs + "x" + answer.panels))
        compare(map.grid.packs[map.row], String(answer.packs))
        compare(map.grid.panels[map.column], String(answer.panels))
        compare(view.chosen, view.plot.landing)
        verify(part("aboutPoint").text.includes("Packs: " + answer.packs))
        verify(part("aboutPoint").text.includes("This is the build of the answer."))
        verify(part("aboutBuild").text.includes("Packs: " + answer.packs + ", panels: " + answer.panels))

        // So does the point itself.
        const other = view.plot.landing > 0 ? view.plot.landing - 1 : 1
        const point = view.plot.points[other]
        const ground = part("buildsGround")
        Walk.reveal(ground)
        view.show(other)   // last, for the ground is wider than what is in sight of it
        wait(50)
        const x = view.edge + point.across * (ground.width - 2 * view.edge)
        const y = view.up(point.up)
        touchEvent(ground).press(0, ground, x, y).commit()
        touchEvent(ground).release(0, ground, x, y).commit()
        tryCompare(view, "chosen", other)
        compare(map.grid.packs[map.row], String(point.packs))

        // And a cell picks its point.
        map.pick(map.grid.packs.indexOf(String(answer.packs)), map.grid.panels.indexOf(String(answer.panels)))
        compare(view.chosen, view.plot.landing)
        Walk.reveal(view)
        wait(150)
        const found = Geometry.complaints(view, Tokens.touchTarget).filter(words => !words.startsWith("only "))
        compare(found.join("\n"), "")
        grabImage(program.contentItem).save(pictureFolder + "/builds-plot-" + screen.tag + ".png")
        Walk.reveal(part("aboutPoint"))
        wait(100)
        grabImage(program.contentItem).save(pictureFolder + "/builds-words-" + screen.tag + ".png")
        // With the largest letters as well.
        Tokens.textScale = 2
        tap(part("measure_price"))
        view.show(view.plot.landing)
        Walk.reveal(view)
        wait(200)
        compare(Geometry.complaints(view, Tokens.touchTarget).filter(words => !words.startsWith("only ")).join("\n"), "")
        grabImage(program.contentItem).save(pictureFolder + "/builds-large-" + screen.tag + ".png")
    }
    function test_a_sweep_is_stopped_and_begun_again() {
        program.page = "builds"
        tap(part("stopBuilds"))
        const again = part("askBuilds")
        verify(!Walk.named(program.contentItem, "sweepProgress"))
        tap(again)
        tryVerify(() => Walk.named(program.contentItem, "chances"), 120000)
        tryVerify(() => !program.pageItem.busy, 120000)
        verify(!Walk.named(program.contentItem, "askBuilds"))
    }
    function test_a_build_is_picked_by_keys() {
        program.page = "builds"
        tryVerify(() => Walk.named(program.contentItem, "buildsPlot"), 120000)
        tryVerify(() => !Walk.named(program.contentItem, "sweepProgress"), 120000)
        const view = part("buildsPlot")
        const first = view.plot.points[0]
        part("build_" + first.packs + "x" + first.panels).forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Return)
        compare(view.chosen, 0)
        keyClick(Qt.Key_Right)
        keyClick(Qt.Key_Return)
        compare(view.chosen, 1)
        keyClick(Qt.Key_Left)
        keyClick(Qt.Key_Return)
        compare(view.chosen, 0)
    }
    function test_a_reading_of_the_voltmeter_is_read() {
        const fold = part("gauge")
        tap(part("fold", fold))
        tap(part("reads"))
        for (const sign of ["1", "3", ".", "1"])
            tap(part("key_" + sign))
        tap(part("done", part("gaugePad")))
        const answer = part("gaugeAnswer")
        tryVerify(() => part("answerSentence", answer).text.includes("%"), 20000)
        const before = part("answerSentence", answer).text
        tap(part("rested_24"))
        verify(part("rested_24").chosen)
        tap(part("reads"))
        for (const sign of ["1", "2", ".", "1"])
            tap(part("key_" + sign))
        tap(part("done", part("gaugePad")))
        tryVerify(() => part("answerSentence", answer).text !== before, 20000)
        grabImage(program.contentItem).save(pictureFolder + "/gauge-1280x800-dark.png")
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
