// New, open before, share, help and about: by key and by finger, at every size.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "begin"
    when: windowShown

    property var program: null
    readonly property string folder: pictureFolder.replace(/\/[^/]*$/, "") + "/kept-begin-" + Date.now()
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1, workFolder: test.folder })
        Look.textScale = scale ?? 1
        program.scenario.openExample()
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

    function test_a_worked_example_is_begun_from() {
        open(390, 844)
        keyClick(Qt.Key_N, Qt.ControlModifier)
        tap(part("template_saw_and_pump"))
        tryCompare(program.scenario, "title", "Saw and pump at a remote place")
        verify(program.scenario.example)
    }
    function test_a_file_that_was_open_before_is_opened_again() {
        open(1280, 800)
        verify(program.scenario.saveAs("file://" + folder + "/mine.toml"))
        tryVerify(() => !program.plan.running)
        program.scenario.openTemplate("summer_storm")
        tap(part("fileAndLook"))
        tap(part("recentFiles"))
        tap(part("recent"))
        tryCompare(program.scenario, "fileName", "mine.toml")
    }
    function test_help_tells_of_every_page() {
        open(1280, 800)
        for (const page of program.pages) {
            program.page = page.key
            keyClick(Qt.Key_F1)
            verify(part("helpWords").text.length > 20, page.key)
            keyClick(Qt.Key_Escape)
            tryVerify(() => !Walk.named(program.contentItem.parent, "helpWords"))
        }
    }
    function test_a_picture_of_the_page_is_shared() {
        open(1280, 800)
        tap(part("fileAndLook"))
        tap(part("share"))
        tap(part("sharePicture"))
        const name = part("fileName")
        compare(name.text, "ice_storm_four_nights.png")
        name.text = "shared-" + Date.now() + ".png"
        tap(part("acceptFile"))
        tryVerify(() => part("shareTold").text.startsWith("Saved as"))
    }
    function test_about_has_the_licence() {
        open(800, 480)
        tap(part("fileAndLook"))
        tap(part("about"))
        tap(part("wholeLicence"))
        tryVerify(() => Walk.all(program.contentItem.parent).filter(item => item.objectName === "licenceWords").length > 100)
    }
    function test_what_is_dropped_is_opened() {
        open(1280, 800)
        verify(part("landing").enabled)
        verify(program.scenario.saveAs("file://" + folder + "/dropped.toml"))
        program.scenario.openTemplate("summer_storm")
        program.take(["file://" + folder + "/dropped.toml"])
        compare(program.scenario.fileName, "dropped.toml")
        program.take(["file:///no/such.toml"])
        verify(part("trouble").text.includes("such.toml"))
    }
    function test_strong_contrast() {
        open(1280, 800)
        Look.theme = "contrast"
        verify(Tokens.strong)
        verify(Tokens.dark)
        compare(Tokens.quietText.toString(), "#ffffff")
        Look.theme = "dark"
        verify(!Tokens.strong)
    }
    function test_every_sheet_fits_data() {
        const screens = []
        for (const [width, height] of [[320, 480], [390, 844], [844, 390], [1280, 800]])
            for (const scale of [1, 2])
                for (const language of ["en", "de"])
                    screens.push({ tag: width + "x" + height + "-" + scale * 100 + "-" + language, width: width, height: height, scale: scale, language: language })
        return screens
    }
    function test_every_sheet_fits(screen) {
        open(screen.width, screen.height, screen.scale)
        Look.language = screen.language
        tryVerify(() => program.plan.answered && !program.plan.running)
        const asked = { new: () => keyClick(Qt.Key_N, Qt.ControlModifier), help: () => keyClick(Qt.Key_F1), menu: () => tap(part("fileAndLook")) }
        for (const name in asked) {
            asked[name]()
            const close = part("close")
            wait(100)
            const root = close.parent.parent
            const found = Geometry.complaints(root, Tokens.touchTarget).filter(one => !one.startsWith("only "))
            grabImage(program.contentItem.parent).save(pictureFolder + "/sheet-" + name + "-" + screen.tag + ".png")
            compare(found.join("\n"), "", name)
            keyClick(Qt.Key_Escape)
            tryVerify(() => !Walk.named(program.contentItem.parent, "close"))
        }
    }
    function cleanup() {
        Look.language = "en"
        Look.textScale = 1
        Look.theme = "dark"
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
