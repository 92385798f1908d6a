// The program's own dialog for files: rows for a finger, the keyboard, every size, both languages.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "file_dialog"
    when: windowShown

    property var program: null
    readonly property string folder: pictureFolder.replace(/\/[^/]*$/, "") + "/kept-dialog-" + Date.now()
    readonly property string place: "file://" + folder
    readonly property Component window: Component { Main {} }

    function open(width, height, scale) {
        program = createTemporaryObject(window, test, { width: width, height: height, textScale: scale ?? 1 })
        Look.textScale = scale ?? 1
        Look.keepIn(folder)  // makes the folder when something is kept
        Look.still = true
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
    function files() {
        for (const name of ["alpha", "beta", "gamma"])
            verify(program.scenario.saveAs(place + "/" + name + ".toml"))
        program.scenario.openExample()
    }
    function ask() {
        keyClick(Qt.Key_O, Qt.ControlModifier)
        const list = part("files")
        tryVerify(() => list.visible)
        return list
    }

    function test_a_file_is_opened_by_the_keyboard_alone() {
        open(1280, 800)
        files()
        const list = ask()
        program.openingDialog.sheet.folder = place
        tryVerify(() => list.count === 3)
        keyClick(Qt.Key_End)
        keyClick(Qt.Key_Up)
        keyClick(Qt.Key_Return)
        tryCompare(program.scenario, "fileName", "beta.toml")
        verify(!program.openingDialog.own)
    }
    function test_escape_opens_nothing() {
        open(1280, 800)
        ask()
        keyClick(Qt.Key_Escape)
        tryVerify(() => !program.openingDialog.own)
        verify(program.scenario.example)
    }
    function test_backspace_goes_to_the_folder_around() {
        open(1280, 800)
        files()
        const list = ask()
        program.openingDialog.sheet.folder = place
        tryVerify(() => list.count === 3)
        list.forceActiveFocus(Qt.TabFocusReason)
        keyClick(Qt.Key_Backspace)
        tryVerify(() => Walk.named(list, "file_" + folder.split("/").pop()) !== undefined)
    }
    function test_a_name_is_proposed_and_where_nothing_can_be_saved_it_is_told() {
        open(390, 844)
        keyClick(Qt.Key_S, Qt.ControlModifier)
        const name = part("fileName")
        verify(name.activeFocus)
        compare(name.text, "ice_storm_four_nights.toml")
        compare(name.selectedText, "ice_storm_four_nights")
        verify(part("acceptFile").enabled)
        name.text = "a/b"
        verify(!part("acceptFile").enabled)
        name.text = ""
        verify(!part("acceptFile").enabled)
        name.text = "storm.toml"
        program.savingDialog.sheet.folder = "file:///proc"
        wait(50)
        // Who may write everywhere is not stopped.
        const told = Walk.named(program.contentItem.parent, "folderTrouble")
        compare(part("acceptFile").enabled, told === undefined || told.text.startsWith("There is nothing"))
    }
    function test_it_fits_data() {
        const screens = []
        for (const [width, height] of [[320, 480], [390, 844], [844, 390], [800, 480], [1280, 800]])
            for (const scale of [1, 2])
                for (const language of ["en", "de"])
                    screens.push({ tag: width + "x" + height + "-" + scale * 100 + "-" + language, width: width, height: height, scale: scale, language: language })
        return screens
    }
    function test_it_fits(screen) {
        open(screen.width, screen.height, screen.scale)
        Look.language = screen.language
        files()
        for (const saving of [true, false]) {
            if (saving)
                keyClick(Qt.Key_S, Qt.ControlModifier)
            else
                keyClick(Qt.Key_O, Qt.ControlModifier)
            const dialog = saving ? program.savingDialog : program.openingDialog
            dialog.sheet.folder = place
            const list = part("files")
            tryVerify(() => list.count === 3)
            wait(100)
            const root = list.parent.parent
            const found = Geometry.complaints(root, Tokens.touchTarget).filter(one => !one.startsWith("only "))
            grabImage(program.contentItem.parent).save(pictureFolder + "/dialog-" + (saving ? "save-" : "open-") + screen.tag + ".png")
            compare(found.join("\n"), "")
            verify(list.height >= Tokens.touchTarget, "a row is in sight: " + list.height)
            for (const row of Walk.all(list).filter(Walk.isButton))
                verify(row.height >= Tokens.touchTarget)
            dialog.close()
        }
    }
    function cleanup() {
        Look.language = "en"
        Look.textScale = 1
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
