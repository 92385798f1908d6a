#include "bus/program.hpp"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QThread>

namespace bus_tests {

namespace {

constexpr int pause = 100;  // ms between two looks

}  // namespace

bool waits_until(const std::function<bool()>& holds, int longest) {
    const QDeadlineTimer deadline(longest);
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

void Program::open(const QString& scenario, const QString& size) {
    QFile shipped(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/") + scenario);
    ASSERT_TRUE(shipped.open(QIODevice::ReadOnly)) << scenario.toStdString();
    open_text(shipped.readAll(), size);
}

void Program::open_text(const QByteArray& text, const QString& size) {
    file_ = desk_->folder() + QStringLiteral("/opened.toml");
    QFile copy(file_);
    ASSERT_TRUE(copy.open(QIODevice::WriteOnly) && copy.write(text) == text.size());
    copy.close();
    start({file_}, size);
}

void Program::start(const QStringList& files, const QString& size) {
    program_.setProcessEnvironment(desk_->environment());
    program_.setProcessChannelMode(QProcess::ForwardedChannels);
    program_.start(QStringLiteral(CANDLEMARK_TOUCH),
                   QStringList{QStringLiteral("--language"), QStringLiteral("en"),
                               QStringLiteral("--size"), size} +
                       files);
    const bool there = waits_until([this] {
        for (const Item& one : reader_->programs()) {
            if (reader_->read_alone(one).name != QStringLiteral("candlemark-touch")) continue;
            for (const Item& part : reader_->children(one)) {
                const Told told = reader_->read_alone(part);
                if (told.role != Role::frame || !told.is(State::showing)) continue;
                window_ = part;
                return true;
            }
        }
        return false;
    });
    ASSERT_TRUE(there) << "the program has not come onto the bus; "
                       << (program_.state() == QProcess::Running ? "it runs" : "it has ended");
}

Told Program::part(Role role, const QString& name) {
    std::optional<Told> one;
    EXPECT_TRUE(waits_until([&] { return (one = found(window(), role, name)).has_value(); }))
        << "no part of role " << static_cast<unsigned>(role) << " named " << name.toStdString();
    return one.value_or(Told{});
}

// Found anew each time it is tried: what is made again after a change is another item on the bus.
void Program::act(Role role, const QString& name, const QString& action) {
    QStringList actions;
    EXPECT_TRUE(waits_until([&] {
        const auto one = found(window(), role, name);
        if (one) actions = one->actions;
        return one && reader_->act(one->item, action);
    })) << name.toStdString()
        << " cannot be acted on; it has of actions only "
        << actions.join(QStringLiteral(", ")).toStdString();
}

void Program::put(Role role, const QString& name, double value) {
    EXPECT_TRUE(waits_until([&] {
        const auto one = found(window(), role, name);
        return one && reader_->set_value(one->item, value);
    })) << name.toStdString()
        << " takes no value";
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
