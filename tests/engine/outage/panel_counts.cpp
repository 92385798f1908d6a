#include "outage/panel_counts.hpp"

#include <gmock/gmock.h>

#include "scenario/file/read.hpp"

namespace {

using namespace units;

// Two panels of 100 W and one of 50 W.
outage::Ready with_three_panels() {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Panels"
[outage]
starts = 2026-06-19T07:00:00
lasts = "1 d"
battery_temperature = "20 degC"
[place]
name = "Missoula MT"
[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
[[panel]]
power = "100 W"
count = 2
[[panel]]
power = "50 W"
)",
                                              "panels.toml");
    return outage::make_ready(read.value().scenario).value();
}

std::vector<int> counts_of(const outage::Ready& ready, int panels) {
    std::vector<int> counts;
    if (const auto sky = outage::sky_with_panels(ready, panels))
        for (const auto& group : sky->groups)
            counts.push_back(group.count);
    return counts;
}

// Each up to 16, then 18, 20, 22, 24, 27 and 30: an eighth more at a time, in whole panels.
TEST(panel_counts, each_is_looked_at_up_to_sixteen_and_then_an_eighth_more) {
    EXPECT_THAT(outage::panels_looked_at(outage::Ready{}, 30),
                testing::ElementsAre(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18,
                                     20, 22, 24, 27, 30));
    EXPECT_EQ(outage::panels_looked_at(outage::Ready{}, 19).back(), 19);
}

TEST(panel_counts, fewer_leave_out_the_last_and_more_are_like_the_first) {
    const auto ready = with_three_panels();
    EXPECT_THAT(counts_of(ready, 3), testing::ElementsAre(2, 1));
    EXPECT_THAT(counts_of(ready, 2), testing::ElementsAre(2));
    EXPECT_THAT(counts_of(ready, 1), testing::ElementsAre(1));
    EXPECT_THAT(counts_of(ready, 7), testing::ElementsAre(6, 1));
    EXPECT_THAT(counts_of(ready, 0), testing::IsEmpty());
}

// 4 x 100 W is twice 2 x 100 W under the same sky, whatever that is.
TEST(panel_counts, twice_the_panels_of_one_kind_offer_twice) {
    const auto ready = with_three_panels();
    const auto two = outage::with_panels(ready, 2);
    const auto four = outage::with_panels(two, 4);
    constexpr auto likely = static_cast<std::size_t>(outage::End::likely);
    ASSERT_EQ(two.sun[likely].size(), four.sun[likely].size());
    ASSERT_FALSE(two.sun[likely].empty());
    for (std::size_t i = 0; i < two.sun[likely].size(); ++i)
        EXPECT_NEAR(four.sun[likely][i].offered / watt, 2.0 * (two.sun[likely][i].offered / watt),
                    1e-9);
    EXPECT_TRUE(outage::with_panels(ready, 0).sun[likely].empty());
}

}  // namespace
