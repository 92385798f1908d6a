#include "estimate/relaxed.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace {

using namespace estimate;

double any(double least, double most) {
    return least + (most - least) * (*rc::gen::inRange(0, 1'000'000) / 1e6);
}

TEST(relaxed, all_but_one_meet_and_the_last_is_the_odd_one) {
    const std::vector<Bounds> bounds{{40, 60}, {35, 55}, {50, 70}, {10, 20}};
    EXPECT_FALSE(within_all_but(bounds, 0).has_value());
    const auto but_one = within_all_but(bounds, 1);
    ASSERT_TRUE(but_one.has_value());
    EXPECT_EQ(but_one->low, 50.0);
    EXPECT_EQ(but_one->high, 55.0);
    EXPECT_EQ(odd_ones(bounds), std::vector<std::size_t>{3});
}

TEST(relaxed, the_more_may_be_missed_the_more_is_allowed) {
    EXPECT_TRUE(rc::check([] {
        std::vector<Bounds> bounds;
        const int count = *rc::gen::inRange(1, 12);
        for (int i = 0; i < count; ++i) {
            const double low = any(0.0, 10.0);
            bounds.push_back({low, low + any(0.0, 5.0)});
        }
        for (int missed = 0; missed + 1 < int(bounds.size()); ++missed) {
            const auto few = within_all_but(bounds, missed);
            const auto more = within_all_but(bounds, missed + 1);
            if (few) RC_ASSERT(more && more->low <= few->low && more->high >= few->high);
        }
    }));
}

}  // namespace
