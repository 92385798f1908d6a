// The main jobs by the keyboard alone, from the start to a saved file; what the keyboard is at stays in
// sight all the while.
import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

TestCase {
    id: test
    name: "by_keys"
    when: windowShown

    property var program: null
    property var lost: []
    readonly property string folder: pictureFolder.replace(/\/[^/]*$/, "") + "/kept-by-keys-" + Date.now()
    readonly property string place: "file://" + folder
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        lost = []
        program = createTemporaryObject(window, test, { width: width, height: height })
        Look.keepIn(folder)
        Look.still = true
        tryVerify(() => program.plan.answered && !program.plan.running)
        for (const name of ["alpha", "beta"])
            verify(program.scenario.saveAs(place + "/" + name + ".toml"))
        program.scenario.openExample()
        program.openingDialog.currentFolder = place
        tryVerify(() => program.plan.answered && !program.plan.running)
        waitForRendering(program.contentItem)
    }
    function part(name) { return Walk.named(program.contentItem.parent, name) }

    // A key, and a look at where the keyboard is then.
    function press(key, modifiers) {
        keyClick(key, modifiers ?? Qt.NoModifier)
        wait(10)
        look()
    }
    function type(words) {
        for (const sign of words)
            press(sign)
    }
    function look() {
        const item = program.activeFocusItem
        if (!item) {
            lost.push("nothing has the keyboard")
            return
        }
        const root = program.contentItem.parent
        const seen = Walk.seen(item, root)
        const least = Math.min(item.height, 40)
        const height = Math.min(program.height, seen.bottom) - Math.max(0, seen.y)
        if (height < least || Math.min(program.width, seen.right) - Math.max(0, seen.x) < 1)
            lost.push((item.spoken ?? item.objectName) + " at " + Math.round(seen.y))
    }
    // By Tab, as often as it takes; an item, or one that holds what has the keyboard.
    function tabTo(name) {
        const wanted = () => {
            for (let item = program.activeFocusItem; item; item = item.parent)
                if (item.objectName === name)
                    return true
            return false
        }
        for (let stop = 0; stop < 120 && !wanted(); ++stop)
            press(Qt.Key_Tab)
        verify(wanted(), name + " is reached by Tab")
    }
    function goTo(page) {
        press(Qt.Key_0 + Number(program.pages.find(one => one.key === page).digit))
        compare(program.page, page)
        tryVerify(() => program.pageItem !== null)
        waitForRendering(program.contentItem)
    }

    function test_open_change_read_and_save_data() {
        return [{ tag: "1280x800", width: 1280, height: 800 }, { tag: "390x844", width: 390, height: 844 }]
    }
    function test_open_change_read_and_save(size) {
        open(size.width, size.height)

        press(Qt.Key_O, Qt.ControlModifier)
        tryVerify(() => part("files") !== undefined && part("files").count === 2)
        press(Qt.Key_End)
        press(Qt.Key_Return)
        tryCompare(program.scenario, "fileName", "beta.toml")
        verify(!program.scenario.changed)

        goTo("loads")
        tabTo("load_1")
        press(Qt.Key_Return)
        tryVerify(() => part("field_power") !== undefined)
        tabTo("field_power")
        press(Qt.Key_Return)
        tryVerify(() => part("pad") !== undefined && part("pad").activeFocus)
        type("87")
        press(Qt.Key_Return)
        tryVerify(() => program.scenario.text.includes("power = \"87 W\""))
        verify(program.scenario.changed)

        goTo("builds")
        tryVerify(() => part("chances") !== undefined && part("chances").grid.present, 60000)
        tabTo("chances")
        const map = part("chances")
        press(Qt.Key_Down)
        compare([map.row, map.column].join(), "0,0", "the first key comes to the first cell")
        press(Qt.Key_Down)
        compare([map.row, map.column].join(), "1,0")
        compare(part("aboutBuild").text, map.grid.about(1, 0))
        press(Qt.Key_Up)
        press(Qt.Key_Right)
        compare([map.row, map.column].join(), map.across > 1 ? "0,1" : "0,0")

        press(Qt.Key_S, Qt.ControlModifier)
        tryVerify(() => !program.scenario.changed)
        compare(saved("beta.toml").includes("power = \"87 W\""), true)
        verify(!saved("alpha.toml").includes("power = \"87 W\""))
        compare(lost.join("\n"), "")
    }
    function saved(name) {
        const request = new XMLHttpRequest()
        request.open("GET", place + "/" + name, false)
        request.send()
        return request.responseText
    }
    function test_a_new_file_from_a_template_by_keys() {
        open(1280, 800)
        press(Qt.Key_N, Qt.ControlModifier)
        tryVerify(() => part("close") !== undefined)
        const before = program.scenario.title
        tabTo("template_summer_storm")
        press(Qt.Key_Return)
        tryVerify(() => program.scenario.title !== before)
        compare(lost.join("\n"), "")
    }
    function cleanup() {
        Look.still = false
        Look.language = "en"
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
