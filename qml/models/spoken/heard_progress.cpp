#include "models/spoken/heard_progress.hpp"

#include <QQuickWindow>

#include "models/spoken/heard_item.hpp"

namespace touch {

HeardProgress::HeardProgress(QQuickItem* bar) : QAccessibleObject(bar) {}

QAccessibleInterface* HeardProgress::of(const QString& class_name, QObject* object) {
    auto* item = heard_first_as(class_name, object);
    if (!item || item->metaObject()->indexOfProperty("heardPercent") < 0) return nullptr;
    return new HeardProgress(item);
}

QQuickItem* HeardProgress::bar() const {
    return static_cast<QQuickItem*>(object());
}

QWindow* HeardProgress::window() const {
    return bar()->window();
}

QRect HeardProgress::rect() const {
    return place_on_screen(*bar());
}

QAccessibleInterface* HeardProgress::parent() const {
    return heard_around(*bar());
}

QString HeardProgress::text(QAccessible::Text kind) const {
    return kind == QAccessible::Name ? said_of(*bar(), "name").toString() : QString();
}

QAccessible::State HeardProgress::state() const {
    return seen_state(*bar());
}

void* HeardProgress::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::ValueInterface) return static_cast<QAccessibleValueInterface*>(this);
    return QAccessibleObject::interface_cast(type);
}

QVariant HeardProgress::currentValue() const {
    return bar()->property("heardPercent");
}

}  // namespace touch
