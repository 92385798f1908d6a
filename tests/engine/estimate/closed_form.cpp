// The check values of the method: each worked out there by two ways.
#include "estimate/closed_form.hpp"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include "estimate/relaxed.hpp"
#include "estimate/weights.hpp"

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

// Four draws by two capacities; a charge is read, then a meter.
TEST(weights, members_by_hand) {
    std::vector<double> charge;
    std::vector<double> meter;
    std::vector<double> a_of;
    std::vector<double> q_of;
    for (const double a : {0.8, 1.0, 1.2, 1.4})
        for (const double q : {0.8, 1.0}) {
            const double far = (0.60 - (1.0 - 0.3 * a / q)) / 0.05;
            charge.push_back(-0.5 * far * far);
            const double by_meter = (1.02 - a) / 0.05;
            meter.push_back(charge.back() - 0.5 * by_meter * by_meter);
            a_of.push_back(a);
            q_of.push_back(q);
        }
    const auto weights = weights_of(charge);
    const double told[] = {.0391, .0017, .2551, .0391, .1754, .2099, .0127, .2669};
    for (std::size_t i = 0; i < weights.size(); ++i)
        EXPECT_NEAR(weights[i], told[i], 0.00005);
    EXPECT_NEAR(effective(weights), 4.665, 0.0005);
    double small = 0.0;
    double mean = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        small += q_of[i] < 0.9 ? weights[i] : 0.0;
        mean += weights[i] * a_of[i];
    }
    EXPECT_NEAR(small, 0.4823, 0.00005);
    EXPECT_NEAR(mean, 1.181, 0.0005);
    const auto both = weights_of(meter);
    double small_then = 0.0;
    double hours = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < both.size(); ++i) {
        small_then += q_of[i] < 0.9 ? both[i] : 0.0;
        const double left =
            (1.0 - 0.3 * a_of[i] / q_of[i] - 0.10) * 100.0 * q_of[i] / (10.0 * a_of[i]);
        hours += both[i] * left;
        squares += both[i] * left * left;
    }
    EXPECT_NEAR(small_then, 0.8661, 0.00005);
    EXPECT_NEAR(hours, 4.438, 0.0005);
    EXPECT_NEAR(std::sqrt(squares - hours * hours), 0.612, 0.0005);
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

TEST(relaxed, all_but_one_meet_and_the_last_is_the_odd_one) {
    const std::vector<Bounds> bounds{{40, 60}, {35, 55}, {50, 70}, {10, 20}};
    EXPECT_FALSE(within_all_but(bounds, 0).has_value());
    const auto but_one = within_all_but(bounds, 1);
    ASSERT_TRUE(but_one.has_value());
    EXPECT_EQ(but_one->low, 50.0);
    EXPECT_EQ(but_one->high, 55.0);
    EXPECT_EQ(odd_ones(bounds), std::vector<std::size_t>{3});
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

TEST(weights, sum_to_one_and_count_no_more_than_there_are) {
    EXPECT_TRUE(rc::check([] {
        std::vector<double> likelihood;
        const int count = *rc::gen::inRange(1, 200);
        for (int i = 0; i < count; ++i)
            likelihood.push_back(any(-900.0, 0.0));
        const auto weights = weights_of(likelihood);
        double sum = 0.0;
        for (const double weight : weights)
            sum += weight;
        RC_ASSERT(std::abs(sum - 1.0) < 1e-12);
        RC_ASSERT(effective(weights) <= double(weights.size()) * (1.0 + 1e-12));
        RC_ASSERT(effective(weights) >= 1.0 - 1e-12);
        const double half = 0.5 * double(weights.size());
        const double exponent = exponent_for(likelihood, 1.0, half);
        RC_ASSERT(effective(weights_of(likelihood, exponent)) >= half * (1.0 - 1e-9));
        // Each is drawn again as often as its weight says, but for one.
        const auto places = drawn_again(weights, 1000);
        std::vector<int> often(weights.size(), 0);
        for (const std::size_t place : places)
            ++often[place];
        for (std::size_t i = 0; i < weights.size(); ++i)
            RC_ASSERT(std::abs(often[i] - 1000.0 * weights[i]) <= 1.0 + 1e-6);
    }));
}

TEST(weights, of_one_likelihood_are_alike_to_the_last_bit) {
    for (const double one : {0.0, -3.0, -1e300}) {
        const auto weights = weights_of(std::vector<double>(64, one));
        for (const double weight : weights)
            EXPECT_EQ(weight, 1.0 / 64.0);
    }
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
