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

// The part of an item that is in sight: what scrolling areas cut off is not.
function seen(item, root) {
    const part = place(item, root)
    for (let outer = item.parent; outer && outer !== root; outer = outer.parent) {
        if (!outer.clip)
            continue
        const edge = place(outer, root)
        part.x = Math.max(part.x, edge.x)
        part.y = Math.max(part.y, edge.y)
        part.right = Math.min(part.right, edge.right)
        part.bottom = Math.min(part.bottom, edge.bottom)
    }
    return part
}

// What lies in an area that is moved sideways may stand outside the screen.
function movesSideways(item) {
    for (let outer = item.parent; outer; outer = outer.parent)
        if (outer.contentX !== undefined && outer.contentWidth > outer.width + 1)
            return true
    return false
}

// Brings an item that scrolls into sight.
function reveal(item) {
    for (let outer = item.parent; outer; outer = outer.parent) {
        if (outer.contentY === undefined || outer.contentItem === undefined)
            continue
        const corner = item.mapToItem(outer.contentItem, 0, 0)
        const last = Math.max(0, outer.contentHeight - outer.height)
        outer.contentY = Math.min(last, Math.max(0, corner.y - outer.height / 3))
        const furthest = Math.max(0, outer.contentWidth - outer.width)
        if (corner.x < outer.contentX || corner.x + item.width > outer.contentX + outer.width)
            outer.contentX = Math.min(furthest, Math.max(0, corner.x))
    }
}

function overlap(a, b) {
    return Math.min(a.right, b.right) - Math.max(a.x, b.x) > 0.5
        && Math.min(a.bottom, b.bottom) - Math.max(a.y, b.y) > 0.5
}
