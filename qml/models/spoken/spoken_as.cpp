#include "models/spoken/spoken_as.hpp"

#include <QCoreApplication>
#include <QQmlContext>
#include <QQmlEngine>
#include <QQmlProperty>
#include <QTimer>

#include "models/spoken/heard_button.hpp"
#include "models/spoken/heard_progress.hpp"

namespace touch {

namespace {

void hear_our_own_items() {
    QAccessible::installFactory(&HeardButton::of);
    QAccessible::installFactory(&HeardProgress::of);
}
Q_COREAPP_STARTUP_FUNCTION(hear_our_own_items)

}  // namespace

SpokenAs::SpokenAs(QObject* parent) : QObject(parent) {
    QAccessible::installActivationObserver(this);
    connect(this, &SpokenAs::changed, this, &SpokenAs::say);
}

SpokenAs::~SpokenAs() {
    QAccessible::removeActivationObserver(this);
}

void SpokenAs::componentComplete() {
    if (QAccessible::isActive()) say_after_the_control();
}

void SpokenAs::accessibilityActiveChanged(bool active) {
    if (active) say_after_the_control();
}

void SpokenAs::say_after_the_control() {
    QTimer::singleShot(0, this, [this] { say(); });
}

void SpokenAs::say() {
    // Nothing is told of a control that is on its way out.
    const QQmlContext* context = qmlContext(this);
    if (!item_ || !context || !context->isValid() || !QAccessible::isActive()) return;
    const auto tell = [this](const char* name, const QVariant& value) {
        QQmlProperty(item_, QString::fromLatin1(name), qmlContext(this)).write(value);
    };
    tell("Accessible.role", role_);
    if (!name_.isEmpty()) tell("Accessible.name", name_);
    tell("Accessible.checkable", checkable_);
    tell("Accessible.checked", checked_);
}

}  // namespace touch
