// A first own answer from five short questions, by finger.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "first_run"
    when: windowShown

    property var program: null
    property int touches: 0
    readonly property string folder: pictureFolder.replace(/\/[^/]*$/, "") + "/kept-first-" + Date.now()
    readonly property Component window: Component { Main {} }

    function open(width, height, scale, folder) {
        touches = 0
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1, workFolder: folder ?? "" })
        Look.textScale = scale ?? 1
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        let found = null
        tryVerify(() => found = Walk.named(program.contentItem.parent, name), 5000, name)
        return found
    }
    function tap(item) {
        wait(50)
        Walk.reveal(item)
        wait(30)
        ++touches
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }

    function test_a_first_start_asks_and_a_later_one_does_not() {
        open(390, 844, 1, folder + "-start")
        compare(program.instead, "first")
        part("firstQuestion")
        tap(part("firstLeave"))
        tryCompare(program, "instead", "")
        verify(program.scenario.example)
        program.close()
        const again = createTemporaryObject(window, test, { width: 390, height: 844, workFolder: folder + "-start" })
        compare(again.asking, false)
    }
    function test_an_own_answer_in_few_touches_data() {
        return [{ tag: "390x844", width: 390, height: 844 }, { tag: "1280x800", width: 1280, height: 800 }]
    }
    function test_an_own_answer_in_few_touches(screen) {
        open(screen.width, screen.height, 1, folder + screen.tag)
        for (const thing of ["refrigerator", "LED lamp", "phone charger", "modem and router"])
            tap(part("first_" + thing))
        verify(!program.scenario.example)
        compare(program.scenario.title, "What I have")
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("firstForth"))
        tap(part("first_agm"))
        tap(Walk.named(part("firstCount"), "more"))
        tap(part("firstForth"))
        tap(part("first_100"))
        tap(part("firstForth"))
        tap(part("first_four"))
        tap(part("firstForth"))
        part("firstPlace")
        tap(part("firstForth"))
        compare(part("fileName").text, "what_i_have.toml")
        program.savingDialog.sheet.folder = "file://" + folder + screen.tag
        tap(part("acceptFile"))
        tryCompare(program.scenario, "fileName", "what_i_have.toml")
        verify(program.scenario.text.includes("chemistry = \"agm\""))
        verify(touches <= 25, touches)
        console.log("touches to an own answer:", touches)
    }
    function test_it_fits_data() {
        const screens = []
        for (const [width, height] of [[320, 480], [390, 844], [844, 390], [1280, 800]])
            for (const scale of [1, 2])
                for (const language of ["en", "de"])
                    screens.push({ tag: width + "x" + height + "-" + scale * 100 + "-" + language, width: width, height: height, scale: scale, language: language })
        return screens
    }
    function test_it_fits(screen) {
        open(screen.width, screen.height, screen.scale)
        Look.language = screen.language
        program.ask()
        for (let question = 0; question < 5; ++question) {
            part("firstQuestion")
            wait(100)
            grabImage(program.contentItem).save(pictureFolder + "/first-" + question + "-" + screen.tag + ".png")
            compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).filter(one => !one.startsWith("only ")).join("\n"), "", "question " + question)
            if (question < 4)
                tap(part("firstForth"))
        }
        tap(part("firstBack"))
        tap(part("firstLeave"))
        tryCompare(program, "instead", "")
    }
    function cleanup() {
        Look.language = "en"
        Look.textScale = 1
        Look.theme = "dark"
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
