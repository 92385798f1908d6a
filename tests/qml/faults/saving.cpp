// What the touch program keeps and saves, while every call to the system may fail: each file is old
// or new, and nothing counts as saved that is not.
#include <cerrno>
#include <cstdio>
#include <functional>
#include <map>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "faults/failing_calls.hpp"
#include "models/file/kept_versions.hpp"
#include "models/file/kept_work.hpp"
#include "models/words/look.hpp"
#include "print/print_file.hpp"

namespace {

using failing::How;
using touch::KeptWork;
using touch::ScenarioDocument;

const QString a_scenario = QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml");

QByteArray bytes_in(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class Faults : public testing::Test {
  protected:
    void SetUp() override {
        kept = folder.filePath("kept");
        file = folder.filePath("mine.toml");
        ASSERT_TRUE(QFile::copy(a_scenario, file));
        QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner);
        keeper.set_folder(kept);
        keeper.set_document(&document);
        ASSERT_TRUE(document.open(QUrl::fromLocalFile(file)));
    }
    // Every call of an act fails in turn, with each error, once and from then on.
    //   takes  looked: looks at what is left; `failed` says whether any call did
    void fail_every_call(const std::function<void()>& ready, const std::function<bool()>& act,
                         const std::function<void(bool done)>& looked) {
        for (const int error : {EIO, ENOSPC, EACCES}) {
            for (const How how : {How::once, How::ever_after}) {
                for (long n = 1;; ++n) {
                    ready();
                    failing::begin(n, error, how);
                    const bool done = act();
                    const failing::Calls calls = failing::end();
                    looked(done);
                    for (const auto& [name, times] : calls.failed) {
                        failed[name] += times;
                        injected += times;
                    }
                    if (calls.made < n) {
                        EXPECT_TRUE(done) << "nothing failed";
                        break;
                    }
                }
            }
        }
    }
    void TearDown() override {
        std::printf("%ld faults injected:", injected);
        for (const auto& [name, times] : failed)
            std::printf(" %s %d", name.c_str(), times);
        std::printf("\n");
    }
    // What a process of its own exits with; -1 when a signal ended it.
    static int exit_of(const std::function<int()>& doing) {
        const pid_t child = fork();
        if (child == 0) _exit(doing());
        int status = 0;
        waitpid(child, &status, 0);
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }

    QTemporaryDir folder;
    QString kept;
    QString file;
    ScenarioDocument document;
    KeptWork keeper;
    std::map<std::string, int> failed;
    long injected = 0;
};

TEST_F(Faults, a_saved_file_is_old_or_new_and_not_saved_says_so) {
    QByteArray before;
    int edit = 0;
    fail_every_call(
        [&] {
            before = bytes_in(file);
            document.put("title", QString("edit %1").arg(++edit));
        },
        [&] { return document.save(); },
        [&](bool done) {
            const QByteArray now = bytes_in(file);
            const QByteArray shown = document.text().toUtf8();
            EXPECT_TRUE(now == before || now == shown) << edit;
            EXPECT_TRUE(!done || now == shown) << edit;
            EXPECT_EQ(done, !document.changed()) << edit;
            EXPECT_TRUE(done || !document.trouble().isEmpty()) << edit;
            // What gave way is there to be had again.
            const auto versions = touch::versions_of(kept, file);
            if (done) {
                EXPECT_FALSE(versions.isEmpty());
            }
        });
    EXPECT_GT(injected, 200);
}

TEST_F(Faults, no_version_is_lost_by_one_that_cannot_be_kept) {
    for (int version = 0; version < touch::most_versions; ++version)
        ASSERT_TRUE(touch::keep_version(kept, file, QByteArray::number(version)));
    int next = touch::most_versions;
    QByteArrayList before;
    const auto held = [&] {
        QByteArrayList all;
        for (const auto& version : touch::versions_of(kept, file))
            all << bytes_in(version.path);
        return all;
    };
    fail_every_call([&] { before = held(); },
                    [&] { return touch::keep_version(kept, file, QByteArray::number(++next)); },
                    [&](bool done) {
                        const QByteArrayList now = held();
                        EXPECT_TRUE(now == before || now.mid(1) == before.mid(0, now.size() - 1));
                        EXPECT_TRUE(!done || now.first() == QByteArray::number(next));
                    });
}

TEST_F(Faults, kept_work_is_that_of_before_or_of_now_and_what_is_not_kept_is_told) {
    int edit = 0;
    const auto left = [&] {
        QByteArrayList pieces;
        const QDir work(kept + "/work");
        for (const QString& name : work.entryList({"*.json"}, QDir::Files))
            pieces << bytes_in(work.filePath(name));
        return pieces;
    };
    QByteArrayList before;
    ASSERT_TRUE(keeper.keep());
    fail_every_call(
        [&] {
            before = left();
            document.put("title", QString("edit %1").arg(++edit));
        },
        [&] { return keeper.keep(); },
        [&](bool done) {
            const QByteArrayList now = left();
            ASSERT_EQ(now.size(), 1);
            const bool new_one = now.first().contains("edit " + QByteArray::number(edit) + "\\\"");
            EXPECT_TRUE(new_one || now == before);
            EXPECT_TRUE(!done || new_one);
            EXPECT_EQ(done, keeper.trouble().isEmpty());
        });
}

TEST_F(Faults, another_file_is_opened_only_where_the_work_is_kept) {
    const QUrl other = QUrl::fromLocalFile(folder.filePath("other.toml"));
    ASSERT_TRUE(QFile::copy(a_scenario, other.toLocalFile()));
    int edit = 0;
    fail_every_call(
        [&] {
            // What was left before would only be looked through again and again.
            QDir pieces(kept + "/work");
            for (const QString& name : pieces.entryList({"*.json"}, QDir::Files))
                pieces.remove(name);
            if (!document.path().endsWith("mine.toml")) document.open(QUrl::fromLocalFile(file));
            document.put("title", QString("edit %1").arg(++edit));
        },
        [&] { return document.open(other); },
        [&](bool done) {
            const QByteArray words = "edit " + QByteArray::number(edit) + "\\\"";
            const QDir work(kept + "/work");
            bool on_disk = false;
            for (const QString& name : work.entryList({"*.json"}, QDir::Files))
                on_disk = on_disk || bytes_in(work.filePath(name)).contains(words);
            EXPECT_TRUE(on_disk || document.title() == QString("edit %1").arg(edit)) << edit;
            EXPECT_TRUE(done || !document.trouble().isEmpty()) << edit;
        });
}

TEST_F(Faults, a_sheet_of_paper_and_the_look_are_old_or_new) {
    const QString paper = folder.filePath("card.pdf");
    const QByteArray old_sheet = "old";
    const QByteArray new_sheet(100'000, 'p');
    fail_every_call([&] { ASSERT_TRUE(printing::write_file(old_sheet, paper).saved()); },
                    [&] { return printing::write_file(new_sheet, paper).saved(); },
                    [&](bool done) {
                        const QByteArray now = bytes_in(paper);
                        EXPECT_TRUE(now == new_sheet || (!done && now == old_sheet)) << now.size();
                    });
    touch::Look look(nullptr);
    look.keepIn(kept);
    bool light = false;
    fail_every_call([&] { light = !light; },
                    [&] {
                        look.set_theme(light ? "light" : "dark");
                        return look.trouble().isEmpty();
                    },
                    [&](bool done) {
                        const auto object =
                            QJsonDocument::fromJson(bytes_in(kept + "/look.json")).object();
                        const QString theme = object["theme"].toString();
                        EXPECT_TRUE(theme == "light" || theme == "dark");
                        EXPECT_TRUE(!done || (theme == "light") == light);
                    });
}

TEST_F(Faults, a_quota_costs_nothing_and_is_told) {
    document.put("title", "edit 1");
    ASSERT_TRUE(keeper.keep());
    const QByteArray before = bytes_in(file);
    const int exit = exit_of([&] {
        const rlimit limit = {.rlim_cur = 100, .rlim_max = 100};
        setrlimit(RLIMIT_FSIZE, &limit);
        document.put("title", "edit 2");
        const bool saved = document.save();
        const bool kept_now = keeper.keep();
        return !saved && !kept_now && document.changed() && document.trouble().contains("larger") &&
                       keeper.trouble().contains("larger")
                   ? 0
                   : 1;
    });
    EXPECT_EQ(exit, 0);
    EXPECT_EQ(bytes_in(file), before);
}

TEST_F(Faults, a_full_disk_under_file_and_kept_work_costs_nothing_and_is_told) {
    constexpr int no_disk = 77;
    const int exit = exit_of([&] {
        const QString disk = folder.filePath("disk");
        QDir().mkpath(disk);
        const int spaces = CLONE_NEWNS | (geteuid() == 0 ? 0 : CLONE_NEWUSER);
        if (unshare(spaces) != 0 ||
            mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0 ||
            mount("none", qPrintable(disk), "tmpfs", 0, "size=256k") != 0)
            return no_disk;
        const QString there = disk + "/mine.toml";
        QFile::copy(a_scenario, there);
        QFile::setPermissions(there, QFile::ReadOwner | QFile::WriteOwner);
        keeper.set_folder(disk + "/kept");
        if (!document.open(QUrl::fromLocalFile(there))) return 2;
        document.put("title", "edit 1");
        if (!keeper.keep()) return 3;
        QFile filler(disk + "/filler");
        if (!filler.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) return 4;
        while (filler.write(QByteArray(512, 'f')) > 0) {
        }
        const QByteArray before = bytes_in(there);
        document.put("title", "edit 2");
        if (document.save() || !document.changed()) return 5;
        if (!document.trouble().contains("full")) return 6;
        if (bytes_in(there) != before || before.isEmpty()) return 7;
        if (keeper.keep() || !keeper.trouble().contains("full")) return 8;
        if (document.open(QUrl::fromLocalFile(a_scenario))) return 9;
        if (!document.text().contains("edit 2")) return 10;
        // With room again, all is well.
        filler.resize(0);
        return document.save() && keeper.keep() && keeper.trouble().isEmpty() ? 0 : 11;
    });
    if (exit == no_disk) GTEST_SKIP() << "no small disk can be made here";
    EXPECT_EQ(exit, 0);
}

TEST_F(Faults, a_folder_that_vanished_is_told_and_the_work_is_still_there) {
    QDir().mkpath(folder.filePath("gone"));
    const QString there = folder.filePath("gone/mine.toml");
    ASSERT_TRUE(QFile::copy(a_scenario, there));
    ASSERT_TRUE(document.open(QUrl::fromLocalFile(there)));
    document.put("title", "edit 1");
    ASSERT_TRUE(QDir(folder.filePath("gone")).removeRecursively());
    EXPECT_FALSE(document.save());
    EXPECT_TRUE(document.trouble().contains("folder is not there"));
    EXPECT_TRUE(document.changed());
    EXPECT_TRUE(document.saveAs(QUrl::fromLocalFile(folder.filePath("elsewhere.toml"))));
}

TEST_F(Faults, a_folder_that_is_only_read_is_told_and_the_work_is_still_there) {
    QDir().mkpath(folder.filePath("shut"));
    const QString there = folder.filePath("shut/mine.toml");
    ASSERT_TRUE(QFile::copy(a_scenario, there));
    ASSERT_TRUE(document.open(QUrl::fromLocalFile(there)));
    document.put("title", "edit 1");
    const QByteArray before = bytes_in(there);
    QFile::setPermissions(folder.path(), QFile::Permissions(0x7755));
    QFile::setPermissions(there, QFile::Permissions(0x6666));
    QFile::setPermissions(folder.filePath("shut"), QFile::Permissions(0x5555));
    const int exit = exit_of([&] {
        constexpr uid_t nobody = 65534;
        if (geteuid() == 0 &&
            (setresgid(nobody, nobody, nobody) != 0 || setresuid(nobody, nobody, nobody) != 0))
            return 2;
        return !document.save() && document.changed() &&
                       document.trouble().contains("nothing can be written in its folder")
                   ? 0
                   : 1;
    });
    QFile::setPermissions(folder.filePath("shut"), QFile::Permissions(0x7755));
    EXPECT_EQ(exit, 0);
    EXPECT_EQ(bytes_in(there), before);
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&argc, argv);
    const QGuiApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
