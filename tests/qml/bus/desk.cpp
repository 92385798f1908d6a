#include "bus/desk.hpp"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusReply>
#include <QDeadlineTimer>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QThread>

namespace bus_tests {

namespace {

// A machine whose processors are all taken needs seconds for each of these.
constexpr int long_enough = 60'000;  // ms

const QString bus_name = QStringLiteral("desk bus");

// Where Debian keeps what is started by others and not by hand.
QString launcher() {
    return QStandardPaths::findExecutable(
        QStringLiteral("at-spi-bus-launcher"),
        {QStringLiteral("/usr/libexec"), QStringLiteral("/usr/lib/at-spi2-core"),
         QStringLiteral("/usr/libexec/at-spi2")});
}

// The first line that a process writes.
QString first_line_of(QProcess& process) {
    const QDeadlineTimer deadline(long_enough);
    while (!process.canReadLine() && !deadline.hasExpired() &&
           process.state() != QProcess::NotRunning)
        process.waitForReadyRead(200);
    return QString::fromUtf8(process.readLine()).trimmed();
}

void end(QProcess& process) {
    if (process.state() == QProcess::NotRunning) return;
    process.terminate();
    if (process.waitForFinished(5'000)) return;
    process.kill();
    process.waitForFinished(5'000);
}

// Nothing of the person whose machine it is: neither files nor settings nor buses.
QProcessEnvironment bare_environment(const QString& folder) {
    auto bare = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"XDG_RUNTIME_DIR", "XDG_CONFIG_HOME", "XDG_DATA_HOME",
                             "XDG_CACHE_HOME", "XDG_STATE_HOME", "HOME"})
        bare.insert(QString::fromLatin1(name), folder);
    for (const char* name : {"WAYLAND_DISPLAY", "AT_SPI_BUS_ADDRESS", "XAUTHORITY",
                             "DBUS_SESSION_BUS_ADDRESS", "QT_ACCESSIBILITY", "NO_AT_BRIDGE"})
        bare.remove(QString::fromLatin1(name));
    bare.insert(QStringLiteral("GSETTINGS_BACKEND"), QStringLiteral("memory"));
    bare.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
    bare.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
    bare.insert(QStringLiteral("QT_LINUX_ACCESSIBILITY_ALWAYS_ON"), QStringLiteral("1"));
    bare.insert(QStringLiteral("QT_QUICK_BACKEND"), QStringLiteral("software"));
    return bare;
}

}  // namespace

QString Desk::lacks() {
    QStringList missing;
    for (const char* name : {"Xvfb", "dbus-daemon"})
        if (QStandardPaths::findExecutable(QString::fromLatin1(name)).isEmpty())
            missing << QString::fromLatin1(name);
    if (launcher().isEmpty()) missing << QStringLiteral("at-spi-bus-launcher");
    return missing.join(QStringLiteral(", "));
}

Desk::Desk() : environment_(bare_environment(folder_.path())) {
    if (!folder_.isValid())
        trouble_ = QStringLiteral("no folder of its own");
    else if (!start_display())
        trouble_ = QStringLiteral("no display: ") + QString::fromUtf8(display_.readAll());
    else if (!start_own_bus())
        trouble_ = QStringLiteral("no message bus");
    else if (!start_accessibility())
        trouble_ = QStringLiteral("no accessibility bus: ") +
                   QString::fromUtf8(launcher_.readAllStandardError());
}

Desk::~Desk() {
    QDBusConnection::disconnectFromBus(bus_name);
    end(launcher_);
    end(own_bus_);
    end(display_);
}

bool Desk::start_display() {
    display_.setProcessEnvironment(environment_);
    display_.start(QStringLiteral("Xvfb"),
                   {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                    QStringLiteral("0"), QStringLiteral("1280x900x24"), QStringLiteral("-nolisten"),
                    QStringLiteral("tcp"), QStringLiteral("-noreset")});
    const QString number = first_line_of(display_);
    environment_.insert(QStringLiteral("DISPLAY"), QStringLiteral(":") + number);
    return !number.isEmpty();
}

bool Desk::start_own_bus() {
    own_bus_.setProcessEnvironment(environment_);
    const QStringList dbus{QStringLiteral("--session"), QStringLiteral("--nofork"),
                           QStringLiteral("--nopidfile"), QStringLiteral("--print-address"),
                           QStringLiteral("--address=unix:dir=") + folder_.path()};
    own_bus_.start(QStringLiteral("dbus-daemon"), dbus);
    const QString address = first_line_of(own_bus_);
    environment_.insert(QStringLiteral("DBUS_SESSION_BUS_ADDRESS"), address);
    return !address.isEmpty() && QDBusConnection::connectToBus(address, bus_name).isConnected();
}

// It tells every program that starts that a reader runs, as on the desk of a person who has one. The
// launcher answers once it is on the message bus, which it does not tell anybody.
bool Desk::start_accessibility() {
    launcher_.setProcessEnvironment(environment_);
    launcher_.start(launcher(), {QStringLiteral("--launch-immediately"), QStringLiteral("--a11y=1"),
                                 QStringLiteral("--screen-reader=1")});
    const auto own = QDBusConnection(bus_name);
    // Asking must not start another launcher, which would know of no reader.
    const auto question = [](const QString& interface, const QString& method) {
        auto one = QDBusMessage::createMethodCall(
            QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"), interface, method);
        one.setAutoStartService(false);
        return one;
    };
    auto is_on = question(QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Get"));
    is_on.setArguments({QStringLiteral("org.a11y.Status"), QStringLiteral("IsEnabled")});
    const QDeadlineTimer deadline(long_enough);
    bool on = false;
    while (!on && !deadline.hasExpired()) {
        const QDBusReply<QString> address =
            own.call(question(QStringLiteral("org.a11y.Bus"), QStringLiteral("GetAddress")));
        if (address.isValid()) bus_ = address.value();
        const QDBusReply<QDBusVariant> told = own.call(is_on);
        on = !bus_.isEmpty() && told.isValid() && told.value().variant().toBool();
        if (!on) QThread::msleep(50);
    }
    return on;
}

}  // namespace bus_tests
