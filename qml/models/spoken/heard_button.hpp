// A button as a screen reader hears it. Qt 6.4 tells of every button that it is available, and of a
// page's entry no action: what it tells is told here in its place.
#pragma once

#include <QAccessibleObject>
#include <QQuickItem>

namespace touch {

class SpokenAs;

class HeardButton : public QAccessibleObject, public QAccessibleActionInterface {
  public:
    explicit HeardButton(QQuickItem* button);

    // One for an object that is a button of this program's own, which all have a property "spoken";
    // else null, and Qt makes its own.
    static QAccessibleInterface* of(const QString& class_name, QObject* object);

    [[nodiscard]] QWindow* window() const override;
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] QAccessible::Role role() const override;
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] QStringList actionNames() const override;
    void doAction(const QString& action) override;
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

  private:
    [[nodiscard]] QQuickItem* button() const;
    // What the screen says of it by Accessible.
    [[nodiscard]] QVariant said(const char* name) const;
    // That the screen gives it over what Qt makes of it; null where it gives none.
    [[nodiscard]] const SpokenAs* spoken() const;
    [[nodiscard]] bool is_switched() const;
};

}  // namespace touch
