// The Storage page by finger: the master switch changes the answer; a table opens.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "storage"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        tap(part("page_storage"))
        tryVerify(() => !program.pageItem.busy && part("answerSentence").text.length > 0, 60000)
        waitForRendering(program.contentItem)
    }
    function part(name) {
        const found = Walk.named(program.contentItem.parent, name)
        verify(found, name)
        return found
    }
    function tap(item) {
        Walk.reveal(item)
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
    }

    function test_it_says_whether_the_unit_is_ready_beside_the_sentence_of_the_outage() {
        verify(part("sentence").text.length > 0)
        verify(part("answerSentence").text !== part("sentence").text)
        verify(part("months").bars.count > 3)
    }
    function test_the_master_switch_changes_the_answer() {
        const before = part("months").bars.spoken
        tap(Walk.named(part("field_master_switch_open"), "choose_true"))
        tryVerify(() => part("months").bars.spoken !== before)
        verify(program.scenario.text.includes("master_switch_open = true"))
    }
    // The date on which it was put away has no time of day.
    function test_a_date_alone_offers_no_hour() {
        const months = Walk.all(part("fields")).filter(item => item.objectName === "month")
        compare(months.length, 1)
        verify(!Walk.named(months[0].parent, "hour"))
    }
    function test_every_plot_is_also_a_table() {
        const fold = part("table_months")
        tap(Walk.named(fold, "fold"))
        tryVerify(() => Walk.named(fold, "tableRows"))
        verify(Walk.named(fold, "tableRows").count > 3)
    }
    function test_the_working_opens_at_a_touch() {
        const fold = part("working")
        verify(!fold.open)
        tap(Walk.named(fold, "fold"))
        verify(fold.open)
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
