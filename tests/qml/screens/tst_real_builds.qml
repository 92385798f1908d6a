// How many packs and panels, and what the voltmeter means, by finger on the engine's own answers.
import QtQuick
import QtTest
import Candlemark
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
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
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
        const fold = part("builds")
        tap(part("fold", fold))
        const ask = part("askBuilds")
        tap(ask)
        lastTick = 0
        largestGap = 0
        pulse.start()
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
        tap(part("rested_24 h"))
        verify(part("rested_24 h").chosen)
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
