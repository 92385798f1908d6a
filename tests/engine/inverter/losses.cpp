#include "inverter/losses.hpp"

#include <gtest/gtest.h>

namespace {

using units::watt;

scenario::EfficiencyPoint point(double at, double is) {
    return {.at = units::Share(at), .is = units::Efficiency(is)};
}

units::ApparentPower volt_amperes(double amount) {
    return amount * units::volt_ampere;
}

struct Fitted {
    units::Result<inverter::Losses> losses;
    scenario::Assumptions assumed;
};

Fitted fit(double rating, std::optional<double> idle,
           std::vector<scenario::EfficiencyPoint> stated) {
    Fitted fitted;
    const std::optional<units::Power> power =
        idle ? std::optional(*idle * watt) : std::optional<units::Power>();
    fitted.losses = inverter::fit_losses(rating * watt, power, stated, fitted.assumed);
    return fitted;
}

double efficiency_at(const inverter::Losses& losses, double share) {
    const units::Power real = share * losses.rating;
    return real / (real + inverter::loss(losses, units::ApparentPower(real)));
}

TEST(losses, a_stated_idle_is_taken_as_it_is) {
    const Fitted fitted = fit(2400, 18.3, {point(0.5, 0.91), point(1.0, 0.88)});
    ASSERT_TRUE(fitted.losses);
    EXPECT_EQ(fitted.losses->idle, 18.3 * watt);
    EXPECT_EQ(inverter::loss(*fitted.losses, volt_amperes(0)), 18.3 * watt);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 0.5), 0.91, 1e-12);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 1.0), 0.88, 1e-12);
    EXPECT_TRUE(fitted.assumed.empty());
}

TEST(losses, silence_gives_the_usual_curve_and_says_so) {
    const Fitted fitted = fit(3000, std::nullopt, {});
    ASSERT_TRUE(fitted.losses);
    EXPECT_NEAR(fitted.losses->idle / watt, 30.0, 1e-12);
    ASSERT_EQ(fitted.assumed.size(), 2U);
    EXPECT_EQ(fitted.assumed[0].where, "inverter.idle");
    EXPECT_EQ(fitted.assumed[1].where, "inverter.efficiency");
}

TEST(losses, a_large_idle_alone_is_still_answered) {
    const Fitted fitted = fit(3000, 150.0, {});
    ASSERT_TRUE(fitted.losses);
    EXPECT_EQ(fitted.losses->idle, 150.0 * watt);
    EXPECT_GE(fitted.losses->linear, 0.0);
    EXPECT_GE(fitted.losses->quadratic, 0.0);
}

TEST(losses, one_efficiency_is_met_with_and_without_idle) {
    for (const std::optional<double> idle : {std::optional<double>(), std::optional(12.0)}) {
        const Fitted fitted = fit(1000, idle, {point(0.3, 0.85)});
        ASSERT_TRUE(fitted.losses);
        EXPECT_NEAR(efficiency_at(*fitted.losses, 0.3), 0.85, 1e-12);
    }
}

TEST(losses, two_efficiencies_keep_the_usual_idle_where_they_allow_it) {
    const Fitted fitted = fit(2000, std::nullopt, {point(1.0, 0.87), point(0.4, 0.90)});
    ASSERT_TRUE(fitted.losses);
    EXPECT_NEAR(fitted.losses->idle / watt, 20.0, 1e-9);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 0.4), 0.90, 1e-12);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 1.0), 0.87, 1e-12);
}

TEST(losses, two_efficiencies_that_need_another_idle_get_it) {
    // Rising up to full load asks for more idle than usual: 0.0526 at 20 % cannot grow to 0.0753.
    const Fitted fitted = fit(1000, std::nullopt, {point(0.2, 0.80), point(1.0, 0.93)});
    ASSERT_TRUE(fitted.losses);
    EXPECT_GT(fitted.losses->idle, 10.0 * watt);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 0.2), 0.80, 1e-9);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 1.0), 0.93, 1e-9);
    EXPECT_GE(fitted.losses->quadratic, 0.0);
}

TEST(losses, a_curve_of_many_points_is_passed_closely) {
    const Fitted fitted = fit(2000, std::nullopt,
                              {point(0.05, 0.80), point(0.1, 0.87), point(0.25, 0.91),
                               point(0.5, 0.91), point(0.75, 0.90), point(1.0, 0.88)});
    ASSERT_TRUE(fitted.losses);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 0.05), 0.80, 0.01);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 0.5), 0.91, 0.01);
    EXPECT_NEAR(efficiency_at(*fitted.losses, 1.0), 0.88, 0.01);
}

TEST(losses, the_same_efficiency_stated_twice_counts_once) {
    const Fitted once = fit(2000, 15.0, {point(0.5, 0.9)});
    const Fitted twice = fit(2000, 15.0, {point(0.5, 0.9), point(0.5, 0.9)});
    ASSERT_TRUE(once.losses && twice.losses);
    EXPECT_EQ(once.losses->linear, twice.losses->linear);
}

TEST(losses, a_miss_larger_than_rounding_is_stated) {
    const Fitted fitted = fit(2400, 18.0, {point(0.1, 0.86), point(0.5, 0.91), point(1.0, 0.88)});
    ASSERT_TRUE(fitted.losses);
    ASSERT_FALSE(fitted.assumed.empty());
    EXPECT_EQ(fitted.assumed.front().where, "inverter.efficiency");
}

std::string first_error(const Fitted& fitted) {
    return fitted.losses ? "" : fitted.losses.error().front().where;
}

TEST(losses, an_efficiency_of_one_or_more_is_refused_at_its_key) {
    EXPECT_EQ(first_error(fit(1000, 10.0, {point(0.5, 1.0)})), "inverter.efficiency[0].is");
    EXPECT_EQ(first_error(fit(1000, 10.0, {point(0.5, 0.9), point(1.0, 1.2)})),
              "inverter.efficiency[1].is");
    EXPECT_EQ(first_error(fit(1000, 10.0, {point(0.5, 0.0)})), "inverter.efficiency[0].is");
}

TEST(losses, a_share_of_nought_is_refused_at_its_key) {
    EXPECT_EQ(first_error(fit(1000, 10.0, {point(0.0, 0.5)})), "inverter.efficiency[0].at");
}

TEST(losses, two_efficiencies_at_one_share_are_refused) {
    EXPECT_EQ(first_error(fit(1000, 10.0, {point(0.5, 0.9), point(0.5, 0.8)})),
              "inverter.efficiency[1]");
}

TEST(losses, an_efficiency_that_idle_alone_forbids_is_refused) {
    // 100 W at 0.95 loses 5.3 W; idle alone takes 20 W.
    EXPECT_EQ(first_error(fit(1000, 20.0, {point(0.1, 0.95)})), "inverter.efficiency");
    EXPECT_EQ(first_error(fit(1000, 20.0, {point(0.1, 0.95), point(1.0, 0.9)})),
              "inverter.efficiency");
}

TEST(losses, efficiencies_that_no_growing_loss_passes_are_refused) {
    EXPECT_EQ(first_error(
                  fit(1000, std::nullopt, {point(0.1, 0.95), point(0.5, 0.60), point(1.0, 0.95)})),
              "inverter.efficiency");
}

TEST(losses, an_idle_below_nought_or_beyond_the_rating_is_refused) {
    EXPECT_EQ(first_error(fit(1000, -1.0, {})), "inverter.idle");
    EXPECT_EQ(first_error(fit(1000, 1000.0, {})), "inverter.idle");
}

}  // namespace
