// Kills editing programs, two windows at a time, at random moments, and looks at what is left. The
// same program is the one that edits, when it is started with --edit.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <random>
#include <thread>

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>
#include <gtest/gtest.h>

#include "models/file/kept_versions.hpp"
#include "models/file/kept_work.hpp"
#include "scenario/file/read.hpp"

namespace {

using touch::KeptWork;
using touch::ScenarioDocument;

constexpr int usual_kills = 96;  // CANDLEMARK_KILLS=300 makes more of them
constexpr int at_once = 4;
constexpr int between_edits = 20;  // ms at least
// Edits before the last, which take two seconds at least. Counted in edits and not in seconds, the
// test does not depend on how much of the processor the editing program is given.
constexpr int may_be_lost = 2000 / between_edits;
constexpr int edits_to_a_save = 25;

const QStringList windows{QStringLiteral("one"), QStringLiteral("two")};

int kills_wanted() {
    const int wanted = qEnvironmentVariableIntValue("CANDLEMARK_KILLS");
    return wanted > 0 ? wanted : usual_kills;
}

// Where two windows edit: one file, or two of the same bare name.
struct Place {
    QString kept;
    QStringList files;  // of each window
    QString log(const QString& window) const { return kept + QStringLiteral("/log-") + window; }
};

void take_up(KeptWork& keeper, ScenarioDocument& document, const QString& kept,
             const QString& file) {
    keeper.set_folder(kept);
    keeper.set_document(&document);
    const QUrl url = QUrl::fromLocalFile(file);
    if (!keeper.resume(url)) document.open(url);
}

// Edits until it is killed, numbered in the title: "one 17". Each edit stands in a log the moment
// it was made. Where the other window was faster with saving, every second time this one takes its
// place and every second time takes up what it wrote.
int edit_forever(const QStringList& words) {
    const QString& window = words[2];
    ScenarioDocument document;
    KeptWork keeper;
    take_up(keeper, document, words[3], words[4]);
    QFile log(words[3] + QStringLiteral("/log-") + window);
    if (!log.open(QIODevice::Append | QIODevice::Unbuffered)) return 1;
    int number = words[5].toInt();
    int asked = 0;
    QObject::connect(&document, &ScenarioDocument::changedOutside, [&] {
        if (++asked % 2 == 0)
            document.takeTheirs();
        else
            document.keepMine();
    });
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        ++number;
        document.put(QStringLiteral("title"), QStringLiteral("%1 %2").arg(window).arg(number));
        log.write(QByteArray::number(number) + '\n');
        if (number % edits_to_a_save == 0) document.save();
    });
    timer.start(between_edits);
    return QCoreApplication::exec();
}

// The last edit that was made; 0 for none.
int last_edit(const QString& log_path) {
    QFile log(log_path);
    if (!log.open(QIODevice::ReadOnly)) return 0;
    QByteArray whole = log.readAll();
    whole.truncate(whole.lastIndexOf('\n'));  // a line that was being written does not count
    return whole.mid(whole.lastIndexOf('\n') + 1).toInt();
}

