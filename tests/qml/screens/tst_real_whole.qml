// The whole program from a file to a file on the engine's own answers: open, change, the plot
// changes, save, open again. The times are figures to read, not judgements: machines differ.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "whole"
    when: windowShown

    readonly property Component window: Component { Main {} }
    readonly property string file: "file://" + pictureFolder + "/../whole.toml"

    function start(properties) {
        const program = createTemporaryObject(window, test, Object.assign({ width: 1280, height: 800 }, properties))
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        waitForRendering(program.contentItem)
        return program
    }
    function tap(item) {
        Walk.reveal(item)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
    }

    function test_open_change_save_and_open_again() {
        const first = start({})
        verify(first.scenario.saveAs(file))
        verify(!first.scenario.example)
        const second = start({ file: file })
        const plot = second.plan.days.spoken
        const candle = Walk.named(second.contentItem, "taper").candle.spoken
        const before = grabImage(second.contentItem)
        tap(Walk.named(Walk.named(second.contentItem, "packs"), "more"))
        tryVerify(() => Walk.named(second.contentItem, "taper").candle.spoken !== candle, 30000)
        tryVerify(() => !second.plan.running, 30000)
        wait(200)
        verify(!grabImage(second.contentItem).equals(before))
        verify(second.plan.days.spoken !== plot)
        verify(second.scenario.changed)
        verify(second.scenario.save())
        const third = start({ file: file })
        compare(third.scenario.packs.shown, "4")
        compare(third.plan.days.spoken, second.plan.days.spoken)
        verify(third.scenario.text.includes("# local standard time, dinner time"))
    }
    function test_a_step_is_followed_by_a_new_sentence_and_the_time_is_printed() {
        const program = start({})
        const times = []
        for (let i = 0; i < 9; ++i) {
            const sentence = program.plan.sentence
            const begun = Date.now()
            tap(Walk.named(Walk.named(program.contentItem, "packs"), i % 2 ? "less" : "more"))
            while (program.plan.sentence === sentence && Date.now() - begun < 10000)
                wait(1)
            times.push(Date.now() - begun)
            tryVerify(() => !program.plan.running && !program.plan.weighing, 60000)
        }
        times.sort((a, b) => a - b)
        console.log("step to new sentence, ms: median", times[4], "largest", times[8])
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
