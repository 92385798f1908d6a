// What a person may begin from, and what is shared of an answer.
#include "models/file/file_shelf.hpp"

#include <fstream>

#include <QImage>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include "models/about_program.hpp"
#include "models/file/sharing.hpp"
#include "models/file/templates.hpp"
#include "scenario/file/read.hpp"
#include "support/hand_made_plan.hpp"

namespace {

using touch::FileShelf;
using touch::ScenarioDocument;

TEST(templates, are_scenarios_that_can_be_read) {
    EXPECT_EQ(touch::templates().size(), 5);
    for (const touch::Template& one : touch::templates()) {
        const auto text = touch::text_of_template(one.key);
        ASSERT_TRUE(text) << one.key.toStdString();
        const auto read = scenario::read_scenario(text->toStdString(), {});
        ASSERT_TRUE(read) << one.key.toStdString();
        EXPECT_EQ(read->scenario.title, one.name.toStdString());
        EXPECT_FALSE(one.detail.isEmpty());
    }
    EXPECT_FALSE(touch::text_of_template("no such"));
}

TEST(templates, are_examples_until_they_are_saved) {
    ScenarioDocument document;
    document.openTemplate("saw_and_pump");
    EXPECT_TRUE(document.example());
    EXPECT_TRUE(document.suggestedFile().fileName() == "saw_and_pump_at_a_remote_place.toml");
    EXPECT_TRUE(document.begin("format = 1\ntitle = \"mine\"\n"));
    EXPECT_FALSE(document.example());
    EXPECT_TRUE(document.path().isEmpty());
}

class Shelf : public testing::Test {
  protected:
    void SetUp() override { touch::PlanRunner::set_planner(touch_tests::hand_made_view); }
    void TearDown() override { touch::PlanRunner::set_planner({}); }
    [[nodiscard]] QUrl at(const QString& name) const {
        return QUrl::fromLocalFile(folder.filePath(name));
    }
    QTemporaryDir folder;
};

TEST_F(Shelf, keeps_the_last_files_with_the_answer_they_had) {
    ScenarioDocument document;
    touch::PlanRunner plan;
    FileShelf shelf;
    shelf.set_folder(folder.filePath("kept"));
    shelf.set_document(&document);
    plan.set_document(&document);
    shelf.set_plan(&plan);
    document.openExample();
    EXPECT_TRUE(shelf.recent().isEmpty());  // it lies in no file
    for (const char* name : {"first.toml", "second.toml"}) {
        ASSERT_TRUE(document.saveAs(at(name)));
        document.tellAgain();
        ASSERT_TRUE(QTest::qWaitFor([&] { return plan.answered() && !plan.running(); }));
    }
    FileShelf later;
    later.set_folder(folder.filePath("kept"));
    ASSERT_EQ(later.recent().size(), 2);
    const QVariantMap top = later.recent().front().toMap();
    EXPECT_EQ(top["url"].toUrl(), at("second.toml"));
    EXPECT_EQ(top["name"].toString(), document.title());
    EXPECT_EQ(top["answer"].toString(), plan.sentence());
    EXPECT_TRUE(top["there"].toBool());
    QFile::remove(folder.filePath("second.toml"));
    EXPECT_FALSE(later.recent().front().toMap()["there"].toBool());
    later.forget(at("second.toml"));
    EXPECT_EQ(later.recent().size(), 1);
}

TEST_F(Shelf, an_answer_to_unsaved_changes_does_not_stand_beside_the_file) {
    ScenarioDocument document;
    touch::PlanRunner plan;
    FileShelf shelf;
    shelf.set_document(&document);
    plan.set_document(&document);
    shelf.set_plan(&plan);
    document.openExample();
    ASSERT_TRUE(document.saveAs(at("file.toml")));
    document.packs()->more();
    ASSERT_TRUE(QTest::qWaitFor([&] { return plan.answered() && !plan.running(); }));
    EXPECT_EQ(shelf.recent().front().toMap()["answer"].toString(), "");
}

TEST_F(Shelf, has_no_more_than_it_says_and_reads_no_nonsense) {
    QDir().mkpath(folder.filePath("kept"));
    std::ofstream(folder.filePath("kept/recent.json").toStdString()) << "{ not a list";
    FileShelf shelf;
    shelf.set_folder(folder.filePath("kept"));
    EXPECT_TRUE(shelf.recent().isEmpty());
    ScenarioDocument document;
    shelf.set_document(&document);
    document.openExample();
    for (int file = 0; file < FileShelf::most_recent + 3; ++file)
        ASSERT_TRUE(document.saveAs(at(QString::number(file) + ".toml")));
    EXPECT_EQ(shelf.recent().size(), FileShelf::most_recent);
}

TEST_F(Shelf, one_page_and_one_picture_go_out) {
    ScenarioDocument document;
    document.openExample();
    touch::Sharing sharing;
    sharing.set_document(&document);
    EXPECT_EQ(sharing.suggested("html").fileName(), "ice_storm_four_nights.html");
    sharing.savePage(at("answer.html"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !sharing.busy(); }, 120'000));
    EXPECT_FALSE(sharing.failed()) << sharing.told().toStdString();
    QFile page(folder.filePath("answer.html"));
    ASSERT_TRUE(page.open(QIODevice::ReadOnly));
    const QByteArray html = page.readAll();
    EXPECT_TRUE(html.startsWith("<!DOCTYPE html>") || html.startsWith("<!doctype html>"));
    EXPECT_TRUE(html.contains("Ice storm, four nights"));
    EXPECT_FALSE(html.contains("http://") && html.contains("<script"));
    QImage image(20, 10, QImage::Format_RGB32);
    image.fill(Qt::black);
    EXPECT_TRUE(sharing.savePicture(image, at("page.png")));
    EXPECT_EQ(QImage(folder.filePath("page.png")).size(), image.size());
    EXPECT_FALSE(sharing.savePicture(image, QUrl::fromLocalFile("/no/such/folder/page.png")));
    EXPECT_TRUE(sharing.told().contains("folder"));
    EXPECT_FALSE(sharing.savePicture(QVariant(), at("none.png")));
}

TEST(about_program, has_the_whole_licence_and_names_what_it_is_made_with) {
    EXPECT_GT(touch::AboutProgram::licence().size(), 100);
    EXPECT_TRUE(touch::AboutProgram::licence().front().contains("GNU GENERAL PUBLIC LICENSE"));
    for (const QVariant& part : touch::AboutProgram::parts())
        for (const char* key : {"name", "licence", "use"})
            EXPECT_FALSE(part.toMap()[key].toString().isEmpty());
}

}  // namespace
