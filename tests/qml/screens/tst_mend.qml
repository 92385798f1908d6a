// A file that cannot be read is mended on the screen, line by line; nothing is a dead end.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "mend"
    when: windowShown

    property var program: null
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1 })
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
        touchEvent(item).press(0, item).commit()
        touchEvent(item).release(0, item).commit()
        wait(30)
    }
    function spoil() {
        const good = program.scenario.text
        verify(program.scenario.begin(good.replace("lasts = \"4 d\"", "lasts = \"4 kg\"")))
        verify(program.scenario.broken)
        return good
    }

    function test_an_error_is_mended_beside_its_line_data() {
        return [{ tag: "1280x800", width: 1280, height: 800 }, { tag: "390x844", width: 390, height: 844 }, { tag: "844x390", width: 844, height: 390 }]
    }
    function test_an_error_is_mended_beside_its_line(screen) {
        open(screen.width, screen.height)
        const good = spoil()
        verify(part("mendTitle").text.startsWith("One thing"))
        verify(part("wrongWords").text.includes("outage.lasts"))
        grabImage(program.contentItem.parent).save(pictureFolder + "/mend-" + screen.tag + ".png")
        tap(part("mend_0"))
        const line = part("words")
        compare(line.text, "4 kg")
        line.text = "4 d"
        tap(part("done"))
        tryCompare(program.scenario, "text", good)
        tryVerify(() => !Walk.named(program.contentItem.parent, "mendTitle"))
        tryVerify(() => program.plan.answered && !program.plan.running)
    }
    function test_any_line_can_be_changed() {
        open(1280, 800)
        spoil()
        tap(part("wholeText"))
        tap(part("line_1"))
        part("words").text = "# first line"
        tap(part("done"))
        tryVerify(() => program.scenario.text.startsWith("# first line\n"))
        part("mendTitle")
    }
    function test_it_fits_data() {
        const screens = []
        for (const [width, height] of [[320, 480], [390, 844], [844, 390], [1280, 800]])
            for (const scale of [1, 2])
                screens.push({ tag: width + "x" + height + "-" + scale * 100, width: width, height: height, scale: scale })
        return screens
    }
    function test_it_fits(screen) {
        open(screen.width, screen.height, screen.scale)
        spoil()
        part("wrongWords")
        wait(100)
        compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).filter(one => !one.startsWith("only ")).join("\n"), "")
    }
    function test_without_a_file_there_is_a_way_on() {
        program = createTemporaryObject(window, test, { width: 390, height: 844, file: "file:///no/such/file.toml" })
        verify(part("trouble").text.includes("file.toml"))
        verify(part("nothingWords").text.length > 0)
        tap(part("nothingNew"))
        tap(part("template_summer_storm"))
        tryVerify(() => program.plan.answered && !program.plan.running)
        verify(!Walk.named(program.contentItem.parent, "nothingWords"))
    }
    function cleanup() {
        Look.textScale = 1
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
