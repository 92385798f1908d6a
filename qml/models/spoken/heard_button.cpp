#include "models/spoken/heard_button.hpp"

#include <QCoreApplication>
#include <QMetaObject>
#include <QQuickWindow>

#include "models/spoken/heard_item.hpp"
#include "models/spoken/spoken_as.hpp"

namespace touch {

namespace {

void tell_whether_available(QQuickItem* button) {
    QAccessible::State changed;
    changed.disabled = true;
    QAccessibleStateChangeEvent event(button, changed);
    QAccessible::updateAccessibility(&event);
}

}  // namespace

HeardButton::HeardButton(QQuickItem* button) : QAccessibleObject(button) {
    QObject::connect(button, &QQuickItem::enabledChanged, button,
                     [button] { tell_whether_available(button); });
}

QAccessibleInterface* HeardButton::of(const QString& class_name, QObject* object) {
    auto* item = heard_first_as(class_name, object);
    if (!item || !item->inherits("QQuickAbstractButton") ||
        item->metaObject()->indexOfProperty("spoken") < 0)
        return nullptr;
    return new HeardButton(item);
}

QQuickItem* HeardButton::button() const {
    return static_cast<QQuickItem*>(object());
}

const SpokenAs* HeardButton::spoken() const {
    return button()->findChild<SpokenAs*>(QString(), Qt::FindDirectChildrenOnly);
}

QVariant HeardButton::said(const char* name) const {
    return said_of(*button(), name);
}

QWindow* HeardButton::window() const {
    return button()->window();
}

QRect HeardButton::rect() const {
    return place_on_screen(*button());
}

QAccessibleInterface* HeardButton::parent() const {
    return heard_around(*button());
}

QString HeardButton::text(QAccessible::Text kind) const {
    if (kind == QAccessible::Name) return said("name").toString();
    if (kind != QAccessible::Description) return {};
    const QString told = said("description").toString();
    return told.isEmpty() && !button()->isEnabled()
               ? QCoreApplication::translate("HeardButton", "not available now")
               : told;
}

QAccessible::Role HeardButton::role() const {
    if (const SpokenAs* as = spoken()) return as->role();
    const auto role = static_cast<QAccessible::Role>(said("role").toInt());
    return role == QAccessible::NoRole ? QAccessible::Button : role;
}

QAccessible::State HeardButton::state() const {
    QAccessible::State state = seen_state(*button());
    state.focusable = button()->activeFocusOnTab() || said("focusable").toBool();
    const SpokenAs* as = spoken();
    state.checkable = as ? as->checkable() : said("checkable").toBool();
    state.checked = as ? as->checked() : said("checked").toBool();
    state.selectable = said("selectable").toBool();
    state.selected = said("selected").toBool();
    state.pressed = button()->property("down").toBool();
    return state;
}

void* HeardButton::interface_cast(QAccessible::InterfaceType type) {
    if (type == QAccessible::ActionInterface) return static_cast<QAccessibleActionInterface*>(this);
    return QAccessibleObject::interface_cast(type);
}

bool HeardButton::is_switched() const {
    return role() == QAccessible::CheckBox || role() == QAccessible::RadioButton;
}

QStringList HeardButton::actionNames() const {
    if (!button()->isEnabled()) return {};
    QStringList names{pressAction()};
    if (is_switched()) names.prepend(toggleAction());
    if (state().focusable) names << setFocusAction();
    return names;
}

void HeardButton::doAction(const QString& action) {
    if (!button()->isEnabled()) return;
    if (action == setFocusAction())
        button()->forceActiveFocus();
    else if (action == pressAction() || (action == toggleAction() && is_switched()))
        QMetaObject::invokeMethod(button(), "clicked");
}

}  // namespace touch
