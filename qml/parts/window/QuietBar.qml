// The bar beside what scrolls. A screen reader goes through the items and not along a bar, and is not
// told of one; Qt would tell it without a name or a value.
import QtQuick
import QtQuick.Controls.Basic

ScrollBar {
    Accessible.ignored: true
}
