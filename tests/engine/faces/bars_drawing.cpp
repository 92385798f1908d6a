#include "faces/pictures/bars_drawing.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using answers::BarChart;
using answers::StartChart;
using faces::drawing_of;
using testing::HasSubstr;
using testing::Not;

// 696 across for the most, 800 Wh, from 12 on. By hand: 200 Wh are 174, 400 Wh 348.
TEST(bars_drawing, draws_what_is_sure_likely_and_possible_to_one_scale) {
    const auto drawing = drawing_of(BarChart{
        .name = "recharge",
        .title = "What comes back",
        .unit = "W.h",
        .bars = {{.label = "Thu", .low = 200.0, .likely = 400.0, .high = 800.0, .words = "400 Wh"},
                 {.label = "Fri <1>", .likely = 0.0, .words = "0 Wh", .chosen = true}}});
    EXPECT_EQ(drawing.title, "What comes back");
    EXPECT_THAT(drawing.pieces,
                HasSubstr("<rect class=\"sure\" x=\"12.0\" y=\"47.0\" width=\"174.0\""));
    EXPECT_THAT(drawing.pieces,
                HasSubstr("<rect class=\"band\" x=\"12.0\" y=\"47.0\" width=\"696.0\""));
    EXPECT_THAT(drawing.pieces, HasSubstr("<line class=\"likely\" x1=\"360.0\""));
    EXPECT_THAT(drawing.pieces,
                HasSubstr("class=\"begin strong\" x=\"12.0\" y=\"76.0\">Fri &lt;1"));
    EXPECT_DOUBLE_EQ(drawing.height, 106.0);  // two rows of 34 below 42, less the gap of the last
}

// The scale ends at one and a half times the limit: 464 of 696 across.
TEST(bars_drawing, of_a_start_have_their_limit_and_their_course) {
    StartChart chart{.name = "saw", .verdict = "starts", .words = "starts"};
    chart.bars = {{.constraint = "fuse",
                   .label = "fuse",
                   .low = 0.3,
                   .likely = 0.6,
                   .high = 9.0,
                   .binding = true,
                   .shown = "30 to > 900 %"}};
    const auto without = drawing_of(chart);
    EXPECT_THAT(without.pieces, HasSubstr("<line class=\"limit\" x1=\"476.0\""));
    EXPECT_THAT(without.pieces,
                HasSubstr("<rect class=\"band\" x=\"12.0\" y=\"47.0\" width=\"696.0\""));
    EXPECT_THAT(without.pieces, Not(HasSubstr("speed")));
    chart.time = {0.0, 1.0};
    chart.speed = {0.0, 1.0};
    chart.current = {20.0, 4.0};
    chart.direct_voltage = {11.8, 12.6};
    const auto with = drawing_of(chart);
    EXPECT_THAT(with.pieces, HasSubstr("20 A at most"));
    EXPECT_THAT(with.pieces, HasSubstr("11.80 V at least"));
    EXPECT_GT(with.height, without.height + 200.0);
}

}  // namespace
