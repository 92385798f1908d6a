#include "print/card_layout.hpp"

#include <fstream>
#include <sstream>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "answers/card/lid_card.hpp"
#include "questions/card.hpp"
#include "words/language.hpp"

#include "examples.hpp"

namespace {

using namespace printing;

answers::LidCard card_of(const scenario::ReadScenario& read) {
    return answers::lid_card(read.scenario, questions::find_for_card(read, {}),
                             "Candlemark 0.1.0, 2026-11-25");
}

// The longest words, and two units beside each other.
words::Language in_german_for_the_us() {
    auto language = *words::language("de");
    language.us_units = true;
    language.twelve_hours = true;
    return language;
}

// The example with so many loads, circuits and so long names that no page could hold all.
scenario::ReadScenario crowded() {
    std::ifstream file(std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/ice_storm.toml");
    std::stringstream text;
    text << file.rdbuf();
    for (int number = 0; number < 20; ++number) {
        const auto name = "a lamp with a long name in the upper hall " + std::to_string(number);
        text << "\n[[load]]\nname = \"" << name
             << "\"\nfrom = \"12V\"\npower = \"2 W\"\npriority = " << 3 + number % 3
             << "\n[[circuit]]\nname = \"circuit of " << name << "\"\nfeeds = [\"" << name
             << "\"]\nlinks = [{ fuse = \"5 A\", family = \"blade\" }, { wire = \"16 AWG\", "
                "length = \"3 ft\", insulation = \"105 degC\" }]\n";
    }
    auto read = scenario::read_scenario(text.str(), "crowded.toml");
    EXPECT_TRUE(read) << (read ? "" : units::print(read.error().front()));
    return std::move(*read);
}

QString all_of(const Sheet& sheet) {
    QStringList lines;
    for (const Words& words : sheet.words)
        lines << words.text;
    return lines.join(QLatin1Char(' '));
}

// Nothing outside the margins, nothing upon anything else, nothing too small to read.
void expect_readable(const Sheet& sheet, const std::string& of) {
    EXPECT_TRUE(sheet.fits) << of;
    const QRectF paper(QPointF(), sheet.size);
    const QRectF inside = paper.adjusted(margin - 0.1, margin - 0.1, 0.1 - margin, 0.1 - margin);
    for (qsizetype one = 0; one < sheet.words.size(); ++one) {
        const Words& words = sheet.words[one];
        EXPECT_GE(words.type.size, body_size) << of << ": " << words.text.toStdString();
        EXPECT_TRUE(inside.contains(words.box)) << of << ": " << words.text.toStdString();
        for (qsizetype other = one + 1; other < sheet.words.size(); ++other)
            EXPECT_FALSE(
                words.box.adjusted(0.1, 0.1, -0.1, -0.1).intersects(sheet.words[other].box))
                << of << ": " << words.text.toStdString() << " and "
                << sheet.words[other].text.toStdString();
        for (const QRectF& box : sheet.boxes)
            EXPECT_FALSE(words.box.intersects(box)) << of << ": " << words.text.toStdString();
    }
    for (const Stroke& stroke : sheet.strokes)
        EXPECT_TRUE(inside.contains(stroke.line.p1()) && inside.contains(stroke.line.p2())) << of;
}

TEST(card_layout, every_example_is_readable_on_either_paper) {
    for (const auto& path : printing_tests::examples()) {
        const auto read = scenario::read_scenario_file(path);
        ASSERT_TRUE(read) << path;
        const auto card = card_of(*read);
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const auto& language : {words::english(), in_german_for_the_us()})
                expect_readable(lay_out(card, paper, language),
                                fmt::format("{}, {}", path.filename().string(), language.code()));
    }
}

TEST(card_layout, speaks_the_language_of_its_reader) {
    const auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) +
                                                   "/scenarios/ice_storm.toml");
    ASSERT_TRUE(read);
    const auto text = all_of(lay_out(card_of(*read), Paper::a4, in_german_for_the_us()));
    for (const char* words : {"Alles an: 33 h", "Damit es länger reicht, abschalten", "Bei Kälte",
                              "0 °C (32 °F)", "Achtung", "Eine Rechnung, keine Freigabe."})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
}

TEST(card_layout, answers_are_set_in_24_points_at_least) {
    const auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) +
                                                   "/scenarios/ice_storm.toml");
    ASSERT_TRUE(read);
    int answers = 0;
    for (const Words& words : lay_out(card_of(*read), Paper::a4).words)
        if (words.text.startsWith(u"Everything on:") || words.text == u"40 h") {
            EXPECT_GE(words.type.size, answer_size);
            ++answers;
        }
    EXPECT_EQ(answers, 2);
}

TEST(card_layout, too_much_for_a_page_is_left_out_and_said) {
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        const Sheet sheet = lay_out(card_of(crowded()), paper);
        expect_readable(sheet, "crowded");
        EXPECT_TRUE(all_of(sheet).contains(QStringLiteral("more circuits: see the report.")))
            << all_of(sheet).toStdString();
    }
}

TEST(card_layout, a_card_that_cannot_fit_says_so) {
    answers::LidCard card{.title = "t", .made = "m", .answer = "a"};
    card.basis = std::vector<words::Said>(80, "a line that cannot be cut");
    EXPECT_FALSE(lay_out(card, Paper::a4).fits);
}

TEST(card_layout, lines_break_between_words_and_never_between_a_number_and_its_unit) {
    const Type type{.size = 14.0};
    for (double width = 60.0; width < 200.0; width += 7.0)
        for (const QString& line :
             broken(QStringLiteral("Never charge at or below 0 °C (32 °F): less than 0.5 V apart."),
                    type, width)) {
            EXPECT_LE(width_of(line, type), width);
            EXPECT_FALSE(line.startsWith(u"°C") || line.startsWith(u"V ")) << line.toStdString();
        }
}

}  // namespace
