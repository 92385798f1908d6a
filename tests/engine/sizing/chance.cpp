#include "sizing/chance.hpp"

#include <array>

#include <gtest/gtest.h>

namespace {

using namespace units;

TEST(chance, that_never_failed_is_not_known_to_be_one) {
    const auto chance = sizing::counted(20, 20);
    EXPECT_EQ(chance.of.value(), 1.0);
    EXPECT_LT(chance.low.value(), 0.85);
    EXPECT_EQ(chance.high.value(), 1.0);
    EXPECT_EQ(chance.outages, 20);
}

TEST(chance, is_known_better_from_more_outages) {
    const auto few = sizing::counted(90, 100);
    const auto many = sizing::counted(900, 1000);
    EXPECT_EQ(few.of, many.of);
    EXPECT_GT(few.high.value() - few.low.value(), 3.0 * (many.high.value() - many.low.value()));
    EXPECT_LT(few.low, few.of);
    EXPECT_GT(few.high, few.of);
}

// [Newcombe 1998] table I, the score method without continuity correction; four decimals as
// printed.
TEST(chance, agrees_with_the_printed_score_intervals) {
    struct Printed {
        int lasted, outages;
        double low, high;
    };
    for (const auto& row : {Printed{81, 263, 0.2553, 0.3662}, Printed{15, 148, 0.0624, 0.1605},
                            Printed{0, 20, 0.0000, 0.1611}, Printed{1, 29, 0.0061, 0.1718}}) {
        const auto chance = sizing::counted(row.lasted, row.outages);
        EXPECT_NEAR(chance.low.value(), row.low, 0.00006);
        EXPECT_NEAR(chance.high.value(), row.high, 0.00006);
    }
}

TEST(chance, spread_is_by_nearest_rank) {
    std::array<Duration, 10> lasts;
    for (int i = 0; i < 10; ++i)
        lasts[std::size_t(i)] = double(10 - i) * hour;
    const auto spread = sizing::spread_of(lasts);
    EXPECT_EQ(spread.p10 / hour, 1.0);
    EXPECT_EQ(spread.p50 / hour, 5.0);
    EXPECT_EQ(spread.p90 / hour, 9.0);
}

TEST(chance, spread_of_one_outage_is_that_outage) {
    std::array<Duration, 1> lasts{3.0 * hour};
    const auto spread = sizing::spread_of(lasts);
    EXPECT_EQ(spread.p10 / hour, 3.0);
    EXPECT_EQ(spread.p90 / hour, 3.0);
}

}  // namespace