QByteArray bytes_in(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// Window and number of the edit a text was left at.
std::pair<QString, int> edit_in(const QString& text) {
    const QString title = text.section(QStringLiteral("title = \""), 1).section('"', 0, 0);
    return {title.section(' ', 0, 0), title.section(' ', 1).toInt()};
}

struct Seen {
    int kills = 0;
    int lost_too_much = 0;
    int not_offered = 0;
    int unreadable = 0;
    int too_many_versions = 0;
    std::map<QString, int> edits;  // the newest of each window that is there to be had
};

void note(std::map<QString, int>& newest, const QString& text) {
    const auto [window, number] = edit_in(text);
    newest[window] = std::max(newest[window], number);
}

// Everything a person can have again: what a window takes up, what it offers, the file, its
// versions. What was made more than two seconds before the kill has to be among it.
void look_at_what_is_left(const Place& place, Seen& seen) {
    std::map<QString, int> newest;
    for (int which = 0; which < windows.size(); ++which) {
        const QString& file = place.files[which];
        ScenarioDocument document;
        KeptWork keeper;
        take_up(keeper, document, place.kept, file);
        // A window may go on from what the other left: that is then on its way back.
        for (const QString& text : document.work().texts)
            note(newest, text);
        // Taken up unasked, it is told.
        seen.not_offered += document.changed() && keeper.told().isEmpty() ? 1 : 0;
        const QVariantList left = keeper.left();
        seen.not_offered += !left.isEmpty() && keeper.told().isEmpty() ? 1 : 0;
        for (const QVariant& piece : left) {
            const QString path =
                place.kept + QStringLiteral("/work/") + piece.toMap()["piece"].toString();
            const QByteArray body = bytes_in(path).split('\n').value(1);
            const QJsonObject work = QJsonDocument::fromJson(body).object();
            for (const QJsonValue text : work["texts"].toArray())
                note(newest, text.toString());
        }
        const auto versions = touch::versions_of(place.kept, file);
        for (const auto& version : versions)
            note(newest, QString::fromUtf8(bytes_in(version.path)));
        const QByteArray written = bytes_in(file);
        note(newest, QString::fromUtf8(written));
        const bool readable =
            scenario::read_scenario(written.toStdString(), std::string()).has_value() &&
            scenario::read_scenario(document.text().toStdString(), std::string()).has_value();
        seen.unreadable += readable ? 0 : 1;
        seen.too_many_versions += versions.size() > touch::most_versions ? 1 : 0;
    }
    for (const QString& window : windows) {
        const int due = std::max(seen.edits[window], last_edit(place.log(window)) - may_be_lost);
        seen.lost_too_much += newest[window] < due ? 1 : 0;
        seen.edits[window] = std::max(newest[window], seen.edits[window]);
        QFile::remove(place.log(window));
    }
}

void wait_for(const QString& path) {
    for (int moments = 0; moments < 2000 && !QFile::exists(path); ++moments)
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
}

void copy_scenario(const QString& to) {
    QFile::copy(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml"), to);
    QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner);
}

Seen edit_and_kill(int which, int times) {
    Seen seen;
    const QTemporaryDir folder;
    Place place{.kept = folder.filePath(QStringLiteral("kept")), .files = {}};
    for (const QString& sub : {place.kept, folder.filePath(QStringLiteral("one")),
                               folder.filePath(QStringLiteral("two"))})
        QDir().mkpath(sub);
    const QString mine = folder.filePath(QStringLiteral("one/mine.toml"));
    const QString theirs = which % 2 == 0 ? mine : folder.filePath(QStringLiteral("two/mine.toml"));
    place.files = {mine, theirs};
    copy_scenario(mine);
    if (theirs != mine) copy_scenario(theirs);
    std::mt19937 random(static_cast<unsigned>(which) + 1);
    std::uniform_int_distribution<int> lives(20, 3500);  // ms
    while (seen.kills < times) {
        QProcess editing[2];
        for (int window = 0; window < windows.size(); ++window) {
            editing[window].start(
                QCoreApplication::applicationFilePath(),
                {QStringLiteral("--edit"), windows[window], place.kept, place.files[window],
                 QString::number(seen.edits[windows[window]])});
            if (!editing[window].waitForStarted()) return seen;
        }
        // One in four may be killed while it starts; the others have begun to edit.
        if (seen.kills % 4 != 0)
            for (const QString& window : windows)
                wait_for(place.log(window));
        for (QProcess& program : editing) {
            std::this_thread::sleep_for(std::chrono::milliseconds(lives(random) / 2));
            program.kill();  // SIGKILL
            program.waitForFinished();
            if (program.exitStatus() != QProcess::CrashExit) return seen;
            ++seen.kills;
        }
        look_at_what_is_left(place, seen);
    }
    return seen;
}

TEST(killed_at_random_moments, nothing_older_than_two_seconds_is_lost_and_the_file_stays_readable) {
    const int kills = kills_wanted();
    std::vector<Seen> all(at_once);
    std::vector<std::thread> threads;
    for (int which = 0; which < at_once; ++which) {
        threads.emplace_back([&all, which, kills] {
            all[static_cast<std::size_t>(which)] = edit_and_kill(which, kills / at_once);
        });
    }
    for (std::thread& thread : threads)
        thread.join();
    Seen sum;
    int edits = 0;
    for (const Seen& one : all) {
        sum.kills += one.kills;
        sum.lost_too_much += one.lost_too_much;
        sum.not_offered += one.not_offered;
        sum.unreadable += one.unreadable;
        sum.too_many_versions += one.too_many_versions;
        for (const auto& [window, number] : one.edits)
            edits += number;
    }
    std::printf("killed %d times over %d edits of two windows\n", sum.kills, edits);
    EXPECT_GE(sum.kills, kills);
    EXPECT_GT(edits, kills);
    EXPECT_EQ(sum.lost_too_much, 0);
    EXPECT_EQ(sum.not_offered, 0);
    EXPECT_EQ(sum.unreadable, 0);
    EXPECT_EQ(sum.too_many_versions, 0);
}

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() == 6 && words[1] == QStringLiteral("--edit")) return edit_forever(words);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
