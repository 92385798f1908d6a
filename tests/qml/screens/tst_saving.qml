// Saving by finger in the dialog that is drawn within the window: what is there is replaced only
// when the person says so.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "saving"
    when: windowShown

    property var program: null
    // A folder of its own, which the kept work makes.
    readonly property string folder: pictureFolder.replace(/\/[^/]*$/, "") + "/kept-saving-" + Date.now()
    readonly property string place: "file://" + folder
    readonly property Component window: Component { Main {} }

    function open(width, height) {
        program = createTemporaryObject(window, test, { width: width, height: height, workFolder: test.folder })
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
    // As a person does: the dialog comes, a name stands in it, its own button is touched.
    function acceptIn(dialog, file) {
        if (!dialog.opened) {
            dialog.currentFolder = test.place
            dialog.selectedFile = file
            dialog.open()
        }
        tryVerify(() => dialog.opened)
        dialog.sheet.folder = test.place
        part("fileName").text = file.split("/").pop()
        tap(part("acceptFile"))
        tryVerify(() => !dialog.opened)
    }
    function read(file) {
        const request = new XMLHttpRequest()
        request.open("GET", file, false)
        request.send()
        return request.responseText
    }
    // A file that holds something else than the screen does.
    function saved(name) {
        const file = place + "/" + name
        verify(program.scenario.saveAs(file))
        program.scenario.openExample()
        program.scenario.packs.more()
        verify(read(file) !== program.scenario.text)
        return file
    }

    function test_a_file_that_is_there_is_replaced_when_asked_data() {
        return [{ tag: "1280x800", width: 1280, height: 800 }, { tag: "800x1280", width: 800, height: 1280 }, { tag: "390x844", width: 390, height: 844 }]
    }
    function test_a_file_that_is_there_is_replaced_when_asked(screen) {
        open(screen.width, screen.height)
        const file = saved("replaced-" + screen.tag + ".toml")
        const before = read(file)
        acceptIn(program.savingDialog, file)
        const sheet = part("replaceWords")
        verify(sheet.text.includes("replaced-" + screen.tag + ".toml is there already"), sheet.text)
        verify(sheet.text.includes("last ten versions stay"))
        compare(read(file), before)
        for (const name of ["replaceIt", "anotherName", "close"])
            verify(part(name).height >= Tokens.touchTarget && part(name).width >= Tokens.touchTarget, name)
        wait(100)
        for (const dark of [true, false]) {
            Tokens.dark = dark
            wait(50)
            grabImage(program.contentItem.parent).save(pictureFolder + "/replace-" + screen.tag + (dark ? "-dark" : "-light") + ".png")
        }
        tap(part("replaceIt"))
        compare(read(file), program.scenario.text)
        verify(!program.scenario.changed)
        // What it held can be had again.
        program.page = "file"
        tap(Walk.named(part("versions"), "fold"))
        tryVerify(() => Walk.all(part("versions")).some(item => item.modelData && item.modelData.path && read("file://" + item.modelData.path) === before))
    }
    function test_another_name_leaves_it_as_it_was() {
        open(1280, 800)
        const file = saved("kept.toml")
        const before = read(file)
        acceptIn(program.savingDialog, file)
        tap(part("anotherName"))
        compare(read(file), before)
        tryVerify(() => program.savingDialog.opened)
        program.savingDialog.close()
        tryVerify(() => !program.savingDialog.opened)
        const other = place + "/kept-" + Date.now() + ".toml"
        acceptIn(program.savingDialog, other)
        verify(!Walk.named(program.contentItem.parent, "replaceWords"))
        compare(read(other), program.scenario.text)
        compare(read(file), before)
    }
    function test_a_sheet_put_away_saves_nothing() {
        open(1280, 800)
        const file = saved("put-away.toml")
        const before = read(file)
        acceptIn(program.savingDialog, file)
        part("replaceWords")
        keyClick(Qt.Key_Escape)
        tryVerify(() => !Walk.named(program.contentItem.parent, "replaceWords"))
        compare(read(file), before)
        verify(program.scenario.changed)
    }
    function test_a_dialog_of_the_platform_has_asked_already() {
        open(1280, 800)
        const file = saved("asked.toml")
        program.savingDialog.drawnHere = false
        program.savingDialog.take(file)
        verify(!Walk.named(program.contentItem.parent, "replaceWords"))
        compare(read(file), program.scenario.text)
        // It asked about the name as it was typed, not about the one with its ending.
        program.scenario.packs.more()
        program.savingDialog.take(file.slice(0, -5))
        part("replaceWords")
    }
    function test_a_sheet_of_paper_is_not_replaced_unasked() {
        open(1280, 800)
        saved("beside.toml")
        program.page = "print"
        tryVerify(() => !program.pageItem.busy && program.pageItem.desk.pages > 0, 60000)
        const file = place + "/once-" + Date.now() + ".pdf"
        acceptIn(program.pageItem.sheetDialog, file)
        compare(read(file).slice(0, 5), "%PDF-")
        acceptIn(program.pageItem.sheetDialog, file)
        verify(part("replaceWords").text.includes("then gone"))
        tap(part("replaceIt"))
        tryVerify(() => part("printTold").text.startsWith("Saved as"))
    }
    // What another window of the program would hold.
    readonly property Component other: Component { ScenarioDocument {} }

    // The file as another window left it after it was opened here, and a change of one's own.
    function changedElsewhere(name) {
        open(1280, 800)
        const file = place + "/" + name
        verify(program.scenario.saveAs(file))
        const theirs = createTemporaryObject(other, test)
        verify(theirs.open(file))
        theirs.packs.more()
        verify(theirs.save())
        program.scenario.days.less()
        keyClick(Qt.Key_S, Qt.ControlModifier)
        verify(part("changedWords").text.includes(name))
        compare(read(file), theirs.text)
        verify(program.scenario.changed)
        return { file: file, theirs: theirs.text, mine: program.scenario.text }
    }
    function isAVersion(text) {
        program.page = "file"
        tap(Walk.named(part("versions"), "fold"))
        tryVerify(() => Walk.all(part("versions")).some(item => item.modelData && item.modelData.path && read("file://" + item.modelData.path) === text))
    }
    function test_a_file_changed_elsewhere_gives_way_when_asked() {
        const held = changedElsewhere("mine-kept.toml")
        for (const name of ["saveElsewhere", "keepMine", "takeTheirs"])
            verify(part(name).height >= Tokens.touchTarget && part(name).width >= Tokens.touchTarget, name)
        grabImage(program.contentItem.parent).save(pictureFolder + "/changed-elsewhere-1280x800-dark.png")
        tap(part("keepMine"))
        compare(read(held.file), held.mine)
        verify(!program.scenario.changed)
        isAVersion(held.theirs)
    }
    function test_a_file_changed_elsewhere_is_taken_up_when_asked() {
        const held = changedElsewhere("theirs-taken.toml")
        tap(part("takeTheirs"))
        compare(read(held.file), held.theirs)
        compare(program.scenario.text, held.theirs)
        verify(!program.scenario.changed)
        isAVersion(held.mine)
        program.scenario.undo()
        compare(program.scenario.text, held.mine)
    }
    function test_both_stay_under_two_names_when_asked() {
        const held = changedElsewhere("both.toml")
        tap(part("saveElsewhere"))
        tryVerify(() => program.savingDialog.opened)
        program.savingDialog.close()
        tryVerify(() => !program.savingDialog.opened)
        const other = place + "/both-mine.toml"
        acceptIn(program.savingDialog, other)
        compare(read(other), held.mine)
        compare(read(held.file), held.theirs)
        compare(program.scenario.fileName, "both-mine.toml")
    }
    function test_put_away_it_saves_nothing_and_asks_again() {
        const held = changedElsewhere("asked-again.toml")
        keyClick(Qt.Key_Escape)
        tryVerify(() => !Walk.named(program.contentItem.parent, "changedWords"))
        compare(read(held.file), held.theirs)
        compare(program.scenario.text, held.mine)
        verify(program.scenario.changed)
        keyClick(Qt.Key_S, Qt.ControlModifier)
        part("changedWords")
    }
    function test_unsaved_work_on_another_file_is_offered_and_put_away() {
        open(1280, 800)
        const file = place + "/left.toml"
        verify(program.scenario.saveAs(file))
        program.scenario.days.less()
        const unsaved = program.scenario.text
        program.scenario.openExample()
        program.page = "file"
        part("takeUp")
        verify(part("putAway").height >= Tokens.touchTarget && part("putAway").width >= Tokens.touchTarget)
        grabImage(program.contentItem.parent).save(pictureFolder + "/left-work-1280x800-dark.png")
        tap(part("takeUp"))
        compare(program.scenario.text, unsaved)
        compare(program.scenario.fileName, "left.toml")
        program.scenario.openExample()
        tap(part("putAway"))
        tryVerify(() => program.pageItem.kept.left.every(piece => piece.name !== "left.toml"))
    }
    function cleanup() {
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
