#include "faces/bars.hpp"

namespace {

using namespace answers;
using namespace faces;
using testing::ElementsAre;
using testing::HasSubstr;

const BarChart chart{
    .name = "recharge",
    .title = "Days",
    .unit = "W.h",
    .bars = {{.label = "Mon", .low = 0.0, .likely = 0.0, .high = 0.0, .words = "0 Wh"},
             {.label = "Tue",
              .low = 100.0,
              .likely = 200.0,
              .high = 400.0,
              .words = "200 Wh",
              .chosen = true}}};

TEST(bars, a_range_is_drawn_in_three_shades_and_the_chosen_one_is_marked) {
    const auto lines = drawn_bars(chart, {.width = 60, .ascii = true});
    ASSERT_EQ(lines.size(), 3u);
    // 60 columns less label 3, words 6 and 5 for signs and spaces: 46 cells for 400 Wh
    const std::string bar = std::string(12, '#') + std::string(11, '=') + std::string(23, '-');
    EXPECT_EQ(lines[2], ">Tue |" + bar + " 200 Wh");
    EXPECT_THAT(lines[1], testing::StartsWith(" Mon | "));
}

TEST(bars, bars_without_a_range_need_no_key) {
    BarChart sure = chart;
    sure.bars[1].low = sure.bars[1].high = 200.0;
    EXPECT_EQ(drawn_bars(sure, {.width = 80, .ascii = true})[0], "Days");
    EXPECT_THAT(drawn_bars(chart, {.width = 80, .ascii = true})[0], HasSubstr("at least"));
}

TEST(bars, nothing_at_all_draws_nothing_and_does_not_divide_by_it) {
    BarChart none = chart;
    none.bars.pop_back();
    EXPECT_THAT(drawn_bars(none, {.width = 60, .ascii = true})[1], HasSubstr("0 Wh"));
}

TEST(bars, a_curve_rises_to_its_highest_sign) {
    const DayCurves curves{.title = "Day",
                           .unit = "W",
                           .at = {0.0, 6.0, 12.0, 18.0},
                           .curves = {{"high", "bright", {0.0, 50.0, 100.0, 0.0}, "1 kWh"}}};
    const auto lines = drawn_curves(curves, {.width = 60, .ascii = true});
    EXPECT_EQ(lines[1], " bright | =# | 1 kWh");
}

}  // namespace
