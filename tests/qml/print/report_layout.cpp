#include "print/report_layout.hpp"

#include <algorithm>

#include <QXmlStreamReader>
#include <gtest/gtest.h>

#include "print/plots.hpp"
#include "print/print_file.hpp"
#include "print/sheet_svg.hpp"

namespace {

using namespace printing;

scenario::ReadScenario read_example(const char* name) {
    auto read =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name);
    EXPECT_TRUE(read);
    return std::move(*read);
}

// All words lie on the paper, and none upon another.
void expect_laid_out(const QList<Sheet>& sheets) {
    ASSERT_FALSE(sheets.isEmpty());
    for (const Sheet& sheet : sheets) {
        const QRectF paper(QPointF(), sheet.size);
        for (qsizetype one = 0; one < sheet.words.size(); ++one) {
            const Words& words = sheet.words[one];
            EXPECT_TRUE(paper.contains(words.box)) << words.text.toStdString();
            for (qsizetype other = one + 1; other < sheet.words.size(); ++other)
                EXPECT_FALSE(words.box.adjusted(0.2, 0.5, -0.2, -0.5)
                                 .intersects(sheet.words[other].box.adjusted(0.2, 0.5, -0.2, -0.5)))
                    << words.text.toStdString() << " and " << sheet.words[other].text.toStdString();
        }
    }
}

TEST(report_layout, the_report_of_an_example_has_its_words_on_the_paper_and_apart) {
    for (const char* name : {"ice_storm.toml", "saw_and_pump.toml"})
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const auto sheets =
                sheets_of(read_example(name), Kind::report, paper, QDate(2026, 11, 25));
            ASSERT_TRUE(sheets);
            expect_laid_out(*sheets);
            EXPECT_GT(sheets->size(), 4);
        }
}

TEST(report_layout, the_report_tells_every_formula_and_assumption_of_the_outage) {
    const auto read = read_example("ice_storm.toml");
    const auto sheets = sheets_of(read, Kind::report, Paper::a4, QDate(2026, 11, 25));
    ASSERT_TRUE(sheets);
    QString all;
    for (const Sheet& sheet : *sheets)
        for (const Words& words : sheet.words)
            all += words.text + QLatin1Char(' ');
    for (const char* words : {"Count on it until Friday 03:00", "outage method.md (3)", "Working",
                              "Assumed, because the file is silent", "Stored in the packs",
                              "Beware", "Arithmetic, not approval."})
        EXPECT_TRUE(all.contains(QString::fromUtf8(words))) << words;
}

TEST(report_layout, the_wiring_sheet_lies_across_and_names_each_circuit) {
    const auto sheets =
        sheets_of(read_example("ice_storm.toml"), Kind::wiring, Paper::letter, QDate(2026, 11, 25));
    ASSERT_TRUE(sheets);
    EXPECT_GT(sheets->front().size.width(), sheets->front().size.height());
    expect_laid_out(*sheets);
}

TEST(report_layout, what_has_no_answer_has_its_reason) {
    const Book book{
        .title = "A unit", .made = "today", .chapters = {{"How long?", {}, "No packs."}}};
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
