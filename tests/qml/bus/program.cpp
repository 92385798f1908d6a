#include "bus/program.hpp"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QThread>

namespace bus_tests {

namespace {

// For one thing to come about on a machine whose processors are all taken.
constexpr int patience = 60'000;  // ms
constexpr int pause = 100;        // ms between two looks

}  // namespace

bool waits_until(const std::function<bool()>& holds) {
    const QDeadlineTimer deadline(patience);
    while (!holds()) {
        if (deadline.hasExpired()) return false;
        QCoreApplication::processEvents();
        QThread::msleep(pause);
    }
    return true;
}

void Program::SetUp() {
    const QString lacks = Desk::lacks();
    if (!lacks.isEmpty()) GTEST_SKIP() << "not installed: " << lacks.toStdString();
    desk_ = std::make_unique<Desk>();
    ASSERT_EQ(desk_->trouble().toStdString(), "");
    reader_ = std::make_unique<Reader>(desk_->bus());
    ASSERT_TRUE(reader_->bus().isConnected());
    heard_ = std::make_unique<Heard>(*reader_);
}

void Program::TearDown() {
    if (program_.state() != QProcess::NotRunning) {
        program_.terminate();
        if (!program_.waitForFinished(10'000)) program_.kill();
        program_.waitForFinished(10'000);
    }
    heard_.reset();
    reader_.reset();
    desk_.reset();
}

void Program::open(const QString& scenario, const QStringList& options) {
    file_ = desk_->folder() + QLatin1Char('/') + scenario;
    ASSERT_TRUE(QFile::copy(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/") + scenario, file_));
    QFile::setPermissions(file_, QFile::ReadOwner | QFile::WriteOwner);
    program_.setProcessEnvironment(desk_->environment());
    program_.setProcessChannelMode(QProcess::ForwardedChannels);
    program_.start(QStringLiteral(CANDLEMARK_TOUCH),
                   QStringList{QStringLiteral("--language"), QStringLiteral("en"),
                               QStringLiteral("--size"), QStringLiteral("1280x900")} +
                       options + QStringList{file_});
    const bool there = waits_until([this] {
        for (const Item& one : reader_->programs()) {
            if (reader_->read_alone(one).name != QStringLiteral("candlemark-touch")) continue;
            const Told told = reader_->read(one);
            if (told.parts.isEmpty()) continue;
            window_ = told.parts.constFirst().item;
            return true;
        }
        return false;
    });
    ASSERT_TRUE(there) << "the program has not come onto the bus";
}

Told Program::part(Role role, const QString& name) {
    std::optional<Told> one;
    EXPECT_TRUE(waits_until([&] { return (one = found(window(), role, name)).has_value(); }))
        << "no part of role " << static_cast<unsigned>(role) << " named " << name.toStdString();
    return one.value_or(Told{});
}

void Program::act(Role role, const QString& name, const QString& action) {
    const Told one = part(role, name);
    EXPECT_TRUE(reader_->act(one.item, action))
        << name.toStdString() << " has of actions only "
        << one.actions.join(QStringLiteral(", ")).toStdString();
}

Told Program::page(const QString& name) {
    act(Role::page_tab, name, QStringLiteral("Press"));
    Told told;
    EXPECT_TRUE(waits_until([&] {
        told = window();
        const auto entry = found(told, Role::page_tab, name);
        return entry && entry->is(State::selected);
    })) << "the entry "
        << name.toStdString() << " does not tell that its page is open";
    return told;
}

QByteArray Program::file_text() const {
    QFile file(file_);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace bus_tests
