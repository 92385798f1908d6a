// The pages that answer join, start and storage in German, as the engine answers the example: their
// sentences, and nothing cut or one over the other.
import QtQuick
import QtTest
import Candlemark
import "Geometry.js" as Geometry
import "Walk.js" as Walk

TestCase {
    id: test
    name: "german"
    when: windowShown

    readonly property Component window: Component { Main {} }

    function test_page_data() {
        const screens = []
        for (const [width, height] of [[1280, 800], [800, 1280], [390, 844]])
            screens.push({ tag: width + "x" + height, width: width, height: height })
        return screens
    }
    function test_page(screen) {
        Look.language = "de"
        const program = createTemporaryObject(window, test, { width: screen.width, height: screen.height })
        tryVerify(() => program.plan.answered && !program.plan.running && !program.plan.weighing, 60000)
        for (const [page, words] of [["packs", "wurde nichts gefunden"], ["start", "läuft an"], ["storage", "Bereit am"]]) {
            program.page = page
            tryVerify(() => !(program.pageItem.busy ?? false), 60000)
            wait(250)
            const sentence = Walk.named(program.contentItem, "answerSentence")
            verify(sentence && sentence.text.includes(words), page + ": " + (sentence ? sentence.text : "no sentence"))
            compare(Geometry.complaints(program.contentItem, Tokens.touchTarget).join("\n"), "", page)
            Walk.reveal(sentence)
            wait(50)
            grabImage(program.contentItem).save(pictureFolder + "/" + page + "-" + screen.tag + "-german.png")
        }
    }
    function cleanup() {
        Look.language = "en"
        Tokens.dark = true
        Tokens.textScale = 1
    }
}
