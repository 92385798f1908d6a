#include "solar/weather/clearness_distribution.hpp"

namespace {

using namespace units;
using solar::Clearness;
using solar::ClearnessDistribution;

// By hand. At sea level a clear sky lets 0.75 through [FAO-56], the darkest days 0.13. An
// exponential that rises by one over that width has its mean at 1/(1 - 1/e) - 1 = 0.58198 of it,
// 0.49083, and its median at 1 + ln(0.5 + 0.5/e) = 0.62011 of it, 0.51447.
TEST(clearness_distribution, a_mean_above_the_middle_makes_bright_days_frequent) {
    const ClearnessDistribution days(Clearness(0.490826), {});
    EXPECT_NEAR(days.lowest().value(), 0.13, 1e-12);
    EXPECT_NEAR(days.highest().value(), 0.75, 1e-12);
    EXPECT_NEAR(days.steepness(), 1.0 / 0.62, 1e-4);
    EXPECT_NEAR(days.mean().value(), 0.490826, 1e-12);
    EXPECT_NEAR(days.quantile(Probability(0.5)).value(), 0.51447, 1e-5);
    EXPECT_NEAR(days.below(Clearness(0.51447)).value(), 0.5, 1e-4);
}

// Its mirror image about the middle, 0.44: a mean of 0.389174 and a median of 0.36553.
TEST(clearness_distribution, a_mean_below_the_middle_is_its_mirror_image) {
    const ClearnessDistribution days(Clearness(0.389174), {});
    EXPECT_NEAR(days.steepness(), -1.0 / 0.62, 1e-4);
    EXPECT_NEAR(days.quantile(Probability(0.5)).value(), 0.36553, 1e-5);
}

TEST(clearness_distribution, a_mean_in_the_middle_scatters_evenly) {
    const ClearnessDistribution days(Clearness(0.44), {});
    EXPECT_NEAR(days.steepness(), 0.0, 1e-9);
    for (const double share : {0.0, 0.25, 0.5, 1.0})
        EXPECT_NEAR(days.quantile(Probability(share)).value(), 0.13 + 0.62 * share, 1e-9);
}

// [FAO-56]: 0.02 more for each 1,000 m; a month darker than the darkest days has darker ones.
TEST(clearness_distribution, bounds_go_with_the_height_and_give_way_to_a_dark_month) {
    EXPECT_NEAR(ClearnessDistribution(Clearness(0.5), 2000.0 * metre).highest().value(), 0.79,
                1e-12);
    const ClearnessDistribution dark(Clearness(0.1), {});
    EXPECT_LT(dark.lowest().value(), 0.1);
    EXPECT_NEAR(dark.mean().value(), 0.1, 1e-9);
}

}  // namespace
