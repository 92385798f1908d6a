#include "models/words/look.hpp"

#include <QDir>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "models/file/scenario_document.hpp"
#include "models/words/plan_text.hpp"
#include "models/words/told.hpp"

namespace {

using touch::Look;

class Shown : public testing::Test {
  protected:
    void SetUp() override {
        look.set_language("en");
        look.set_clock("24");
        look.set_units("metric");
    }
    void TearDown() override { SetUp(); }

    Look look{nullptr};
};

TEST_F(Shown, as_it_was_left_after_a_restart) {
    const QTemporaryDir folder;
    look.keepIn(folder.path());
    look.set_theme("light");
    look.set_text_scale(1.5);
    look.set_clock("12");
    look.set_still(true);
    look.set_language("de");
    Look later(nullptr);
    later.keepIn(folder.path());
    EXPECT_EQ(later.theme(), "light");
    EXPECT_FALSE(later.dark());
    EXPECT_EQ(later.text_scale(), 1.5);
    EXPECT_EQ(later.clock(), "12");
    EXPECT_TRUE(later.still());
    EXPECT_EQ(later.language(), "de");
    later.set_language("en");
}

TEST_F(Shown, in_the_theme_of_the_system) {
    look.set_theme("system");
    QPalette night;
    night.setColor(QPalette::Window, Qt::black);
    night.setColor(QPalette::WindowText, Qt::white);
    QPalette day;
    day.setColor(QPalette::Window, Qt::white);
    day.setColor(QPalette::WindowText, Qt::black);
    QGuiApplication::setPalette(night);
    EXPECT_TRUE(look.dark());
    QSignalSpy changed(&look, &Look::changed);
    QGuiApplication::setPalette(day);
    QCoreApplication::processEvents();
    EXPECT_FALSE(look.dark());
    EXPECT_GE(changed.count(), 1);
}

TEST_F(Shown, with_text_no_larger_than_twice) {
    look.set_text_scale(7.0);
    EXPECT_EQ(look.text_scale(), 2.0);
}

TEST_F(Shown, in_german_the_sentences_the_labels_and_the_numbers) {
    const auto lasts = words::said<"Open-circuit voltage">();
    const words::Amount energy{.dimension = words::Dimension::energy, .si = 1900.0 * 3600.0};
    EXPECT_EQ(touch::told(lasts), "Open-circuit voltage");
    EXPECT_EQ(touch::told(energy), "1.9 kWh");
    EXPECT_EQ(look.decimal_mark(), ".");
    look.set_language("de");
    EXPECT_EQ(touch::told(lasts), "Leerlaufspannung");
    EXPECT_EQ(touch::told(energy), "1,9 kWh");
    EXPECT_EQ(touch::told(words::Number{.value = -3.5}), QStringLiteral("−3,5"));
    EXPECT_EQ(look.decimal_mark(), ",");
    EXPECT_EQ(look.amount("12.9 V"), "12,9 V");
    look.set_language("en");
    EXPECT_EQ(touch::told(lasts), "Open-circuit voltage");
}

TEST_F(Shown, offers_each_language_by_its_own_name) {
    const QVariantList languages = look.languages();
    ASSERT_GE(languages.size(), 2);
    EXPECT_EQ(languages[0].toMap()["value"], "en");
    EXPECT_EQ(languages[0].toMap()["label"], "English");
    EXPECT_EQ(languages[1].toMap()["label"], "Deutsch");
}

// 2026-01-15 is a Thursday; 5 °C are 41 °F [NIST SP 811].
TEST_F(Shown, with_the_clock_and_the_units_that_the_person_wishes) {
    const words::Said sentence = words::said<"{when} {warm}">(
        words::Moment{.since_1970 = 1768489200.0},
        words::Amount{.dimension = words::Dimension::temperature, .si = 278.15});
    EXPECT_EQ(touch::told(sentence), QStringLiteral("Thursday 15:00 5 °C"));
    look.set_clock("12");
    look.set_units("us");
    EXPECT_EQ(touch::told(sentence), QStringLiteral("Thursday 3:00 PM 5 °C (41 °F)"));
}

TEST_F(Shown, a_persons_own_words_are_not_looked_at) {
    look.set_language("de");
    look.set_clock("12");
    look.set_units("us");
    const char* const own = "pump at 15:00, 5 °C, 1.5 m; then the packs are empty";
    EXPECT_EQ(touch::told(words::Said(own)), QString::fromUtf8(own));
}

TEST_F(Shown, in_german_the_scenario_is_described_in_german) {
    touch::ScenarioDocument document;
    document.openExample();
    EXPECT_EQ(document.packs()->label(), "Expansion packs");
    look.set_language("de");
    document.tellAgain();
    EXPECT_EQ(document.packs()->label(), "Zusatzakkus");
}

// The chance is told by the screen; all else of the answer by the catalogue.
TEST_F(Shown, in_german_the_answer_of_every_scenario_that_comes_with_the_program) {
    look.set_language("de");
    const QDir scenarios(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios"));
    const QStringList files = scenarios.entryList({"*.toml"}, QDir::Files);
    ASSERT_GE(files.size(), 4);
    const QRegularExpression english(
        QStringLiteral("\\b(the|it|of|until|then|packs|lasts|and|is|are|with|for)\\b"),
        QRegularExpression::CaseInsensitiveOption);
    for (const QString& name : files) {
        QFile file(scenarios.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        const touch::DaysView view = touch::weighed_text(text, file.fileName());
        EXPECT_FALSE(view.chances.isEmpty());
        for (const QString& said : {view.chances, view.sentence, view.range, view.closing})
            EXPECT_FALSE(english.match(said).hasMatch())
                << name.toStdString() << ": " << said.toStdString();
        for (const touch::FindingText& caution : view.cautions)
            EXPECT_FALSE(english.match(caution.text).hasMatch())
                << name.toStdString() << ": " << caution.text.toStdString();
    }
}

}  // namespace
