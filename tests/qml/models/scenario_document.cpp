#include "models/file/scenario_document.hpp"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

using touch::ScenarioDocument;

QByteArray bytes_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

const QString ice_storm = QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml");

TEST(scenario_document, opens_the_example_marked_as_one) {
    ScenarioDocument document;
    document.openExample();
    EXPECT_TRUE(document.example());
    EXPECT_FALSE(document.changed());
    EXPECT_EQ(document.title(), "Ice storm, four nights");
    EXPECT_EQ(document.packs()->shown(), "3");
    EXPECT_EQ(document.packs()->label(), "Expansion packs");
    EXPECT_EQ(document.panels()->shown(), "3");
    EXPECT_EQ(document.days()->shown(), "4");
}

TEST(scenario_document, turns_a_number_and_leaves_every_other_byte) {
    ScenarioDocument document;
    ASSERT_TRUE(document.open(QUrl::fromLocalFile(ice_storm)));
    const QString before = document.text();
    const QSignalSpy told(&document, &ScenarioDocument::textChanged);
    document.packs()->more();
    EXPECT_EQ(told.count(), 1);
    EXPECT_EQ(document.packs()->shown(), "4");
    EXPECT_TRUE(document.changed());
    QString expected = before;
    const qsizetype expansion = before.indexOf("\"expansion\"");
    expected.replace(before.indexOf("count = 3", expansion), 9, "count = 4");
    EXPECT_EQ(document.text(), expected);
    document.packs()->less();
    EXPECT_EQ(document.text(), before);
    EXPECT_FALSE(document.changed());
}

TEST(scenario_document, goes_down_to_no_panel_and_not_below) {
    ScenarioDocument document;
    document.openExample();
    for (int tap = 0; tap < 5; ++tap)
        document.panels()->less();
    EXPECT_EQ(document.panels()->shown(), "0");
    EXPECT_FALSE(document.panels()->can_less());
    EXPECT_TRUE(document.trouble().isEmpty()) << document.trouble().toStdString();
}

TEST(scenario_document, keeps_an_outage_of_a_day_at_least) {
    ScenarioDocument document;
    document.openExample();
    for (int tap = 0; tap < 9; ++tap)
        document.days()->less();
    EXPECT_EQ(document.days()->shown(), "1");
}

TEST(scenario_document, saves_what_is_shown_and_is_then_no_example) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("mine.toml");
    ScenarioDocument document;
    document.openExample();
    document.days()->more();
    ASSERT_TRUE(document.saveAs(QUrl::fromLocalFile(path))) << document.trouble().toStdString();
    EXPECT_EQ(bytes_of(path), document.text().toUtf8());
    EXPECT_FALSE(document.example());
    EXPECT_FALSE(document.changed());
    EXPECT_EQ(document.file_name(), "mine.toml");
    document.days()->more();
    ASSERT_TRUE(document.save());
    EXPECT_EQ(bytes_of(path), document.text().toUtf8());
}

TEST(scenario_document, tells_why_a_file_cannot_be_opened_or_saved) {
    ScenarioDocument document;
    document.openExample();
    const QString before = document.text();
    EXPECT_FALSE(document.open(QUrl::fromLocalFile("/no/such/file.toml")));
    EXPECT_TRUE(document.trouble().contains("file.toml"));
    EXPECT_EQ(document.text(), before);
    EXPECT_FALSE(document.saveAs(QUrl::fromLocalFile("/no/such/folder/mine.toml")));
    EXPECT_TRUE(document.trouble().contains("mine.toml"));
    EXPECT_TRUE(document.example());
}

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

TEST(scenario_document, keeps_a_byte_order_mark_and_the_line_ends_to_the_byte) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("mine.toml");
    QByteArray bytes = "\xEF\xBB\xBF# caf\xC3\xA9 \xF0\x9F\x95\xAF\n" + bytes_of(ice_storm);
    bytes.replace("\n", "\r\n");
    write(path, bytes);
    ScenarioDocument document;
    ASSERT_TRUE(document.open(QUrl::fromLocalFile(path))) << document.trouble().toStdString();
    EXPECT_FALSE(document.changed());
    document.panels()->less();
    ASSERT_TRUE(document.save());
    QByteArray expected = bytes;
    expected.replace(expected.indexOf("count = 3", expected.indexOf("[[panel]]")), 9, "count = 2");
    EXPECT_EQ(bytes_of(path), expected);
}

TEST(scenario_document, a_file_that_is_not_utf_8_is_refused_before_the_first_change) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("latin.toml");
    const QByteArray bytes = "title = \"storm\"\n# caf\xE9\n" + bytes_of(ice_storm);
    write(path, bytes);
    ScenarioDocument document;
    document.openExample();
    const QString before = document.text();
    EXPECT_FALSE(document.open(QUrl::fromLocalFile(path)));
    EXPECT_TRUE(document.trouble().contains("line 2 is not UTF-8"))
        << document.trouble().toStdString();
    EXPECT_EQ(document.text(), before);
    EXPECT_FALSE(document.takeTextOf(path));
    EXPECT_EQ(document.text(), before);
    EXPECT_EQ(bytes_of(path), bytes);
}

TEST(scenario_document, keeps_a_text_that_cannot_be_read_as_it_was_written) {
    ScenarioDocument document;
    document.set_text("this is = = no scenario");
    EXPECT_EQ(document.text(), "this is = = no scenario");
    EXPECT_FALSE(document.packs()->can_more());
}

}  // namespace
