#include "faces/days_drawing.hpp"

#include <gmock/gmock.h>
#include <vector>

#include <gtest/gtest.h>

#include "faces/sheet.hpp"

namespace {

using answers::Answer;
using answers::DaysChart;
using faces::drawing_of;
using faces::in_html;
using faces::in_svg;
using testing::HasSubstr;
using testing::Not;

DaysChart two_days() {
    DaysChart chart{.starts = units::LocalTime{}, .lasts = 48.0, .top = 1000.0, .usable = 900.0};
    chart.at = {0.0, 24.0, 48.0};
    chart.nine_in_ten = {1000.0, 300.0, 0.0};
    chart.likely = {1000.0, 500.0, 200.0};
    chart.one_in_ten = {1000.0, 700.0, 400.0};
    chart.hours = {{.from = 0.0, .to = 1.0, .sun_offered = 50.0, .wanted = 100.0},
                   {.from = 1.0, .to = 2.0, .wanted = 25.0}};
    chart.nights = {{.from = 6.0, .to = 12.0}};
    chart.markers = {{.at = 24.0, .sign = 'a', .label = "the <packs> & more"}};
    return chart;
}

// The elements of a page in their order close each what was opened last; empty where they do.
std::string what_is_not_closed(const std::string& page) {
    std::vector<std::string> open;
    for (auto at = page.find('<'); at != std::string::npos; at = page.find('<', at + 1)) {
        const auto end = page.find('>', at);
        if (end == std::string::npos) return page.substr(at, 40);
        const auto tag = page.substr(at + 1, end - at - 1);
        if (tag.starts_with('!') || tag.ends_with('/')) continue;
        const bool closes = tag.starts_with('/');
        const auto name = tag.substr(closes ? 1 : 0, tag.find(' ') - (closes ? 1 : 0));
        if (!closes) {
            open.push_back(name);
        } else if (open.empty() || open.back() != name) {
            return tag;
        } else {
            open.pop_back();
        }
    }
    return open.empty() ? "" : open.back();
}

// The energy at the foot is 220 down, all of it 26 down; 48 h are 82 to 708 across. By hand:
// half of 1000 Wh after 24 h is at (82 + 708) / 2 = 395 across, (220 + 26) / 2 = 123 down.
TEST(days_drawing, draws_each_value_at_its_place) {
    const auto svg = in_svg(drawing_of(two_days()));
    EXPECT_THAT(svg, HasSubstr("<polyline class=\"likely\" points=\"82.0,26.0 395.0,123.0 "));
    EXPECT_THAT(svg, HasSubstr("cx=\"395.0\""));  // the pin
    // The hour of most, 100 W, reaches the top of its part; 50 W of sun half of it.
    EXPECT_THAT(svg, HasSubstr("class=\"sun\" x=\"82.0\" y=\"301.0\""));
    EXPECT_THAT(svg, HasSubstr("class=\"loads\" points=\"82.0,262.0 "));
    // Six of 48 hours of night from the sixth: an eighth of 626 across.
    EXPECT_THAT(svg, HasSubstr("<rect class=\"night\" x=\"160.2\" y=\"26\" width=\"78.2\""));
    EXPECT_THAT(svg, HasSubstr("class=\"limit\" x1=\"82\" y1=\"200.6\""));  // 100 Wh are kept
}

TEST(days_drawing, is_closed_and_shows_words_as_words) {
    auto drawing = drawing_of(two_days());
    drawing.title = "A \"storm\" & <more>";
    const auto svg = in_svg(drawing);
    EXPECT_EQ(what_is_not_closed(svg), "");
    EXPECT_THAT(svg, HasSubstr("A &quot;storm&quot; &amp; &lt;more&gt;"));
    EXPECT_THAT(svg, HasSubstr("the &lt;packs&gt; &amp; more"));
    EXPECT_THAT(svg, HasSubstr("prefers-color-scheme:dark"));
}

TEST(days_drawing, of_an_outage_without_hours_is_a_drawing_still) {
    EXPECT_EQ(what_is_not_closed(in_svg(drawing_of(DaysChart{}))), "");
}

TEST(sheet, of_the_days_is_a_page_for_a_phone_with_nothing_from_elsewhere) {
    Answer answer{.question = "outage", .title = "Two days"};
    answer.days = two_days();
    answer.series = {{.name = "hours",
                      .title = "Hour by hour",
                      .columns = {{.name = "at",
                                   .heading = "hour",
                                   .unit = "h",
                                   .points = std::vector<double>{0.0, 1.0}}}}};
    answer.closing = "Arithmetic";
    const auto page = in_html(answer);
    EXPECT_EQ(what_is_not_closed(page), "");
    for (const char* const part : {"name=\"viewport\"", "<svg ", "<summary>Hour by hour</summary>",
                                   "<b>a</b> the &lt;packs&gt;", "@media print"})
        EXPECT_THAT(page, HasSubstr(part));
    for (const char* const part : {"<script", "src=", "href=", "url(", "@import"})
        EXPECT_THAT(page, Not(HasSubstr(part)));
}

}  // namespace
