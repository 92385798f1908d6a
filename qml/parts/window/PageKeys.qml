// What keys do on every page, where nothing in it takes them for itself: a digit opens a page, Ctrl
// with PageUp or PageDown the one beside, PageUp, PageDown, Home and End move what is shown.
import QtQuick
import Candlemark

FocusScope {
    id: scope

    required property var pages     // list of {key, digit}
    required property string page
    required property Item shown    // the page
    signal asked(string key)

    Keys.onPressed: event => event.accepted = scope.press(event)

    function press(event) {
        const bare = (event.modifiers & ~(Qt.KeypadModifier | Qt.AltModifier)) === 0
        if (bare && event.key >= Qt.Key_0 && event.key <= Qt.Key_9)
            return scope.open(scope.pages.find(one => one.digit === String(event.key - Qt.Key_0)))
        if ((event.modifiers & Qt.ControlModifier) && (event.key === Qt.Key_PageUp || event.key === Qt.Key_PageDown))
            return scope.open(scope.pages[scope.place() + (event.key === Qt.Key_PageDown ? 1 : -1)])
        return scope.shown !== null && keys.press(event.key, scope.area())
    }
    function place() {
        return scope.pages.findIndex(one => one.key === scope.page)
    }
    function open(wanted) {
        if (wanted)
            scope.asked(wanted.key)
        return Boolean(wanted)
    }
    // Where the keyboard is, or else the most of the page.
    function area() {
        return keys.around(scope.Window.activeFocusItem, scope.shown.parent) ?? keys.largest(scope.shown)
    }

    KeyScroll {
        id: keys
    }
}
