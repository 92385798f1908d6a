// A tablet that is turned, a window that is made narrow and wide again: every page lays itself out
// anew, also what was hidden meanwhile.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry

TestCase {
    id: test
    name: "turned"
    when: windowShown

    readonly property Component window: Component { Main {} }

    function test_turned_data() {
        return ["now", "days", "loads", "packs", "builds", "sun", "start", "wiring", "storage", "print", "file"].map(page => ({ tag: page }))
    }
    function test_turned(one) {
        const program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        program.page = one.tag
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        wait(250)
        for (const [width, height] of [[390, 844], [1280, 800], [800, 1280], [390, 844]]) {
            program.width = width
            program.height = height
            wait(250)
            compare(leftComplaints(program), "", width + "x" + height)
            if (program.pageItem.chosen === undefined || program.pageItem.beside)
                continue
            program.pageItem.chosen = -1   // back to the list
            wait(250)
            compare(leftComplaints(program), "", width + "x" + height + ", the list")
        }
    }
    // What is wrong once the page has come to rest: on a busy machine that takes more than a moment.
    function leftComplaints(program) {
        let told = ""
        for (let tries = 0; tries < 30; ++tries) {
            told = Geometry.complaints(program.contentItem, Tokens.touchTarget).join("\n")
            if (told === "")
                break
            wait(100)
        }
        return told
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
