#include <gmock/gmock.h>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "engine/scenario/log_sample.hpp"

namespace {

using log_sample::read_log;

TEST(voltage_shown, half_the_last_digit_is_that_of_the_figure_as_typed) {
    using namespace units;
    const auto half = [](std::string_view reads) {
        const auto log =
            read_log(fmt::format("[[log]]\nat = 2026-01-15T21:30:00\nreads = \"{}\"\n", reads));
        return log.empty() ? 0.0 : double(half_last_digit(*log.front().reads) / volt);
    };
    EXPECT_DOUBLE_EQ(half("12.9 V"), 0.05);
    EXPECT_DOUBLE_EQ(half("12.90 V"), 0.005);
    EXPECT_DOUBLE_EQ(half("12,9 V"), 0.05);
    EXPECT_DOUBLE_EQ(half("13 V"), 0.5);
    EXPECT_DOUBLE_EQ(half("12900 mV"), 0.0005);
}

TEST(voltage_shown, digits_behind_the_point_are_those_of_volts) {
    EXPECT_EQ(scenario::decimals_of("12.90 V"), 2);
    EXPECT_EQ(scenario::decimals_of("12,9 V"), 1);
    EXPECT_EQ(scenario::decimals_of("13 V"), 0);
    EXPECT_EQ(scenario::decimals_of("12900 mV"), 3);
    EXPECT_EQ(scenario::decimals_of("12.123456789 V"), 6);  // no meter shows more
}

TEST(voltage_shown, what_is_no_voltage_is_refused) {
    const auto shown = scenario::read_voltage_shown("12.90 V");
    ASSERT_TRUE(shown);
    EXPECT_NEAR(shown->volts / units::volt, 12.9, 1e-12);
    EXPECT_EQ(shown->decimals, 2);
    EXPECT_FALSE(scenario::read_voltage_shown("12.9 W"));
    EXPECT_FALSE(scenario::read_voltage_shown("full"));
}

}  // namespace
