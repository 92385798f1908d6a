#include "models/spoken/announced.hpp"

#include <QAccessible>

namespace touch {

namespace {

constexpr int moment = 300;  // ms, of a button that is pressed again and again: of our own choice

}  // namespace

Announced::Announced(QObject* parent) : QObject(parent) {
    standing_still_.setSingleShot(true);
    standing_still_.setInterval(moment);
    connect(&standing_still_, &QTimer::timeout, this, &Announced::announce);
    connect(this, &Announced::changed, &standing_still_, qOverload<>(&QTimer::start));
}

void Announced::announce() {
    if (!settled_ || !item_ || !item_->isVisible() || text_.isEmpty() || text_ == told_) return;
    told_ = text_;
    if (!QAccessible::isActive()) return;
#if QT_VERSION >= QT_VERSION_CHECK(6, 8, 0)
    QAccessibleAnnouncementEvent event(item_, text_);
#else
    // Before there were announcements: a reader reads out a notification that comes into sight.
    QAccessibleEvent event(item_, QAccessible::ObjectShow);
#endif
    QAccessible::updateAccessibility(&event);
}

}  // namespace touch
