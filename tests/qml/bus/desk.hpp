// A desk of its own for a program to be listened to at: a display without a screen, a message bus
// and an accessibility bus, none of which anything else on this machine sees.
#pragma once

#include <QProcess>
#include <QProcessEnvironment>
#include <QString>
#include <QTemporaryDir>

namespace bus_tests {

class Desk {
  public:
    Desk();
    ~Desk();
    Desk(const Desk&) = delete;
    Desk& operator=(const Desk&) = delete;

    // What this machine lacks for a desk, as names of programs; empty when it has all.
    static QString lacks();

    // Why it is not set up; empty when it is.
    [[nodiscard]] QString trouble() const { return trouble_; }
    // Of a program that is started at this desk.
    [[nodiscard]] QProcessEnvironment environment() const { return environment_; }
    // By which a reader joins the accessibility bus.
    [[nodiscard]] QString bus() const { return bus_; }
    // A folder of its own that goes with the desk.
    [[nodiscard]] QString folder() const { return folder_.path(); }

  private:
    bool start_display();
    bool start_own_bus();
    bool start_accessibility();

    QTemporaryDir folder_;
    QProcess display_;
    QProcess own_bus_;
    QProcess launcher_;
    QProcessEnvironment environment_;
    QString bus_;
    QString trouble_;
};

}  // namespace bus_tests
