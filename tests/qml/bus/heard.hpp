// What a program tells the accessibility bus of its own accord.
#pragma once

#include <QDBusMessage>
#include <QList>
#include <QObject>
#include <QString>

#include "bus/reader.hpp"

namespace bus_tests {

struct Event {
    QString kind;    // as "PropertyChange", "StateChanged", "Announcement"
    QString detail;  // as "accessible-name", "checked"
    int number = 0;  // 1 and 0 of a state
    QString text;    // of an announcement
    Item of;
};

class Heard : public QObject {
    Q_OBJECT

  public:
    // Hears all that is told while it lives.
    explicit Heard(const Reader& reader);

    [[nodiscard]] const QList<Event>& events() const { return events_; }
    void forget() { events_.clear(); }

  public slots:
    void hear(const QDBusMessage& told);

  private:
    QList<Event> events_;
};

}  // namespace bus_tests
