// The report and the wiring sheet of each scenario that is shipped, on both papers.
#include <algorithm>

#include <QRegularExpression>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "faces/paper.hpp"
#include "print/plots.hpp"
#include "print/print_file.hpp"
#include "print/report/report_layout.hpp"

#include "examples.hpp"
#include "laid_out.hpp"

namespace {

using namespace printing;

constexpr qsizetype most_pages = 8;  // of a report, before what stands behind it
constexpr double least_letters = 9.0;

words::Language long_words() {
    auto language = *words::language("de");
    language.us_units = true;
    language.twelve_hours = true;
    return language;
}

qsizetype page_of(const QList<Sheet>& sheets, const QString& heading) {
    for (qsizetype page = 0; page < sheets.size(); ++page)
        for (const Words& words : sheets[page].words)
            if (words.text == heading && words.type.bold) return page;
    return sheets.size();
}

void expect_letters_to_read(const QList<Sheet>& sheets, const std::string& of) {
    for (const Sheet& sheet : sheets)
        for (const Words& words : sheet.words)
            EXPECT_GE(words.type.size, least_letters) << of << ": " << words.text.toStdString();
}

// Before the drawing of the build, or the tables or the working where there is none.
void expect_short(const QList<Sheet>& sheets, const words::Language& language,
                  const std::string& of) {
    namespace on_paper = faces::paper;
    qsizetype behind = sheets.size();
    for (const auto& heading : {on_paper::the_build(), on_paper::further(), on_paper::working()})
        behind = std::min(behind, page_of(sheets, in_qt(language, heading)));
    EXPECT_LT(behind, sheets.size()) << of;
    EXPECT_LE(behind, most_pages) << of;
}

// Each page that the contents tell has its heading, and what was assumed stands there once.
void expect_contents(const QList<Sheet>& sheets, const std::string& of) {
    const QString all = printing_tests::all_words(sheets.mid(0, 1));
    static const QRegularExpression entry(QStringLiteral("What was assumed (\\d+)"));
    const auto told = entry.match(all);
    ASSERT_TRUE(told.hasMatch()) << of << ": " << all.toStdString();
    const QString heading = QStringLiteral("Assumed, because the file is silent");
    EXPECT_EQ(page_of(sheets, heading) + 1, told.captured(1).toInt()) << of;
    EXPECT_EQ(printing_tests::all_words(sheets).count(heading), 1) << of;
}

TEST(every_example, has_a_short_report_that_can_be_read_on_either_paper) {
    for (const auto& path : printing_tests::examples()) {
        const auto read = scenario::read_scenario_file(path);
        ASSERT_TRUE(read) << path;
        const Book book = book_of(*read, "Candlemark, today");
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const auto& language : {words::english(), long_words()}) {
                const auto of = fmt::format("{}, {}, {}", path.filename().string(), language.code(),
                                            paper == Paper::a4 ? "A4" : "Letter");
                const auto sheets = lay_out(book, paper, language);
                printing_tests::expect_laid_out(sheets, of);
                expect_letters_to_read(sheets, of);
                expect_short(sheets, language, of);
                if (language.code() == "en") expect_contents(sheets, of);
            }
    }
}

TEST(every_example, has_a_wiring_sheet_with_letters_that_can_be_read) {
    for (const auto& path : printing_tests::examples()) {
        const auto read = scenario::read_scenario_file(path);
        ASSERT_TRUE(read) << path;
        for (const Paper paper : {Paper::a4, Paper::letter})
            for (const auto& language : {words::english(), long_words()}) {
                const auto of = fmt::format("{}, {}", path.filename().string(), language.code());
                const auto sheets =
                    sheets_of(*read, Kind::wiring, paper, QDate(2026, 11, 25), language);
                ASSERT_TRUE(sheets) << of;
                printing_tests::expect_laid_out(*sheets, of);
                expect_letters_to_read(*sheets, of);
            }
    }
}

// A chain of parts that no page is wide enough for.
answers::WiringDiagram long_chain(int boxes) {
    answers::WiringDiagram diagram{.width = double(boxes), .height = 1.0};
    for (int box = 0; box < boxes; ++box) {
        diagram.boxes.push_back({.id = std::to_string(box),
                                 .x = box + 0.5,
                                 .title = words::Said("part " + std::to_string(box)),
                                 .detail = "a text that takes more than one line of a box"});
        if (box > 0)
            diagram.lines.push_back({.from = std::to_string(box - 1), .to = std::to_string(box)});
    }
    return diagram;
}

TEST(wiring_plots, a_build_wider_than_the_page_goes_on_with_the_part_it_ended_with) {
    const auto pieces = wiring_plots(long_chain(20), QSizeF(500.0, 300.0));
    ASSERT_GT(pieces.size(), 1);
    for (qsizetype piece = 0; piece < pieces.size(); ++piece) {
        EXPECT_LE(pieces[piece].height, 300.0);
        for (const Words& words : pieces[piece].sheet.words) {
            EXPECT_GE(words.box.left(), 0.0);
            EXPECT_LE(words.box.right(), 500.0) << words.text.toStdString();
        }
    }
    const auto parts_in = [&](qsizetype piece) {
        QStringList parts;
        for (const Words& words : pieces[piece].sheet.words)
            if (words.text.startsWith(u"part ")) parts << words.text;
        return parts;
    };
    int told = 0;
    for (qsizetype piece = 0; piece < pieces.size(); ++piece) {
        told += static_cast<int>(parts_in(piece).size());
        if (piece == 0) continue;
        EXPECT_EQ(parts_in(piece).front(), parts_in(piece - 1).back());
    }
    EXPECT_EQ(told, 20 + pieces.size() - 1);
}

TEST(wiring_plots, a_build_that_fits_is_one_piece_and_no_word_of_it_is_left_out) {
    const auto pieces = wiring_plots(long_chain(3), QSizeF(500.0, 300.0));
    ASSERT_EQ(pieces.size(), 1);
    Sheet sheet = pieces.front().sheet;
    const QString all = printing_tests::all_words({sheet});
    EXPECT_EQ(all.count(QStringLiteral("a text")), 3);
    EXPECT_EQ(all.count(QStringLiteral("box")), 3);
}

}  // namespace
