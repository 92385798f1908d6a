#include "battery/decay.hpp"

#include "battery/step/decays.hpp"

namespace {

using battery::decay;

TEST(decay, at_no_time_nothing_has_decayed) {
    EXPECT_EQ(decay(0.0).left, 1.0);
    EXPECT_EQ(decay(0.0).once, 1.0);
    EXPECT_EQ(decay(0.0).twice, 0.5);
    EXPECT_EQ(decay(0.0).thrice, 1.0 / 6.0);
}

// Reference: the defining quotients in long double, whose 11 further bits cover the cancellation.
TEST(decay, agrees_with_its_definition_in_longer_arithmetic) {
    for (long double x = 0.02L; x < 700.0L; x *= 1.03L) {
        const long double left = std::exp(-x);
        const long double once = -std::expm1(-x) / x;
        const long double twice = (1.0L - once) / x;
        const auto computed = decay(static_cast<double>(x));
        EXPECT_NEAR(computed.left / static_cast<double>(left), 1.0, 2e-13) << x;
        EXPECT_NEAR(computed.once / static_cast<double>(once), 1.0, 1e-14) << x;
        EXPECT_NEAR(computed.twice / static_cast<double>(twice), 1.0, 1e-14) << x;
        if (x > 0.2L) {
            const long double thrice = (0.5L - twice) / x;
            EXPECT_NEAR(computed.thrice / static_cast<double>(thrice), 1.0, 3e-14) << x;
        }
    }
}

TEST(decay, the_series_and_the_quotients_meet) {
    const auto below = decay(std::nextafter(0.25, 0.0));
    const auto above = decay(0.25);
    EXPECT_NEAR(below.left, above.left, 1e-15);
    EXPECT_NEAR(below.once, above.once, 2e-15);
    EXPECT_NEAR(below.twice, above.twice, 5e-15);
    EXPECT_NEAR(below.thrice, above.thrice, 2e-14);
}

TEST(decay, long_past_any_memory_stays_finite) {
    const auto late = decay(1e6);
    EXPECT_EQ(late.left, 0.0);
    EXPECT_NEAR(late.once, 1e-6, 1e-20);
    EXPECT_TRUE(std::isfinite(late.thrice));
}

// Both within the series, one beyond it, and both.
TEST(decay, of_two_abreast_is_that_of_each_to_the_last_bit) {
    for (double x = 0.0; x < 3.0; x += 0.0137)
        for (const double y : {x, 0.1 * x, 0.0, 0.2499999, 0.25, 40.0}) {
            const auto both = battery::step::decays(battery::step::Two{x, y});
            for (const int lane : {0, 1}) {
                const battery::Decay alone = decay(lane == 0 ? x : y);
                ASSERT_EQ(both.left[lane], alone.left) << x << " " << y;
                ASSERT_EQ(both.once[lane], alone.once) << x << " " << y;
                ASSERT_EQ(both.twice[lane], alone.twice) << x << " " << y;
            }
        }
}

}  // namespace
