#include "models/kept_work.hpp"

#include <memory>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace {

using touch::KeptWork;
using touch::ScenarioDocument;

const QString a_scenario = QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml");

class Kept : public testing::Test {
  protected:
    void SetUp() override {
        keeper.set_folder(folder.filePath("work"));
        keeper.set_document(&document);
        own = QUrl::fromLocalFile(folder.filePath("mine.toml"));
        ASSERT_TRUE(QFile::copy(a_scenario, own.toLocalFile()));
        QFile::setPermissions(own.toLocalFile(), QFile::ReadOwner | QFile::WriteOwner);
    }
    // As after a restart.
    bool resumed(ScenarioDocument& later, const QUrl& file = {}) const {
        KeptWork again;
        again.set_folder(keeper.folder());
        again.set_document(&later);
        return again.resume(file);
    }

    QTemporaryDir folder;
    QUrl own;
    ScenarioDocument document;
    KeptWork keeper;
};

TEST_F(Kept, a_change_is_kept_within_two_seconds_without_being_saved) {
    document.openExample();
    document.packs()->more();
    QTest::qWait(KeptWork::at_most_after + 300);
    ScenarioDocument later;
    ASSERT_TRUE(resumed(later));
    EXPECT_EQ(later.text(), document.text());
    EXPECT_TRUE(later.example());
    EXPECT_TRUE(later.changed());
}

TEST_F(Kept, the_way_back_survives_a_restart) {
    document.openExample();
    const QString first = document.text();
    for (int tap = 0; tap < 60; ++tap)
        tap % 2 ? document.days()->less() : document.days()->more();
    document.undo();
    ASSERT_TRUE(keeper.keep());
    ScenarioDocument later;
    ASSERT_TRUE(resumed(later));
    EXPECT_TRUE(later.can_redo());
    int steps = 0;
    for (; later.can_undo(); ++steps)
        later.undo();
    EXPECT_EQ(steps, 59);
    EXPECT_EQ(later.text(), first);
}

TEST_F(Kept, unsaved_work_on_a_file_is_taken_up_with_that_file_only) {
    ASSERT_TRUE(document.open(own));
    document.packs()->more();
    ASSERT_TRUE(keeper.keep());
    ScenarioDocument other;
    EXPECT_FALSE(resumed(other, QUrl::fromLocalFile(a_scenario)));
    ScenarioDocument same;
    EXPECT_TRUE(resumed(same, own));
    EXPECT_EQ(same.text(), document.text());
    EXPECT_TRUE(same.changed());
}

TEST_F(Kept, a_file_that_somebody_else_changed_is_opened_as_it_is) {
    ASSERT_TRUE(document.open(own));
    document.packs()->more();
    ASSERT_TRUE(keeper.keep());
    QFile file(own.toLocalFile());
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("\n# by somebody else\n");
    file.close();
    ScenarioDocument later;
    EXPECT_FALSE(resumed(later, own));
}

TEST_F(Kept, what_cannot_be_read_is_not_taken_up) {
    QDir().mkpath(keeper.folder());
    QFile file(keeper.folder() + "/work.json");
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("{\"texts\":[");
    file.close();
    ScenarioDocument later;
    EXPECT_FALSE(resumed(later));
}

TEST_F(Kept, the_last_ten_versions_of_a_file_stay) {
    ASSERT_TRUE(document.open(own));
    for (int save = 0; save < 13; ++save) {
        save % 2 ? document.packs()->less() : document.packs()->more();
        ASSERT_TRUE(document.save());
        QTest::qWait(3);
    }
    const QStringList kept = QDir(keeper.folder() + "/versions").entryList(QDir::Files, QDir::Name);
    EXPECT_EQ(kept.size(), KeptWork::versions);
}

TEST_F(Kept, a_document_that_goes_first_is_kept_as_it_goes) {
    auto going = std::make_unique<ScenarioDocument>();
    going->openExample();
    keeper.set_document(going.get());
    going->packs()->more();
    const QString last = going->text();
    going.reset();
    ScenarioDocument later;
    ASSERT_TRUE(resumed(later));
    EXPECT_EQ(later.text(), last);
    EXPECT_FALSE(keeper.keep());
}

}  // namespace
