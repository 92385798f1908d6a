// What a screen reader is told a control is. Qt's own controls tell the role of their class, and
// whether they are checked by themselves, over what a screen says of them, as soon as somebody
// listens; this says it again after them.
#pragma once

#include <QAccessible>
#include <QObject>
#include <QPointer>
#include <QQmlParserStatus>
#include <QtQml/qqmlregistration.h>

namespace touch {

class SpokenAs : public QObject, public QQmlParserStatus, public QAccessible::ActivationObserver {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    Q_PROPERTY(QObject* item MEMBER item_ NOTIFY changed)
    Q_PROPERTY(int role MEMBER role_ NOTIFY changed)  // as Accessible names it
    Q_PROPERTY(QString name MEMBER name_ NOTIFY changed)  // empty leaves what it has
    Q_PROPERTY(bool checkable MEMBER checkable_ NOTIFY changed)
    Q_PROPERTY(bool checked MEMBER checked_ NOTIFY changed)

  public:
    explicit SpokenAs(QObject* parent = nullptr);
    ~SpokenAs() override;

    void classBegin() override {}
    void componentComplete() override;
    void accessibilityActiveChanged(bool active) override;

    [[nodiscard]] QAccessible::Role role() const { return static_cast<QAccessible::Role>(role_); }
    [[nodiscard]] bool checkable() const { return checkable_; }
    [[nodiscard]] bool checked() const { return checked_; }

  signals:
    void changed();

  private:
    void say();
    void say_after_the_control();

    QPointer<QObject> item_;  // may be gone before what was to be said of it
    int role_ = QAccessible::NoRole;
    QString name_;
    bool checkable_ = false;
    bool checked_ = false;
};

}  // namespace touch
