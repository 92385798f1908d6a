#include "faces/sheet.hpp"

#include "closed.hpp"

namespace {

using answers::Answer;
using answers::Column;
using faces::in_html;
using page_of::what_is_not_closed;
using scenario::Severity;
using testing::HasSubstr;
using testing::Not;

using Numbers = std::vector<double>;
using Words = std::vector<words::Said>;

Answer two_days() {
    Answer answer{.question = "outage", .title = "Two days"};
    answer.days = answers::DaysChart{.starts = units::LocalTime{}, .lasts = 48.0, .top = 1000.0};
    answer.days->at = {0.0, 48.0};
    answer.days->nine_in_ten = answer.days->likely = answer.days->one_in_ten = {1000.0, 200.0};
    answer.days->markers = {{.at = 24.0, .sign = 'a', .label = "the <packs> & more"}};
    answer.series = {
        {.name = "hours",
         .title = "Hour by hour",
         .columns = {{.name = "at", .heading = "hour", .unit = "h", .points = Numbers{0.0, 1.0}}}}};
    answer.closing = "Arithmetic";
    return answer;
}

TEST(sheet, of_the_days_is_a_page_for_a_phone_with_nothing_from_elsewhere) {
    const auto page = in_html(two_days());
    EXPECT_EQ(what_is_not_closed(page), "");
    for (const char* const part : {"name=\"viewport\"", "<svg ", "<summary>Hour by hour</summary>",
                                   "<b>a</b> the &lt;packs&gt;", "@media print"})
        EXPECT_THAT(page, HasSubstr(part));
    for (const char* const part : {"<script", "src=", "href=", "url(", "@import"})
        EXPECT_THAT(page, Not(HasSubstr(part)));
}

TEST(sheet, a_brief_table_stands_open_with_its_units_and_its_words_as_words) {
    Answer answer{.question = "storage"};
    answer.series = {
        {.name = "packs",
         .title = "Pack by pack",
         .columns =
             {{.name = "name", .heading = "pack", .unit = "", .points = Words{"<main> & spare"}},
              {.name = "left", .heading = "left", .unit = "%", .points = Numbers{62.5}}},
         .brief = true},
        {.name = "months", .title = "Month by month", .columns = {}, .brief = false}};
    const auto page = in_html(answer);
    EXPECT_EQ(what_is_not_closed(page), "");
    EXPECT_THAT(page, HasSubstr("<th scope=\"col\">pack</th><th scope=\"col\">left [%]</th>"));
    EXPECT_THAT(page, HasSubstr("<tr><td>&lt;main&gt; &amp; spare</td><td>62.5</td></tr>"));
    EXPECT_THAT(page, Not(HasSubstr("Month by month")));
}

TEST(sheet, has_no_heading_over_nothing_and_keeps_short_cells_on_one_line) {
    Answer answer{.question = "storage"};
    answer.series = {{.name = "months",
                      .title = "Month by month",
                      .columns = {{.name = "date",
                                   .heading = "date",
                                   .unit = "",
                                   .points = Words{"2026-01-14", "the day after"}}},
                      .brief = true}};
    const auto page = in_html(answer);
    EXPECT_THAT(page, HasSubstr("<td class=\"short\">2026-01-14</td>"));
    EXPECT_THAT(page, HasSubstr("<td>the day after</td>"));
    for (const char* heading : {"Findings", "Assumed", "Beware"})
        EXPECT_THAT(page, Not(HasSubstr(heading))) << heading;
}

TEST(sheet, a_finding_says_how_grave_it_is_in_words) {
    Answer answer{.question = "wiring"};
    answer.findings = {{.finding = {.severity = Severity::stop,
                                    .where = "circuit light",
                                    .text = "10.5 A on a 5 A fuse",
                                    .mend = "fit what bears it",
                                    .source = "[NEC] 210.20(A)"}},
                       {.finding = {.severity = Severity::note,
                                    .where = "",
                                    .text = "no fuse is named",
                                    .mend = "",
                                    .source = ""}}};
    const auto page = in_html(answer);
    EXPECT_THAT(page,
                HasSubstr("<li class=\"stop\">STOP circuit light: 10.5 A on a 5 A fuse → fit "
                          "what bears it <span class=\"small\">([NEC] 210.20(A))</span></li>"));
    EXPECT_THAT(page, HasSubstr("<li class=\"other\">NOTE unit: no fuse is named</li>"));
}

}  // namespace
