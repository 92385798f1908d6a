// How far something is, as a screen reader hears it. Qt 6.4 tells a progress bar without its value:
// it is told here in its place.
#pragma once

#include <QAccessibleObject>
#include <QQuickItem>

namespace touch {

class HeardProgress : public QAccessibleObject, public QAccessibleValueInterface {
  public:
    explicit HeardProgress(QQuickItem* bar);

    // One for an object with a property "heardPercent", from 0 to 100; else null, and Qt makes its
    // own.
    static QAccessibleInterface* of(const QString& class_name, QObject* object);

    [[nodiscard]] QWindow* window() const override;
    [[nodiscard]] QRect rect() const override;
    [[nodiscard]] QAccessibleInterface* parent() const override;
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QString text(QAccessible::Text kind) const override;
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ProgressBar; }
    [[nodiscard]] QAccessible::State state() const override;
    void* interface_cast(QAccessible::InterfaceType type) override;

    [[nodiscard]] QVariant currentValue() const override;
    void setCurrentValue(const QVariant&) override {}
    [[nodiscard]] QVariant maximumValue() const override { return 100.0; }
    [[nodiscard]] QVariant minimumValue() const override { return 0.0; }
    [[nodiscard]] QVariant minimumStepSize() const override { return 0.0; }

  private:
    [[nodiscard]] QQuickItem* bar() const;
};

}  // namespace touch
