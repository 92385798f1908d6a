#include "inverter/loss_fit.hpp"

#include <gtest/gtest.h>

namespace {

using inverter::CurvePoint;
using inverter::LossShares;

std::vector<CurvePoint> points_of(const LossShares& shares, std::vector<double> at) {
    std::vector<CurvePoint> points;
    for (const double share : at) {
        points.push_back({share, share / (share + inverter::loss_share_at(shares, share))});
    }
    return points;
}

TEST(loss_fit, points_of_a_curve_give_the_curve_back) {
    const LossShares shares{0.008, 0.03, 0.09};
    const auto found = inverter::nearest(points_of(shares, {0.05, 0.2, 0.5, 1.0}), std::nullopt);
    ASSERT_TRUE(found);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR((*found)[i], shares[i], 1e-12);
    }
}

TEST(loss_fit, too_few_points_decide_nothing) {
    EXPECT_FALSE(inverter::nearest({{0.5, 0.9}, {1.0, 0.9}}, std::nullopt));
    EXPECT_FALSE(inverter::nearest({{0.5, 0.9}}, 0.01));
    EXPECT_TRUE(inverter::nearest({{0.5, 0.9}, {1.0, 0.9}}, 0.01));
}

TEST(loss_fit, points_at_one_share_decide_nothing) {
    EXPECT_FALSE(inverter::nearest({{0.5, 0.9}, {0.5, 0.9}}, 0.01));
}

TEST(loss_fit, no_constant_falls_below_nought_when_told_so) {
    const LossShares falling{0.02, -0.03, 0.11};
    for (const double share :
         inverter::nearest_not_negative(points_of(falling, {0.1, 0.5, 1.0}), std::nullopt)) {
        EXPECT_GE(share, 0.0);
    }
}

TEST(loss_fit, a_curve_whose_loss_dips_below_nought_is_unsound) {
    EXPECT_TRUE(inverter::is_sound({0.02, -0.02, 0.11}));
    EXPECT_FALSE(inverter::is_sound({0.001, -0.03, 0.11}));  // 0.03^2 > 4 * 0.001 * 0.11
    EXPECT_FALSE(inverter::is_sound({0.3, -1.1, 2.0}));      // a larger load would take less
    EXPECT_FALSE(inverter::is_sound({-0.001, 0.1, 0.1}));
    EXPECT_FALSE(inverter::is_sound({0.01, 0.1, -0.01}));
}

TEST(loss_fit, the_worst_miss_is_the_largest_difference_of_efficiency) {
    // 0.5 / (0.5 + 0.5) = 0.5 and 1 / (1 + 0.5) = 0.6667.
    EXPECT_NEAR(inverter::worst_miss({0.5, 0.0, 0.0}, {{0.5, 0.52}, {1.0, 0.7}}), 0.0333, 1e-4);
}

}  // namespace
