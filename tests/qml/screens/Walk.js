// Walks the tree of items of a screen.
.pragma library

function all(item, found) {
    found = found || []
    for (let i = 0; i < item.children.length; ++i) {
        const child = item.children[i]
        if (!child.visible)
            continue
        found.push(child)
        all(child, found)
    }
    return found
}

function named(item, name) {
    return all(item).find(child => child.objectName === name)
}

function isText(item) {
    return item.hasOwnProperty("truncated") && item.hasOwnProperty("paintedWidth") && item.hasOwnProperty("elide")
}

function isButton(item) {
    return item.hasOwnProperty("spoken") && item.hasOwnProperty("checkable")
}

function place(item, root) {
    const corner = item.mapToItem(root, 0, 0)
    return { x: corner.x, y: corner.y, right: corner.x + item.width, bottom: corner.y + item.height }
}

function overlap(a, b) {
    return Math.min(a.right, b.right) - Math.max(a.x, b.x) > 0.5
        && Math.min(a.bottom, b.bottom) - Math.max(a.y, b.y) > 0.5
}
