// A text that cannot be read: each error beside its line, and mended there.
#include "models/file/broken_text.hpp"

#include <fstream>

#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

using touch::BrokenText;
using touch::ScenarioDocument;

const QString good = QStringLiteral(
    "# mine\nformat = 1\n\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"4 d\"\n\n"
    "[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\"\n\n"
    "[[load]]\nname = \"lamp\"\nfrom = \"12V\"\npower = \"5 W\"\n");

class Broken : public testing::Test {
  protected:
    void open(const QString& text) {
        document.begin(text);
        broken.set_document(&document);
    }
    [[nodiscard]] QString at(int row, BrokenText::Role role) const {
        return broken.data(broken.index(row), role).toString();
    }
    // The row of the first error that tells a word; -1 where none does.
    [[nodiscard]] int row_of(const QString& word) const {
        for (int row = broken.nextError(-1); row >= 0; row = broken.nextError(row))
            if (at(row, BrokenText::TextRole).contains(word) ||
                at(row, BrokenText::FoundRole).contains(word))
                return row;
        return -1;
    }
    [[nodiscard]] QVariantMap mending(int row) const {
        return broken.mending(broken.data(broken.index(row), BrokenText::NumberRole).toInt());
    }

    ScenarioDocument document;
    BrokenText broken;
};

TEST_F(Broken, a_text_that_can_be_read_has_nothing_to_mend) {
    open(good);
    EXPECT_FALSE(document.broken());
    EXPECT_EQ(broken.errors(), 0);
    EXPECT_EQ(broken.nextError(-1), -1);
}

TEST_F(Broken, a_value_of_the_wrong_kind_stands_below_its_line_and_is_mended_there) {
    open(QString(good).replace("4 d", "4 kg").replace("5 W", "5 V"));
    EXPECT_TRUE(document.broken());
    EXPECT_EQ(broken.errors(), 2);
    const int row = row_of("outage.lasts");
    ASSERT_GT(row, 0);
    EXPECT_EQ(at(row - 1, BrokenText::TextRole), "lasts = \"4 kg\"");
    EXPECT_EQ(at(row, BrokenText::LineRole), "6");
    EXPECT_FALSE(at(row, BrokenText::RemedyRole).isEmpty());
    const QVariantMap asked = mending(row);
    EXPECT_EQ(asked["key"].toString(), "outage.lasts");
    EXPECT_EQ(asked["words"].toString(), "4 kg");
    EXPECT_EQ(broken.mend(asked, "4 d"), "");
    EXPECT_EQ(broken.errors(), 1);
    const int other = row_of("power");
    ASSERT_GE(other, 0);
    EXPECT_EQ(broken.mend(mending(other), "5 W"), "");
    EXPECT_FALSE(document.broken());
    EXPECT_EQ(document.text(), good);
    document.undo();
    EXPECT_TRUE(document.broken());
}

TEST_F(Broken, a_line_that_is_no_toml_is_changed_as_a_line) {
    open(QString(good).replace("name = \"lamp\"", "name = \"lamp"));
    const int row = broken.nextError(-1);
    ASSERT_GE(row, 0);
    const QVariantMap asked = mending(row);
    EXPECT_EQ(asked["key"].toString(), "");
    EXPECT_EQ(asked["words"].toString(), "name = \"lamp");
    EXPECT_EQ(broken.mend(asked, "name = \"lamp\""), "");
    EXPECT_EQ(document.text(), good);
    EXPECT_FALSE(document.broken());
}

TEST_F(Broken, what_is_missing_is_put_step_by_step) {
    const QMap<QString, QString> whole{
        {"[outage]", "[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"2 d\""},
        {"[[pack]]", "[[pack]]\nname = \"main\"\nchemistry = \"lifepo4\"\ncapacity = \"100 Ah\""},
        {"[inverter]", "[inverter]\ncontinuous = \"1 kW\""},
        {"[[load]]", "[[load]]\nname = \"lamp\"\npower = \"5 W\""}};
    open(QStringLiteral("format = 1\n"));
    for (int step = 0; step < 12 && document.broken(); ++step) {
        const int row = broken.nextError(-1);
        ASSERT_GE(row, 0);
        const QVariantMap asked = mending(row);
        ASSERT_FALSE(asked.isEmpty()) << at(row, BrokenText::FoundRole).toStdString();
        // What is offered is the head of the table that is missing; a person writes on below it.
        const QString head = asked["words"].toString();
        const QString words = whole.value(head, head);
        broken.mend(asked, words);
    }
    EXPECT_FALSE(document.broken())
        << document.text().toStdString()
        << at(broken.nextError(-1), BrokenText::FoundRole).toStdString();
}

TEST_F(Broken, only_the_lines_around_are_shown_until_all_are_asked_for) {
    QString text = good;
    for (int line = 0; line < 300; ++line)
        text += "# a comment\n";
    open(text.replace("4 d", "4 kg"));
    EXPECT_LT(broken.count(), 20);
    broken.set_whole(true);
    EXPECT_GT(broken.count(), 300);
}

TEST_F(Broken, returns_at_the_ends_of_lines_stay) {
    open(QString(good).replace("\n", "\r\n").replace("4 d", "4 d x"));
    const QVariantMap line = broken.ofLine(6);
    EXPECT_EQ(line["words"].toString(), "lasts = \"4 d x\"");
    broken.mend(line, "lasts = \"4 d\"");
    EXPECT_EQ(document.text(), QString(good).replace("\n", "\r\n"));
}

TEST_F(Broken, a_broken_file_is_called_by_its_name) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("storm.toml");
    std::ofstream(path.toStdString()) << "format = 1\n[outage]\nlasts = \"4 kg\"\n";
    ASSERT_TRUE(document.open(QUrl::fromLocalFile(path)));
    EXPECT_TRUE(document.broken());
    EXPECT_EQ(document.title(), "storm.toml");
}

}  // namespace
