#include "questions/gauge.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using questions::GaugeAsked;
using units::volt;

scenario::ReadScenario lead() {
    return scenario::read_scenario(R"(format = 1
title = "A battery"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "agm"
capacity = "100 Ah"
[[load]]
name = "lamp"
from = "12V"
power = "20 W"
)",
                                   "lead.toml")
        .value();
}

const scenario::VoltageShown shown{.volts = 12.5 * volt, .decimals = 1};

// Half of the last digit, 0.05 V, and half a percent of 12.5 V, 0.0625 V.
TEST(gauge_question, a_meter_is_off_by_its_last_digit_and_its_own_error) {
    const auto found = questions::find(lead(), GaugeAsked{.reads = shown}, {});
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->reading.error / volt, 0.1125, 1e-12);
    const auto good =
        questions::find(lead(), GaugeAsked{.reads = shown, .accuracy = 0.01 * volt}, {});
    EXPECT_NEAR(good->reading.error / volt, 0.06, 1e-12);
    EXPECT_FALSE(good->from_now);
}

TEST(gauge_question, amperes_drawn_are_the_power_of_what_was_read) {
    const auto found = questions::find(
        lead(),
        GaugeAsked{.reads = shown,
                   .under = scenario::DrawnMeanwhile{.power = {}, .current = 4.0 * units::ampere}},
        {});
    ASSERT_TRUE(found);
    EXPECT_NEAR(*found->reading.power / units::watt, 50.0, 1e-9);
}

TEST(gauge_question, the_rest_is_planned_from_a_moment_of_the_outage_alone) {
    const auto read = lead();
    const auto at = [&](units::Duration after) {
        return questions::find(
            read, GaugeAsked{.reads = shown, .now = read.scenario.outage.starts + after}, {});
    };
    const auto within = at(3.0 * units::hour);
    ASSERT_TRUE(within && within->from_now);
    EXPECT_NEAR(within->from_now->left / units::hour, 21.0, 1e-9);
    EXPECT_LE(within->from_now->lasts_low, within->from_now->lasts);
    EXPECT_LE(within->from_now->lasts, within->from_now->lasts_high);
    EXPECT_FALSE(at(24.0 * units::hour));
    EXPECT_FALSE(at(-1.0 * units::hour));
}

}  // namespace
