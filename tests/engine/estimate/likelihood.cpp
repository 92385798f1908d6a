#include "estimate/likelihood.hpp"

#include <cmath>
#include <limits>

#include <gtest/gtest.h>

namespace {

using namespace units;

TEST(likelihood, a_reading_with_an_infinite_error_says_nothing) {
    EXPECT_EQ(
        estimate::log_likelihood(
            {.read = 3.0, .expected = -7.0, .error = std::numeric_limits<double>::infinity()}),
        0.0);
    // ln of exp(-1/2) / 2, but for the constant of all normal laws
    EXPECT_DOUBLE_EQ(estimate::log_likelihood({.read = 3.0, .expected = 1.0, .error = 2.0}),
                     -0.5 - std::log(2.0));
    EXPECT_DOUBLE_EQ(estimate::distance({.read = 3.0, .expected = 1.0, .error = 2.0}), 1.0);
    EXPECT_EQ(
        estimate::distance(
            {.read = 3.0, .expected = -7.0, .error = std::numeric_limits<double>::infinity()}),
        0.0);
}

const estimate::PacksRead lithium{.chemistry = scenario::Chemistry::lifepo4,
                                  .nominal = 12.8 * volt,
                                  .capacity = 300.0 * ampere_hour};

// A display off by 0.03, of which 0.015 is fresh each time: sqrt(0.03^2 - 0.015^2) = 0.02598 is its
// own. Its counter by 1 % of the 120 Ah that went through it and by 0.05 A for 20 h, each by itself:
// the root of 1.2^2 + 1.0^2 is 1.562 Ah, of 300 Ah 0.0052. Together 0.02650, always to one side.
TEST(likelihood, a_display_is_off_by_itself_and_by_its_counter) {
    scenario::LogEntry entry;
    entry.shows = StateOfCharge(0.6);
    const estimate::State state{.charge = StateOfCharge(0.7)};
    const auto made = estimate::compared(entry, state, lithium, {}, 20.0 * hour);
    EXPECT_EQ(made.read, 0.6);
    EXPECT_EQ(made.expected, 0.7);
    EXPECT_EQ(made.error, 0.015);
    const auto high = estimate::compared(entry, state, lithium, {.display = 1.0}, 20.0 * hour);
    EXPECT_NEAR(high.expected - 0.7, 0.02650, 5e-6);
}

// 500 Wh counted: 3 % are 15 Wh, always to one side; a tenth and 5 Wh beside them, by how the sky
// went over the day, are 50.249 Wh.
TEST(likelihood, a_controller_counts_within_three_percent_and_the_sky_of_the_day) {
    scenario::LogEntry entry;
    entry.sun = scenario::SunCounted{500.0 * watt_hour};
    const estimate::State state{.sun_taken = 480.0 * watt_hour};
    auto made = estimate::compared(entry, state, lithium, {}, 20.0 * hour);
    EXPECT_NEAR(made.read - made.expected, 20.0, 1e-9);
    EXPECT_NEAR(made.error, 50.249, 5e-4);
    made = estimate::compared(entry, state, lithium, {.sun = 1.0}, 20.0 * hour);
    EXPECT_NEAR(made.expected, 495.0, 1e-9);
}

// Lead under 20 A through 10 mohm stands 0.2 V below what it would unloaded. Half of the last digit
// of 12.5 V is 0.05 V, over the square root of three 0.0289 V; a quarter of the table's 0.1 V / 1.2816
// is 0.0195 V, both together 0.0348 V. A meter that reads high by one
// deviation shows 0.5 % more: 0.0625 V.
TEST(likelihood, a_voltage_under_a_load_is_compared_with_what_the_load_leaves) {
    scenario::LogEntry entry;
    entry.reads = scenario::VoltageShown{12.5 * volt, 1};
    entry.under = scenario::DrawnMeanwhile{.power = {}, .current = 20.0 * ampere};
    const estimate::PacksRead lead{.chemistry = scenario::Chemistry::agm,
                                   .nominal = 12.0 * volt,
                                   .capacity = 100.0 * ampere_hour};
    const estimate::State state{.unloaded = 12.7 * volt, .resistance = 0.010 * ohm};
    auto made = estimate::compared(entry, state, lead, {}, 1.0 * hour);
    EXPECT_NEAR(made.expected, 12.5, 1e-9);
    EXPECT_NEAR(made.error, 0.0348, 5e-5);
    made = estimate::compared(entry, state, lead, {.meter = 1.0}, 1.0 * hour);
    EXPECT_NEAR(made.expected, 12.5625, 1e-9);
}

// Not rested, with 12.9 V without and 12.7 V with what runs: 12.8 V within 0.1 V, the digit, and a
// quarter of 0.04 V / 1.2816.
TEST(likelihood, at_an_unknown_moment_what_runs_may_be_on_or_off) {
    scenario::LogEntry entry;
    entry.reads = scenario::VoltageShown{12.80 * volt, 2};
    const auto made = estimate::compared(
        entry, {.rested = 13.0 * volt, .unloaded = 12.9 * volt, .loaded = 12.7 * volt}, lithium, {},
        1.0 * hour);
    EXPECT_NEAR(made.expected, 12.8, 1e-9);
    EXPECT_NEAR(made.error, std::hypot(0.1, 0.00289, 0.0078), 5e-6);
    entry.rested = 6.0 * hour;
    EXPECT_NEAR(
        estimate::compared(entry, {.rested = 13.0 * volt}, lithium, {}, 1.0 * hour).expected, 13.0,
        1e-9);
}

// 100 W over two days by a meter of 5 % on a load whose days differ by 10 %: 0.05^2 + 0.10^2 / 2 is
// 0.0866^2. Of 10 W it is 15 % itself.
TEST(likelihood, a_meter_is_as_good_as_it_is_itself_and_as_its_days_are_many) {
    const auto error = estimate::meter_error;
    EXPECT_NEAR(error(100.0 * watt, 1.0, false, 2.0 * day, 0.10).both(), 0.0866, 5e-5);
    EXPECT_EQ(error(100.0 * watt, 1.0, false, 2.0 * day, 0.10).own, 0.05);
    EXPECT_NEAR(error(10.0 * watt, 1.0, false, 2.0 * day, 0.0).both(), 0.15, 1e-12);
    // a compressor over 4 h: 0.24 / 2 more
    EXPECT_NEAR(error(100.0 * watt, 1.0, true, 4.0 * hour, 0.0).both(), 0.13, 1e-12);
}

}  // namespace
