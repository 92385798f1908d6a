#include "models/spoken/heard_item.hpp"

#include <QQuickWindow>

namespace touch {

QQuickItem* heard_first_as(const QString& class_name, QObject* object) {
    if (!object || class_name != QLatin1String(object->metaObject()->className())) return nullptr;
    return qobject_cast<QQuickItem*>(object);
}

QVariant said_of(const QQuickItem& item, const char* name) {
    for (const QObject* child : item.children())
        if (child->inherits("QQuickAccessibleAttached")) return child->property(name);
    return {};
}

QRect place_on_screen(const QQuickItem& item) {
    if (!item.window() || !item.isVisible()) return {};
    return QRectF(item.mapToGlobal(QPointF(0.0, 0.0)), item.size()).toRect();
}

QAccessibleInterface* heard_around(const QQuickItem& item) {
    QQuickWindow* window = item.window();
    if (!window) return nullptr;
    for (QQuickItem* around = item.parentItem(); around && around != window->contentItem();
         around = around->parentItem())
        if (auto* heard = QAccessible::queryAccessibleInterface(around)) return heard;
    return QAccessible::queryAccessibleInterface(window);
}

QAccessible::State seen_state(const QQuickItem& item) {
    QAccessible::State state;
    const QQuickWindow* window = item.window();
    state.invisible =
        !window || !window->isVisible() || !item.isVisible() || qFuzzyIsNull(item.opacity());
    state.offscreen =
        window &&
        !QRect(window->mapToGlobal(QPoint(0, 0)), window->size()).intersects(place_on_screen(item));
    state.disabled = !item.isEnabled();
    state.focused = item.hasActiveFocus();
    return state;
}

}  // namespace touch
