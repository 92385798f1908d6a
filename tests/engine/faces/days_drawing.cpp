#include "faces/pictures/days_drawing.hpp"

#include <gmock/gmock.h>
#include <vector>

#include "closed.hpp"
#include <gtest/gtest.h>

namespace {

using answers::DaysChart;
using faces::drawing_of;
using faces::in_svg;
using testing::HasSubstr;

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
    EXPECT_EQ(page_of::what_is_not_closed(svg), "");
    EXPECT_THAT(svg, HasSubstr("A &quot;storm&quot; &amp; &lt;more&gt;"));
    EXPECT_THAT(svg, HasSubstr("the &lt;packs&gt; &amp; more"));
    EXPECT_THAT(svg, HasSubstr("prefers-color-scheme:dark"));
}

TEST(days_drawing, of_an_outage_without_hours_is_a_drawing_still) {
    EXPECT_EQ(page_of::what_is_not_closed(in_svg(drawing_of(DaysChart{}))), "");
}

}  // namespace
