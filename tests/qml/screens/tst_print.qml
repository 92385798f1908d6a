// The Print page by finger: the preview follows what is chosen, and files are written.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "print"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function init() {
        program = createTemporaryObject(window, test, { width: 1280, height: 800 })
        tryVerify(() => program.plan.answered && !program.plan.running)
        program.page = "print"
        tryVerify(() => !program.pageItem.busy && program.pageItem.desk.pages > 0, 60000)
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

    function test_the_card_stands_on_one_page_and_its_words_are_read_out() {
        compare(program.pageItem.desk.pages, 1)
        verify(part("preview").Accessible.name.includes("Everything on: 33 h"))
    }
    function test_the_paper_changes_the_shape_of_the_page() {
        tap(part("paper_a4"))
        tryVerify(() => Math.abs(part("preview").shape - 297 / 210) < 0.01)
        tap(part("paper_letter"))
        tryVerify(() => Math.abs(part("preview").shape - 11 / 8.5) < 0.01)
    }
    function test_the_report_has_many_pages_to_turn() {
        tap(part("sheet_report"))
        tryVerify(() => program.pageItem.desk.pages > 4, 20000)
        tryVerify(() => part("pageOn").enabled)
        tap(part("pageOn"))
        tryCompare(part("preview"), "page", 1)
    }
    function test_a_change_of_the_scenario_changes_the_card() {
        program.scenario.packs.more()
        tryVerify(() => !part("preview").Accessible.name.includes("Everything on: 33 h"))
    }
    function test_what_could_not_be_saved_is_told_in_words() {
        verify(!program.pageItem.desk.save("file:///no/such/folder/card.pdf"))
        verify(part("printTold").visible)
        verify(part("printTold").text.includes("there is no folder /no/such/folder"))
        verify(!program.pageItem.desk.save("https://elsewhere.example/card.pdf"))
        verify(part("printTold").text.includes("of this computer"))
        // A folder that takes no files, whoever asks.
        verify(!program.pageItem.desk.save("file:///proc/card.pdf"))
        verify(/could not be written|may not be written/.test(part("printTold").text))
    }
    function test_what_was_saved_is_told_with_its_place_and_can_be_read() {
        const pdf = "file://" + pictureFolder + "/card.pdf"
        verify(program.pageItem.desk.save(pdf))
        verify(part("printTold").text.includes(pictureFolder + "/card.pdf"))
        compare(read(pdf).slice(0, 5), "%PDF-")
        const numbers = "file://" + pictureFolder + "/days.csv"
        verify(program.pageItem.desk.savePlot("outage days", "csv", numbers))
        verify(read(numbers).split("\n").length > 10)
        const drawing = "file://" + pictureFolder + "/days.svg"
        verify(program.pageItem.desk.savePlot("outage days", "svg", drawing))
        verify(read(drawing).includes("<svg"))
    }
    function test_a_name_without_its_ending_replaces_nothing_unasked() {
        verify(program.pageItem.desk.save("file://" + pictureFolder + "/twice.pdf"))
        verify(!program.pageItem.desk.save("file://" + pictureFolder + "/twice"))
        verify(part("printTold").text.includes("is there already"))
    }
    function test_nothing_is_saved_while_the_sheet_is_being_made() {
        program.pageItem.desk.sheet = "report"
        verify(program.pageItem.desk.making)
        verify(!part("savePdf").enabled)
        verify(!program.pageItem.desk.save("file://" + pictureFolder + "/early.pdf"))
        tryVerify(() => part("savePdf").enabled, 20000)
    }
    function test_the_window_goes_on_while_the_report_is_made() {
        let ticks = 0
        const clock = Qt.createQmlObject("import QtQuick; Timer { interval: 1; repeat: true; running: true }", test)
        clock.triggered.connect(() => ticks += program.pageItem.desk.making ? 1 : 0)
        program.pageItem.desk.sheet = "report"
        tryVerify(() => !program.pageItem.desk.making, 20000)
        clock.destroy()
        verify(ticks > 1)
    }
    function test_a_place_to_save_is_offered() {
        tap(part("savePdf"))
        verify(program.pageItem.sheetDialog.visible)
        verify(program.pageItem.sheetDialog.selectedFile.toString().endsWith("/card.pdf"))
        program.pageItem.sheetDialog.close()
        tap(part("csv_outage days"))
        verify(decodeURIComponent(program.pageItem.plotDialog.selectedFile).endsWith("/outage days.csv"))
        program.pageItem.plotDialog.close()
    }
    function test_a_printer_is_picked_from_a_list_and_one_that_is_gone_is_told() {
        const sheet = program.pageItem.printerSheet
        sheet.ask([{ name: "hall", detail: "upstairs" }])
        tryVerify(() => sheet.opened)
        compare(part("printer_hall").spoken, "hall, upstairs")
        tryVerify(() => part("printer_hall").width > 0, 5000, "it is laid out")
        tap(part("printer_hall"))
        tryVerify(() => !sheet.opened)
        verify(part("printTold").text.includes("hall takes nothing"))
    }
    function test_without_a_printer_the_way_by_pdf_is_told() {
        program.pageItem.printerSheet.ask([])
        tryVerify(() => part("noPrinter").text.includes("Save the PDF"))
        program.pageItem.printerSheet.close()
    }
    function test_a_name_says_each_word_once_and_holds_no_sign_that_files_may_not() {
        const named = what => decodeURIComponent(program.pageItem.desk.suggested(what, "svg")).split("/").pop()
        compare(named("wiring wiring"), "wiring.svg")
        compare(named("start start of pump 1/2 hp"), "start of pump 1-2 hp.svg")
    }
    function test_every_plot_has_a_drawing_and_its_numbers() {
        verify(program.pageItem.desk.plots.length > 5)
        for (const name of ["packs builds by weight", "packs builds by price"])
            verify(part("svg_" + name).height >= Tokens.touchTarget)
        const numbers = "file://" + pictureFolder + "/builds.csv"
        verify(program.pageItem.desk.savePlot("packs builds by weight", "csv", numbers))
        verify(read(numbers).includes("packs and panels weigh [kg]"))
        const drawing = "file://" + pictureFolder + "/builds.svg"
        verify(program.pageItem.desk.savePlot("packs builds by weight", "svg", drawing))
        verify(read(drawing).includes("<svg"))
        for (const plot of program.pageItem.desk.plots) {
            verify(part("svg_" + plot.name))
            verify(part("csv_" + plot.name))
        }
    }
    function read(file) {
        const request = new XMLHttpRequest()
        request.open("GET", file, false)
        request.send()
        return request.responseText
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
