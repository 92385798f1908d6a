#include "models/file/kept_work.hpp"

#include <memory>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "models/file/kept_versions.hpp"

namespace {

using touch::KeptWork;
using touch::ScenarioDocument;

const QString a_scenario = QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml");

// One window on one folder of kept work.
struct Window {
    explicit Window(const QString& folder) {
        keeper.set_folder(folder);
        keeper.set_document(&document);
    }
    ScenarioDocument document;
    KeptWork keeper;
};

class Kept : public testing::Test {
  protected:
    void SetUp() override {
        work = folder.filePath("work");
        own = QUrl::fromLocalFile(folder.filePath("mine.toml"));
        copy_scenario(own);
        first = std::make_unique<Window>(work);
    }
    static void copy_scenario(const QUrl& to) {
        QDir().mkpath(QFileInfo(to.toLocalFile()).absolutePath());
        ASSERT_TRUE(QFile::copy(a_scenario, to.toLocalFile()));
        QFile::setPermissions(to.toLocalFile(), QFile::ReadOwner | QFile::WriteOwner);
    }
    static QByteArray bytes_in(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    static void write(const QUrl& to, const QByteArray& bytes) {
        QFile file(to.toLocalFile());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    // As after a restart: the window before is no more.
    std::unique_ptr<Window> later() {
        first.reset();
        return std::make_unique<Window>(work);
    }
    [[nodiscard]] std::unique_ptr<Window> another() const { return std::make_unique<Window>(work); }

    QTemporaryDir folder;
    QString work;
    QUrl own;
    std::unique_ptr<Window> first;
};

TEST_F(Kept, a_change_is_kept_within_two_seconds_without_being_saved) {
    first->document.openExample();
    first->document.packs()->more();
    const QString text = first->document.text();
    QTest::qWait(KeptWork::at_most_after + 300);
    // As a kill would leave it: nothing more is kept as the window goes.
    first->keeper.set_document(nullptr);
    const auto again = later();
    ASSERT_TRUE(again->keeper.resume({}));
    EXPECT_EQ(again->document.text(), text);
    EXPECT_TRUE(again->document.example());
    EXPECT_TRUE(again->document.changed());
    EXPECT_TRUE(again->keeper.told().contains("taken up again"));
    again->keeper.heard();
    EXPECT_TRUE(again->keeper.told().isEmpty());
}

TEST_F(Kept, the_way_back_survives_a_restart) {
    first->document.openExample();
    const QString text = first->document.text();
    for (int tap = 0; tap < 60; ++tap)
        tap % 2 ? first->document.days()->less() : first->document.days()->more();
    first->document.undo();
    ASSERT_TRUE(first->keeper.keep());
    const auto again = later();
    ASSERT_TRUE(again->keeper.resume({}));
    EXPECT_TRUE(again->document.can_redo());
    int steps = 0;
    for (; again->document.can_undo(); ++steps)
        again->document.undo();
    EXPECT_EQ(steps, 59);
    EXPECT_EQ(again->document.text(), text);
}

TEST_F(Kept, unsaved_work_on_a_file_is_taken_up_with_that_file_only) {
    ASSERT_TRUE(first->document.open(own));
    first->document.packs()->more();
    const QString text = first->document.text();
    const auto again = later();
    EXPECT_FALSE(again->keeper.resume(QUrl::fromLocalFile(a_scenario)));
    EXPECT_TRUE(again->keeper.resume(own));
    EXPECT_EQ(again->document.text(), text);
    EXPECT_TRUE(again->document.changed());
}

TEST_F(Kept, a_file_that_somebody_else_changed_is_opened_as_it_is_and_the_work_is_offered) {
    ASSERT_TRUE(first->document.open(own));
    first->document.packs()->more();
    const QString text = first->document.text();
    const auto again = later();
    write(own, bytes_in(own.toLocalFile()) + "\n# by somebody else\n");
    EXPECT_FALSE(again->keeper.resume(own));
    ASSERT_TRUE(again->document.open(own));
    EXPECT_TRUE(again->document.text().endsWith("by somebody else\n"));
    EXPECT_TRUE(again->keeper.told().contains("File page"));
    ASSERT_EQ(again->keeper.left().size(), 1);
    ASSERT_TRUE(again->keeper.takeUp(again->keeper.left().first().toMap()["piece"].toString()));
    EXPECT_EQ(again->document.text(), text);
    EXPECT_TRUE(again->keeper.left().isEmpty());
    // And what somebody else wrote is not saved over unasked.
    const QSignalSpy asked(&again->document, &ScenarioDocument::changedOutside);
    EXPECT_FALSE(again->document.save());
    EXPECT_EQ(asked.count(), 1);
    EXPECT_TRUE(bytes_in(own.toLocalFile()).endsWith("by somebody else\n"));
}

TEST_F(Kept, what_cannot_be_read_is_not_taken_up) {
    QDir().mkpath(work + "/work");
    for (const char* const bytes : {"{\"texts\":[", "", "{}\n{\"now\":3,\"texts\":[\"a\"]}\n"})
        write(QUrl::fromLocalFile(work + "/work/" + QString(32, '0') + ".abc.json"), bytes);
    EXPECT_FALSE(first->keeper.resume({}));
    first->document.openExample();
    EXPECT_FALSE(first->document.text().isEmpty());
}

TEST_F(Kept, work_that_ended_the_program_time_and_again_is_offered_and_not_taken_up) {
    ASSERT_TRUE(first->document.open(own));
    first->document.packs()->more();
    const QString text = first->document.text();
    ASSERT_TRUE(first->keeper.keep());
    const QString piece = QDir(work + "/work").entryList({"*.json"}, QDir::Files).first();
    first.reset();
    // As a program leaves it that ends before it comes far.
    QByteArray bytes = bytes_in(work + "/work/" + piece);
    bytes.replace("\"starts\":0", "\"starts\":" + QByteArray::number(KeptWork::most_starts));
    write(QUrl::fromLocalFile(work + "/work/" + piece), bytes);
    const auto again = another();
    EXPECT_FALSE(again->keeper.resume({}));
    EXPECT_FALSE(again->keeper.resume(own));
    EXPECT_FALSE(again->keeper.told().isEmpty());
    ASSERT_TRUE(again->keeper.takeUp(again->keeper.left().first().toMap()["piece"].toString()));
    EXPECT_EQ(again->document.text(), text);
}

TEST_F(Kept, another_file_leaves_what_was_unsaved_and_it_comes_back_with_its_own) {
    const QUrl other = QUrl::fromLocalFile(folder.filePath("other.toml"));
    copy_scenario(other);
    ASSERT_TRUE(first->document.open(own));
    first->document.packs()->more();
    const QString text = first->document.text();
    ASSERT_TRUE(first->document.open(other));
    EXPECT_FALSE(first->document.changed());
    ASSERT_EQ(first->keeper.left().size(), 1);
    EXPECT_EQ(first->keeper.left().first().toMap()["name"], "mine.toml");
    ASSERT_TRUE(first->document.open(own));
    EXPECT_EQ(first->document.text(), text);
    EXPECT_TRUE(first->document.changed());
    EXPECT_TRUE(first->keeper.told().contains("mine.toml"));
    EXPECT_TRUE(first->keeper.left().isEmpty());
}

TEST_F(Kept, another_file_is_not_opened_where_the_work_could_not_be_kept) {
    ASSERT_TRUE(first->document.open(own));
    write(QUrl::fromLocalFile(folder.filePath("nowhere")), "a file, not a folder");
    first->keeper.set_folder(folder.filePath("nowhere/work"));
    first->document.packs()->more();
    EXPECT_FALSE(first->keeper.keep());
    EXPECT_TRUE(first->keeper.trouble().contains("cannot be kept"));
    EXPECT_FALSE(first->document.open(QUrl::fromLocalFile(a_scenario)));
    EXPECT_TRUE(first->document.trouble().contains("Save it first"));
    EXPECT_TRUE(first->document.changed());
    EXPECT_TRUE(first->document.save());
    EXPECT_TRUE(first->document.open(QUrl::fromLocalFile(a_scenario)));
}

TEST_F(Kept, each_of_two_windows_keeps_its_own) {
    ASSERT_TRUE(first->document.open(own));
    ASSERT_TRUE(first->keeper.keep());
    const auto second = another();
    ASSERT_TRUE(second->document.open(own));
    EXPECT_TRUE(second->keeper.told().contains("another window"));
    first->document.packs()->more();
    second->document.days()->more();
    const QString one = first->document.text();
    const QString two = second->document.text();
    ASSERT_TRUE(first->keeper.keep() && second->keeper.keep());
    // What a live window holds is offered to nobody.
    EXPECT_TRUE(first->keeper.left().isEmpty());
    EXPECT_FALSE(another()->keeper.resume(own));
    first.reset();
    const auto third = another();
    ASSERT_TRUE(third->keeper.resume(own));
    EXPECT_EQ(third->document.text(), one);
    EXPECT_EQ(second->document.text(), two);
}

TEST_F(Kept, of_two_windows_the_one_that_saves_second_is_asked) {
    ASSERT_TRUE(first->document.open(own));
    const auto second = another();
    ASSERT_TRUE(second->document.open(own));
    first->document.packs()->more();
    second->document.days()->more();
    const QByteArray one = first->document.text().toUtf8();
    const QByteArray two = second->document.text().toUtf8();
    ASSERT_TRUE(first->document.save());
    const QSignalSpy asked(&second->document, &ScenarioDocument::changedOutside);
    EXPECT_FALSE(second->document.save());
    EXPECT_EQ(asked.count(), 1);
    EXPECT_TRUE(second->document.changed());
    EXPECT_EQ(bytes_in(own.toLocalFile()), one);
    ASSERT_TRUE(second->document.keepMine());
    EXPECT_EQ(bytes_in(own.toLocalFile()), two);
    EXPECT_EQ(bytes_in(second->keeper.versionsKept().first().toMap()["path"].toString()), one);
    // The first now takes up what the second saved; what it had stays.
    first->document.panels()->more();
    const QByteArray before = first->document.text().toUtf8();
    EXPECT_FALSE(first->document.save());
    ASSERT_TRUE(first->document.takeTheirs());
    EXPECT_EQ(first->document.text().toUtf8(), two);
    EXPECT_FALSE(first->document.changed());
    EXPECT_EQ(bytes_in(first->keeper.versionsKept().first().toMap()["path"].toString()), before);
    first->document.undo();
    EXPECT_EQ(first->document.text().toUtf8(), before);
}

TEST_F(Kept, a_piece_that_is_put_away_stays_as_a_version) {
    ASSERT_TRUE(first->document.open(own));
    first->document.packs()->more();
    const QByteArray text = first->document.text().toUtf8();
    ASSERT_TRUE(first->document.open(QUrl::fromLocalFile(a_scenario)));
    ASSERT_TRUE(first->keeper.putAway(first->keeper.left().first().toMap()["piece"].toString()));
    EXPECT_TRUE(first->keeper.left().isEmpty());
    ASSERT_TRUE(first->document.open(own));
    EXPECT_FALSE(first->document.changed());
    EXPECT_EQ(bytes_in(first->keeper.versionsKept().first().toMap()["path"].toString()), text);
}

TEST_F(Kept, no_more_pieces_are_left_than_can_be_looked_through) {
    for (int piece = 0; piece < KeptWork::most_left + 5; ++piece) {
        first->document.openExample();
        first->document.put("title", QString("piece %1").arg(piece));
    }
    EXPECT_EQ(first->keeper.left().size(), KeptWork::most_left);
}

TEST_F(Kept, the_last_ten_versions_of_a_file_stay) {
    ASSERT_TRUE(first->document.open(own));
    QByteArrayList held;
    for (int save = 0; save < 13; ++save) {
        held.prepend(bytes_in(own.toLocalFile()));
        first->document.put("title", QString("save %1").arg(save));
        ASSERT_TRUE(first->document.save());
    }
    const QVariantList kept = first->keeper.versionsKept();
    ASSERT_EQ(kept.size(), touch::most_versions);
    for (int version = 0; version < kept.size(); ++version)
        EXPECT_EQ(bytes_in(kept[version].toMap()["path"].toString()), held[version]) << version;
}

TEST_F(Kept, versions_are_of_the_whole_path_under_any_name) {
    const QList<QUrl> files{QUrl::fromLocalFile(folder.filePath("x/storm.toml")),
                            QUrl::fromLocalFile(folder.filePath("y/storm.toml")),
                            QUrl::fromLocalFile(folder.filePath("[a-z]*?.toml")),
                            QUrl::fromLocalFile(folder.filePath("%1 \xC3\xA4.v2.toml"))};
    for (const QUrl& file : files) {
        copy_scenario(file);
        ASSERT_TRUE(first->document.open(file));
        first->document.put("title", file.path());
        ASSERT_TRUE(first->document.save());
        first->document.packs()->more();
        ASSERT_TRUE(first->document.save());
    }
    for (const QUrl& file : files) {
        ASSERT_TRUE(first->document.open(file));
        const QVariantList kept = first->keeper.versionsKept();
        ASSERT_EQ(kept.size(), 2) << file.path().toStdString();
        EXPECT_TRUE(
            bytes_in(kept.first().toMap()["path"].toString()).contains(file.path().toUtf8()));
        EXPECT_EQ(bytes_in(kept.last().toMap()["path"].toString()), bytes_in(a_scenario));
    }
}

TEST_F(Kept, the_newest_version_is_the_newest_though_the_clock_was_set_back) {
    const QString path = own.toLocalFile();
    ASSERT_TRUE(touch::keep_version(work, path, "first"));
    // As if it had been kept in 2099.
    const QString kept = touch::versions_of(work, path).first().path;
    QString of_the_future = kept;
    of_the_future.replace(QRegularExpression("-\\d{8}-"), "-20990101-");
    ASSERT_TRUE(QFile::rename(kept, of_the_future));
    for (int version = 0; version < touch::most_versions; ++version)
        ASSERT_TRUE(touch::keep_version(work, path, QByteArray::number(version)));
    const auto versions = touch::versions_of(work, path);
    ASSERT_EQ(versions.size(), touch::most_versions);
    EXPECT_EQ(bytes_in(versions.first().path), QByteArray::number(touch::most_versions - 1));
    EXPECT_EQ(bytes_in(versions.last().path), "0");
}

TEST_F(Kept, a_version_is_not_kept_twice_so_that_tries_push_none_out) {
    const QString path = own.toLocalFile();
    ASSERT_TRUE(touch::keep_version(work, path, "first"));
    for (int once = 0; once < 20; ++once)
        ASSERT_TRUE(touch::keep_version(work, path, "second"));
    EXPECT_EQ(touch::versions_of(work, path).size(), 2);
}

TEST_F(Kept, a_file_that_was_changed_elsewhere_stays_as_it_is_without_kept_work_too) {
    ScenarioDocument alone;
    ASSERT_TRUE(alone.open(own));
    alone.packs()->more();
    write(own, "title = \"theirs\"\n");
    const QSignalSpy asked(&alone, &ScenarioDocument::changedOutside);
    EXPECT_FALSE(alone.save());
    EXPECT_EQ(asked.count(), 1);
    EXPECT_EQ(bytes_in(own.toLocalFile()), "title = \"theirs\"\n");
}

TEST_F(Kept, a_document_that_goes_first_is_kept_as_it_goes) {
    auto going = std::make_unique<ScenarioDocument>();
    going->openExample();
    first->keeper.set_document(going.get());
    going->packs()->more();
    const QString last = going->text();
    going.reset();
    EXPECT_FALSE(first->keeper.keep());
    const auto again = later();
    ASSERT_TRUE(again->keeper.resume({}));
    EXPECT_EQ(again->document.text(), last);
}

}  // namespace
