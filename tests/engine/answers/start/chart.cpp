#include "answers/start/chart.hpp"

#include <gtest/gtest.h>

namespace {

using namespace answers;
using starting::Constraint;
using starting::Utilised;

units::Range<Utilised> used(double low, double high) {
    return units::spanning(Utilised(low), Utilised(0.5 * (low + high)), Utilised(high));
}

TEST(start_chart, each_use_is_a_bar_and_the_one_that_binds_is_marked) {
    starting::LoadStart start{.name = "pump"};
    start.judged.verdict = starting::StartVerdict::will_not_start;
    start.judged.binding = Constraint::fuse;
    start.judged.used = {{Constraint::pack_current, used(0.3, 0.5)},
                         {Constraint::fuse, used(1.1, 1.4)}};
    const auto chart = start_chart(start);
    EXPECT_EQ(chart.verdict, "will_not_start");
    ASSERT_EQ(chart.bars.size(), 2U);
    EXPECT_FALSE(chart.bars[0].binding);
    EXPECT_TRUE(chart.bars[1].binding);
    EXPECT_EQ(chart.bars[1].shown, "110 to 140 %");
    // 0.90 of a source, [Welding-generator handbook].
    EXPECT_EQ(chart.bars[0].comfortable, 0.9);
}

}  // namespace
