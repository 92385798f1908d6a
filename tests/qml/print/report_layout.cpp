#include "print/report/report_layout.hpp"

#include <algorithm>

#include <QRegularExpression>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

#include "print/plots.hpp"
#include "print/print_file.hpp"
#include "print/sheet_svg.hpp"
#include "laid_out.hpp"

namespace {

using namespace printing;
using printing_tests::all_words;
using printing_tests::expect_laid_out;

scenario::ReadScenario read_example(const char* name) {
    auto read =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name);
    EXPECT_TRUE(read);
    return std::move(*read);
}

TEST(report_layout, the_report_tells_every_formula_and_assumption_of_the_outage) {
    const auto read = read_example("ice_storm.toml");
    const auto sheets = sheets_of(read, Kind::report, Paper::a4, QDate(2026, 11, 25));
    ASSERT_TRUE(sheets);
    const QString all = all_words(*sheets);
    for (const char* words : {"Count on it until Friday 03:00", "outage method.md (3)", "Working",
                              "Assumed, because the file is silent", "Stored in the packs",
                              "Beware", "Arithmetic, not approval."})
        EXPECT_TRUE(all.contains(QString::fromUtf8(words))) << words;
}

// Each kind of heading that paper itself has, and figures with a comma.
TEST(report_layout, a_german_report_has_no_heading_of_its_own_in_english) {
    const auto language = words::language("de");
    ASSERT_TRUE(language);
    const auto sheets = sheets_of(read_example("ice_storm.toml"), Kind::report, Paper::a4,
                                  QDate(2026, 11, 25), *language);
    ASSERT_TRUE(sheets);
    expect_laid_out(*sheets, "ice_storm");
    const QString all = all_words(*sheets);
    for (const char* words :
         {"Wie lange reicht es, Stunde für Stunde,", "Befunde", "Rechenweg", "Größe", "Formel",
          "Herkunft", "Angenommen, weil die Datei nichts sagt", "Quelle", "Achtung", "Der Aufbau",
          "In den Akkus", "Ziel 90 %", "groß: die Antwort", "Fett ist", "Eine Rechnung",
          "höchstens", "kWh"})
        EXPECT_TRUE(all.contains(QString::fromUtf8(words))) << words;
    for (const char* words :
         {"Findings", "Working", "Assumed, because", "Beware", "quantity", "formula", "at best",
          "The build", "goal", "Stored in the packs", "in the table of builds", "more rows"})
        EXPECT_FALSE(all.contains(QString::fromUtf8(words))) << words;
    // The scale of the days' plot.
    static const QRegularExpression with_comma(QStringLiteral("\\b\\d+,\\d kWh\\b"));
    EXPECT_TRUE(all.contains(with_comma));
}

TEST(report_layout, a_german_wiring_sheet_has_german_signs_and_headings) {
    const auto sheets = sheets_of(read_example("ice_storm.toml"), Kind::wiring, Paper::a4,
                                  QDate(2026, 11, 25), *words::language("de"));
    ASSERT_TRUE(sheets);
    const QString all = all_words(*sheets);
    EXPECT_TRUE(all.contains(QStringLiteral(", Verkabelung"))) << all.toStdString();
    EXPECT_FALSE(all.contains(QStringLiteral("Caution")));
    EXPECT_FALSE(all.contains(QStringLiteral(", wiring")));
}

// 5 °C are 41 °F; whoever wishes for it finds both on paper.
TEST(report_layout, units_and_clock_are_those_of_the_reader) {
    const auto read = read_example("ice_storm.toml");
    const auto metric = all_words(*sheets_of(read, Kind::report, Paper::a4, QDate(2026, 11, 25)));
    const auto wished = all_words(*sheets_of(read, Kind::report, Paper::a4, QDate(2026, 11, 25),
                                             {.twelve_hours = true, .us_units = true}));
    EXPECT_TRUE(metric.contains(QStringLiteral("Friday 03:00")));
    EXPECT_TRUE(wished.contains(QStringLiteral("Friday 3:00 AM")));
    EXPECT_GT(wished.count(QStringLiteral("°F)")), metric.count(QStringLiteral("°F)")));
}

TEST(report_layout, the_wiring_sheet_lies_across_and_names_each_circuit) {
    const auto sheets =
        sheets_of(read_example("ice_storm.toml"), Kind::wiring, Paper::letter, QDate(2026, 11, 25));
    ASSERT_TRUE(sheets);
    EXPECT_GT(sheets->front().size.width(), sheets->front().size.height());
    expect_laid_out(*sheets, "ice_storm");
}

TEST(report_layout, what_has_no_answer_has_its_reason) {
    const Book book{
        .title = "A unit", .made = "today", .chapters = {{"outage", "How long?", {}, "No packs."}}};
    const auto sheets = lay_out(book, Paper::a4);
    EXPECT_TRUE(std::ranges::any_of(sheets.front().words,
                                    [](const Words& words) { return words.text == u"No packs."; }));
}

TEST(sheet_svg, a_plot_is_well_formed_and_keeps_its_letters) {
    answers::DaysChart chart{.lasts = 48.0, .top = 1000.0, .usable = 900.0};
    chart.at = {0.0, 24.0, 48.0};
    chart.nine_in_ten = {1000.0, 200.0, 0.0};
    chart.likely = {1000.0, 500.0, 100.0};
    chart.one_in_ten = {1000.0, 800.0, 600.0};
    chart.markers = {{.at = 30.0, .label = "empty & done"}};
    Block block = days_plot(chart, 500.0);
    Sheet sheet = block.sheet;
    sheet.size = {500.0, block.height};
    QXmlStreamReader reader(in_svg(sheet, QStringLiteral("Days <1>")));
    QString text;
    int lines = 0;
    while (!reader.atEnd()) {
        reader.readNext();
        lines += reader.isStartElement() && reader.name() == u"line" ? 1 : 0;
        if (reader.isCharacters()) text += reader.text();
    }
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("empty & done")));
    EXPECT_TRUE(text.contains(QStringLiteral("Days <1>")));
    EXPECT_GE(lines, 2);
}

TEST(days_plot, more_stored_stands_higher_and_later_stands_further_right) {
    answers::DaysChart chart{.lasts = 10.0, .top = 100.0};
    chart.at = {0.0, 10.0};
    chart.nine_in_ten = chart.likely = chart.one_in_ten = {100.0, 0.0};
    const Block block = days_plot(chart, 300.0);
    const auto& first = block.sheet.strokes.front().line;
    EXPECT_LT(first.p1().x(), first.p2().x());
    EXPECT_LT(first.p1().y(), first.p2().y());
    EXPECT_NEAR(first.p2().x(), 300.0, 1e-9);
}

}  // namespace
