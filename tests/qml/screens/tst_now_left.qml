// Pages come and go without a complaint on standard error, while the outage lasts and Now has its plot.
import QtQuick
import QtTest
import Candlemark

TestCase {
    id: test
    name: "now_left"
    when: windowShown

    readonly property Component window: Component { Main {} }

    function settle(program) {
        waitForRendering(program.contentItem)
        tryVerify(() => !(program.pageItem.busy ?? false), 60000)
        wait(50)
    }
    function test_nothing_is_complained_of_data() {
        return [{ tag: "390x844", width: 390, height: 844 }, { tag: "844x390", width: 844, height: 390 },
                { tag: "1280x800", width: 1280, height: 800 }]
    }
    function test_nothing_is_complained_of(size) {
        complaints.taken()
        const program = createTemporaryObject(window, test, { width: size.width, height: size.height })
        tryVerify(() => program.plan.answered && !program.plan.running)
        compare(program.page, "now", "the outage runs")
        tryVerify(() => program.pageItem && program.pageItem.answer.answered && !program.pageItem.busy)
        settle(program)
        compare(complaints.taken(), "", "opening the window")
        verify(program.pages.length >= 11)
        const keys = program.pages.map(one => one.key)
        for (const key of keys.filter(one => one !== "now").concat("now")) {
            const before = program.page
            program.page = key
            settle(program)
            compare(complaints.taken(), "", "from " + before + " to " + key)
        }
        program.destroy()
        wait(50)
        compare(complaints.taken(), "", "closing the window")
    }
    // That it hears what is complained of.
    function test_a_complaint_is_heard() {
        complaints.taken()
        const item = createTemporaryQmlObject("import QtQuick; Item { property var none: null; property int of: none.missing }", test)
        verify(item)
        verify(complaints.taken().includes("missing"))
    }
}
