// The check values of the method: each worked out there by two ways.
#include "estimate/closed_form.hpp"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace {

using namespace estimate;

TEST(closed_form, a_reading_of_a_charge_that_the_plan_knows_something_of) {
    const auto made = updated({.mean = 36.6, .deviation = 8.0}, 20.5, 5.0);
    EXPECT_NEAR(made.after.mean, 25.02, 0.005);
    EXPECT_NEAR(made.after.deviation, 4.240, 0.0005);
    EXPECT_NEAR(made.surprise, -1.707, 0.0005);
}

TEST(closed_form, a_meter_on_a_refrigerator_that_is_known_by_its_label) {
    const double label = 450'000.0 / 8760.0;
    const double shown = 1900.0 / 31.0;
    EXPECT_NEAR(label, 51.37, 0.005);
    EXPECT_NEAR(shown, 61.29, 0.005);
    const auto made = updated({.mean = std::log(label), .deviation = 0.25}, std::log(shown), 0.05);
    EXPECT_NEAR(std::exp(made.after.mean), 60.88, 0.005);
    EXPECT_NEAR(made.after.deviation, 0.04903, 0.000005);
    EXPECT_NEAR(made.surprise, 0.6926, 0.00005);
}

TEST(closed_form, forty_percent_more_departs_of_a_metered_load_and_not_of_a_label) {
    const double more = std::log(1.4);
    const double metered = std::log(1.05) / 1.2816;
    const double label = std::log(1.25) / 1.2816;
    EXPECT_NEAR(metered, 0.03807, 0.000005);
    EXPECT_NEAR(label, 0.1741, 0.00005);
    EXPECT_NEAR(updated({0.0, metered}, more, metered).surprise, 6.250, 0.0005);
    EXPECT_NEAR(updated({0.0, label}, more, metered).surprise, 1.888, 0.0005);
    EXPECT_NEAR(updated({0.0, 0.05}, more, 0.05).surprise, 4.758, 0.0005);
    EXPECT_NEAR(updated({0.0, 0.25}, more, 0.05).surprise, 1.320, 0.0005);
}

TEST(closed_form, a_meter_on_the_load_moves_the_blame_to_the_pack) {
    const Joint before{.mean = {0.0, 0.0}, .covariance = {{0.04, 0.0}, {0.0, 0.01}}};
    const double charge[] = {1.0, -1.0};
    const auto first = updated(before, charge, 0.25, 0.05);
    EXPECT_NEAR(first.after.mean[0], 0.1905, 0.00005);
    EXPECT_NEAR(first.after.mean[1], -0.0476, 0.00005);
    EXPECT_NEAR(std::sqrt(first.after.covariance[0][0]), 0.0976, 0.00005);
    EXPECT_NEAR(std::sqrt(first.after.covariance[1][1]), 0.0900, 0.00005);
    EXPECT_NEAR(first.after.covariance[0][1] /
                    std::sqrt(first.after.covariance[0][0] * first.after.covariance[1][1]),
                0.8677, 0.00005);
    EXPECT_NEAR(first.surprise, 1.091, 0.0005);
    const double load[] = {1.0, 0.0};
    const auto second = updated(first.after, load, 0.05, 0.05);
    EXPECT_NEAR(second.after.mean[0], 0.0792, 0.00005);
    EXPECT_NEAR(second.after.mean[1], -0.1366, 0.00005);
    EXPECT_NEAR(std::sqrt(second.after.covariance[0][0]), 0.0445, 0.00005);
    EXPECT_NEAR(std::sqrt(second.after.covariance[1][1]), 0.0572, 0.00005);
}

// 1,000 Wh, 60 W and 40 W and 20 W idle; the time is E/P.
TEST(closed_form, what_to_meter_next) {
    const double total = 120.0;
    const double time = 1000.0 / total;
    EXPECT_NEAR(time, 8.333, 0.0005);
    const double by_first = -time * 60.0 / total;  // for the logarithm of the draw
    const double by_second = -time * 40.0 / total;
    const double by_held = time;
    const double variance =
        std::pow(by_first * 0.25, 2) + std::pow(by_second * 0.5, 2) + std::pow(by_held * 0.10, 2);
    EXPECT_NEAR(std::sqrt(variance), 1.926, 0.0005);
    EXPECT_NEAR(deviation_after(variance, by_first * 0.0625, 0.0625, 0.05), 1.633, 0.0005);
    EXPECT_NEAR(deviation_after(variance, by_second * 0.25, 0.25, 0.05), 1.341, 0.0005);
    EXPECT_NEAR(deviation_after(variance, by_held * 0.01, 0.01, 0.08), 1.812, 0.0005);
}

TEST(closed_form, a_counter_that_misses_a_small_current) {
    EXPECT_NEAR(counter_error(60.0, 0.01, 0.05, 48.0), 2.474, 0.0005);
}

TEST(closed_form, one_meter_many_times_is_no_better_than_itself) {
    const auto left = [](double own, int readings) {
        return updated({0.0, 8.0}, 0.0, deviation_of_mean(own, 5.0, readings)).after.deviation;
    };
    EXPECT_NEAR(left(0.0, 1), 4.240, 0.0005);
    EXPECT_NEAR(left(0.0, 2), 3.234, 0.0005);
    EXPECT_NEAR(left(0.0, 4), 2.386, 0.0005);
    EXPECT_NEAR(left(2.0, 1), 4.467, 0.0005);
    EXPECT_NEAR(left(2.0, 2), 3.622, 0.0005);
    EXPECT_NEAR(left(2.0, 4), 2.972, 0.0005);
}

TEST(closed_form, surprises_that_fit_together_and_such_that_do_not) {
    for (const auto& [count, most] :
         {std::pair{1, 3.84}, {2, 5.99}, {3, 7.81}, {4, 9.49}, {5, 11.07}})
        EXPECT_NEAR(largest_sum_of_squares(count, 0.05), most, 0.005);
    const double fits[] = {1.2, -2.1, 0.4};
    const double does_not[] = {1.2, -3.1, 0.4};
    EXPECT_TRUE(fit_together(fits));
    EXPECT_FALSE(fit_together(does_not));
}

// ---- What holds for every reading.

double any(double least, double most) {
    return least + (most - least) * (*rc::gen::inRange(0, 1'000'000) / 1e6);
}

TEST(closed_form, an_infinite_error_changes_nothing) {
    EXPECT_TRUE(rc::check([] {
        const Normal before{any(-5.0, 5.0), any(0.01, 3.0)};
        const auto made = updated(before, any(-9.0, 9.0), std::numeric_limits<double>::infinity());
        RC_ASSERT(made.after.mean == before.mean && made.after.deviation == before.deviation);
    }));
}

TEST(closed_form, the_order_of_readings_does_not_matter_and_each_narrows) {
    EXPECT_TRUE(rc::check([] {
        const Normal before{any(-1.0, 1.0), any(0.05, 1.0)};
        const double y1 = any(-2.0, 2.0);
        const double y2 = any(-2.0, 2.0);
        const double s1 = any(0.02, 1.0);
        const double s2 = any(0.02, 1.0);
        const auto one = updated(updated(before, y1, s1).after, y2, s2).after;
        const auto two = updated(updated(before, y2, s2).after, y1, s1).after;
        RC_ASSERT(std::abs(one.mean - two.mean) < 1e-12);
        RC_ASSERT(std::abs(one.deviation - two.deviation) < 1e-12);
        RC_ASSERT(one.deviation < before.deviation);
    }));
}

}  // namespace
