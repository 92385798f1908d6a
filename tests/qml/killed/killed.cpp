// Kills an editing program at random moments, and looks at what is left. The same program is the
// one that edits, when it is started with --edit FOLDER FILE.
#include <chrono>
#include <cstdio>
#include <random>
#include <thread>

#include "models/kept_work.hpp"
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>
#include <gtest/gtest.h>

#include "scenario/read.hpp"

namespace {

using touch::KeptWork;
using touch::ScenarioDocument;

constexpr int kills = 200;
constexpr int at_once = 8;
constexpr int between_edits = 20;  // ms at least
// Edits before the last, which take two seconds at least. Counted in edits and not in seconds, the
// test does not hang on how much of the processor the editing program is given.
constexpr int may_be_lost = 2000 / between_edits;
constexpr int edits_to_a_save = 25;

// Edits are numbered in the title: "edit 17".
int edit_in(const ScenarioDocument& document) {
    return document.title().section(QLatin1Char(' '), 1).toInt();
}

void take_up(KeptWork& keeper, ScenarioDocument& document, const QString& folder,
             const QString& file) {
    keeper.set_folder(folder);
    keeper.set_document(&document);
    const QUrl url = QUrl::fromLocalFile(file);
    if (!keeper.resume(url)) document.open(url);
}

// Edits until it is killed; each edit stands in a log the moment it was made.
int edit_for_ever(const QString& folder, const QString& file) {
    ScenarioDocument document;
    KeptWork keeper;
    take_up(keeper, document, folder, file);
    QFile log(folder + QStringLiteral("/log"));
    if (!log.open(QIODevice::Append | QIODevice::Unbuffered)) return 1;
    int number = edit_in(document);
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, [&] {
        ++number;
        document.put(QStringLiteral("title"), QStringLiteral("edit %1").arg(number));
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

struct Seen {
    int kills = 0;
    int lost_too_much = 0;
    int unreadable = 0;
    int too_many_versions = 0;
    int edits = 0;
};

// What was made more than two seconds before the kill has to be there, and what was there after the
// kill before.
void look_at_what_is_left(const QString& folder, const QString& file, Seen& seen) {
    ScenarioDocument document;
    KeptWork keeper;
    take_up(keeper, document, folder, file);
    QFile written(file);
    const bool readable =
        written.open(QIODevice::ReadOnly) &&
        scenario::read_scenario(written.readAll().toStdString(), std::string()).has_value() &&
        scenario::read_scenario(document.text().toStdString(), std::string()).has_value();
    const int versions =
        static_cast<int>(QDir(folder + QStringLiteral("/versions")).entryList(QDir::Files).size());
    const QString log = folder + QStringLiteral("/log");
    const int due = std::max(seen.edits, last_edit(log) - may_be_lost);
    QFile::remove(log);
    ++seen.kills;
    seen.unreadable += readable ? 0 : 1;
    seen.lost_too_much += edit_in(document) < due ? 1 : 0;
    seen.too_many_versions += versions > KeptWork::versions ? 1 : 0;
    seen.edits = edit_in(document);  // what the next one goes on from, and may not fall behind
}

void wait_for(const QString& path) {
    for (int moments = 0; moments < 2000 && !QFile::exists(path); ++moments)
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
}

Seen edit_and_kill(int which, int times) {
    Seen seen;
    const QTemporaryDir place;
    const QString folder = place.filePath(QStringLiteral("work"));
    const QString file = place.filePath(QStringLiteral("mine.toml"));
    QDir().mkpath(folder);
    QFile::copy(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml"), file);
    QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
    std::mt19937 random(static_cast<unsigned>(which) + 1);
    std::uniform_int_distribution<int> lives(20, 3500);  // ms
    for (int kill = 0; kill < times; ++kill) {
        QProcess editing;
        editing.start(QCoreApplication::applicationFilePath(),
                      {QStringLiteral("--edit"), folder, file});
        if (!editing.waitForStarted()) return seen;
        // One in four may be killed while it starts; the others have begun to edit.
        if (kill % 4 != 0) wait_for(folder + QStringLiteral("/log"));
        std::this_thread::sleep_for(std::chrono::milliseconds(lives(random)));
        editing.kill();  // SIGKILL
        editing.waitForFinished();
        if (editing.exitStatus() != QProcess::CrashExit) return seen;
        look_at_what_is_left(folder, file, seen);
    }
    return seen;
}

TEST(killed_at_random_moments, nothing_older_than_two_seconds_is_lost_and_the_file_stays_readable) {
    std::vector<Seen> all(at_once);
    std::vector<std::thread> threads;
    for (int which = 0; which < at_once; ++which) {
        threads.emplace_back([&all, which] {
            all[static_cast<std::size_t>(which)] = edit_and_kill(which, kills / at_once);
        });
    }
    for (std::thread& thread : threads)
        thread.join();
    Seen sum;
    for (const Seen& one : all) {
        sum.kills += one.kills;
        sum.lost_too_much += one.lost_too_much;
        sum.unreadable += one.unreadable;
        sum.too_many_versions += one.too_many_versions;
        sum.edits += one.edits;
    }
    std::printf("killed %d times over %d edits\n", sum.kills, sum.edits);
    EXPECT_EQ(sum.kills, kills);
    EXPECT_GT(sum.edits, kills);
    EXPECT_EQ(sum.lost_too_much, 0);
    EXPECT_EQ(sum.unreadable, 0);
    EXPECT_EQ(sum.too_many_versions, 0);
}

}  // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() == 4 && words[1] == QStringLiteral("--edit"))
        return edit_for_ever(words[2], words[3]);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
