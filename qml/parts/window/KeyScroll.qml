// Moves what scrolls by keys, and brings what the keyboard is at into sight.
import QtQuick
import Candlemark

QtObject {
    id: scroll

    readonly property int margin: Tokens.gapSmall   // for the ring around it

    // Of an area that scrolls up and down and is taller than its place.
    function moves(item) {
        return item.contentY !== undefined && item.contentItem !== undefined && item.contentHeight > item.height + 1
    }
    function isMovedSideways(item) {
        return item.contentX !== undefined && item.contentItem !== undefined && item.contentWidth > item.width + 1
    }
    // The nearest one around an item that lies within a root; null where it does not.
    function around(item, root) {
        let nearest = null
        for (let outer = item; outer; outer = outer.parent) {
            if (outer === root)
                return nearest
            if (!nearest && scroll.moves(outer))
                nearest = outer
        }
        return null
    }
    // The largest one on a page.
    function largest(item) {
        let best = scroll.moves(item) ? item : null
        for (let at = 0; at < item.children.length; ++at) {
            const child = item.children[at]
            const inside = child.visible ? scroll.largest(child) : null
            if (inside && (!best || inside.width * inside.height > best.width * best.height))
                best = inside
        }
        return best
    }
    // True when the key moves things and there was something to move.
    function press(key, area) {
        const to = { [Qt.Key_PageUp]: y => y - 0.9 * area.height, [Qt.Key_PageDown]: y => y + 0.9 * area.height,
                     [Qt.Key_Home]: () => -Infinity, [Qt.Key_End]: () => Infinity }[key]
        if (!to || !area)
            return false
        scroll.put(area, to(area.contentY))
        return true
    }
    function put(area, y) {
        const first = area.originY ?? 0
        area.contentY = Math.max(first, Math.min(first + area.contentHeight - area.height, y))
    }
    function bringIntoSight(item) {
        for (let outer = item ? item.parent : null; outer; outer = outer.parent) {
            if (scroll.moves(outer)) {
                const top = item.mapToItem(outer.contentItem, 0, 0).y - scroll.margin
                const bottom = top + item.height + 2 * scroll.margin
                if (top < outer.contentY)
                    scroll.put(outer, top)
                else if (bottom > outer.contentY + outer.height)
                    scroll.put(outer, Math.min(top, bottom - outer.height))
            }
            if (scroll.isMovedSideways(outer)) {
                const left = item.mapToItem(outer.contentItem, 0, 0).x
                const right = left + item.width
                if (left < outer.contentX || right > outer.contentX + outer.width)
                    outer.contentX = Math.max(0, Math.min(outer.contentWidth - outer.width, left < outer.contentX ? left : Math.min(left, right - outer.width)))
            }
        }
    }
}
