// What is wrong with where the things of a screen stand, in words; nothing when all is well.
.pragma library
.import "Walk.js" as Walk

function complaints(root, least) {
    const found = []
    const items = Walk.all(root)
    const buttons = items.filter(Walk.isButton)
    const called = button => button.spoken || button.text
    if (buttons.length < 5)
        found.push("only " + buttons.length + " buttons")
    for (const button of buttons) {
        if (button.width < least)
            found.push(called(button) + " is " + button.width + " wide")
        if (button.height < least)
            found.push(called(button) + " is " + button.height + " high")
        const place = Walk.place(button, root)
        if (!Walk.movesSideways(button) && (place.x < 0 || place.right > root.width + 0.5))
            found.push(called(button) + " leaves the screen")
    }
    apart(buttons, root, called, found)
    for (const button of buttons)
        within(button, root, called, found)

    const texts = items.filter(item => Walk.isText(item) && item.text.length > 0)
    if (texts.length < 8)
        found.push("only " + texts.length + " texts")
    for (const text of texts) {
        if (text.truncated)
            found.push("cut: " + text.text)
        if (text.paintedWidth > text.width + 1)
            found.push("too wide: " + text.text)
        const place = Walk.place(text, root)
        if (!Walk.movesSideways(text) && (place.x < -0.5 || place.right > root.width + 0.5))
            found.push("leaves the screen: " + text.text)
    }
    apart(texts, root, text => text.text, found)
    return found
}

// The words on a button do not stand out of it.
function within(button, root, called, found) {
    const outer = Walk.place(button, root)
    for (const text of Walk.all(button).filter(item => Walk.isText(item) && item.text.length > 0)) {
        const inner = Walk.place(text, root)
        if (inner.y < outer.y - 1 || inner.bottom > outer.bottom + 1)
            found.push(text.text + " stands out of " + called(button))
    }
}

// What is in sight of each other does not overlap.
function apart(items, root, name, found) {
    const places = items.map(item => Walk.seen(item, root))
    for (let i = 0; i < items.length; ++i)
        for (let j = i + 1; j < items.length; ++j)
            if (Walk.overlap(places[i], places[j]))
                found.push(name(items[i]) + " overlaps " + name(items[j]))
}
