#include "models/look.hpp"

#include <QDir>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include "models/as_wished.hpp"
#include "models/plan_text.hpp"
#include "models/said_again.hpp"
#include "models/scenario_document.hpp"

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

TEST_F(Shown, in_german_the_answer_the_words_and_the_numbers) {
    look.set_language("de");
    EXPECT_TRUE(touch::speaks_another_language());
    EXPECT_EQ(QCoreApplication::translate("scenario", "Open-circuit voltage"), "Leerlaufspannung");
    EXPECT_EQ(
        touch::told("Lasts until Friday 08:00 (at the earliest Thursday 22:00, at best the "
                    "whole outage); then the packs are empty."),
        QString(
            "Reicht bis Freitag 08:00 (im ungünstigen Fall bis Donnerstag 22:00, bestenfalls für "
            "den ganzen Ausfall); dann sind die Akkus leer."));
    EXPECT_EQ(
        touch::told("Lasts until about noon on Sunday (between the early hours of Saturday "
                    "and the evening of Thursday 22 Jan); then a fuse opens."),
        QString("Reicht bis etwa Sonntag Mittag (zwischen Samstag früh und Donnerstag, 22. Jan "
                "Abend); dann löst eine Sicherung aus."));
    EXPECT_EQ(touch::told(
                  "On likely figures four more packs carry you through to the end, Sunday 18:00."),
              QString("Bei den erwarteten Werten tragen vier weitere Akkus Sie bis zum Ende, "
                      "Sonntag 18:00."));
    EXPECT_EQ(
        touch::told("Of 200 chance weathers it lasts through 45 % (38 to 53 in a hundred); one "
                    "more pack lasts through 91 %."),
        QString("Von 200 zufälligen Wetterverläufen reicht es in 45 % (38 bis 53 von hundert); mit "
                "einem weiteren Akku in 91 %."));
    EXPECT_EQ(touch::told("3.5 days"), "3,5 Tage");
    EXPECT_EQ(touch::told_amount("1.9 kWh"), "1,9 kWh");
    EXPECT_EQ(touch::told("The inverter switches off at 10.5 V."),
              "The inverter switches off at 10.5 V.");
    look.set_language("en");
    EXPECT_EQ(touch::told("3.5 days"), "3.5 days");
}

TEST_F(Shown, in_german_the_scenario_is_described_in_german) {
    touch::ScenarioDocument document;
    document.openExample();
    EXPECT_EQ(document.packs()->label(), "Expansion packs");
    look.set_language("de");
    document.tellAgain();
    EXPECT_EQ(document.packs()->label(), "Zusatzakkus");
}

// The engine's sentences change: what the second language no longer knows shows here.
TEST_F(Shown, in_german_the_answer_of_every_scenario_that_comes_with_the_program) {
    look.set_language("de");
    const QDir scenarios(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios"));
    const QStringList files = scenarios.entryList({"*.toml"}, QDir::Files);
    ASSERT_GE(files.size(), 4);
    const QRegularExpression english(QStringLiteral("\\b(the|it|of|until|then|packs|lasts|and)\\b"),
                                     QRegularExpression::CaseInsensitiveOption);
    for (const QString& name : files) {
        QFile file(scenarios.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        // The headline and what belongs to it come from the chance, which is told in English only.
        const QString said = touch::weighed_text(text, file.fileName()).chances;
        EXPECT_FALSE(said.isEmpty());
        EXPECT_FALSE(english.match(said).hasMatch())
            << name.toStdString() << ": " << said.toStdString();
    }
}

}  // namespace
