// How surely the supply outlasts an outage of which nobody knows how long it lasts.
#include "chance/open_end.hpp"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "scenario/file/open_end.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;
using chance::MemberEnd;

scenario::Outage open_ended(Duration half_over_by) {
    scenario::Outage outage;
    outage.open_ended = true;
    outage.half_over_by = half_over_by;
    outage.lasts = scenario::looked_at(half_over_by);
    return outage;
}

double outlasts(const scenario::Outage& outage, Duration lasts) {
    return chance::outlasts(outage, {.lasts = lasts, .survives = !(lasts < outage.lasts)}).value();
}

double normal(double deviations) {
    return 0.5 * std::erfc(-deviations / std::numbers::sqrt2);
}

// A table of the normal distribution: ln 2 = 0.6931 gives 0.2441, ln 4 = 1.3863 gives 0.0828.
TEST(open_end, is_log_normal_around_the_median) {
    EXPECT_NEAR(chance::over_by(48.0 * hour, 48.0 * hour).value(), 0.5, 1e-12);
    EXPECT_NEAR(chance::over_by(24.0 * hour, 48.0 * hour).value(), 0.2441, 5e-5);
    EXPECT_NEAR(chance::over_by(12.0 * hour, 48.0 * hour).value(), 0.0828, 5e-5);
    EXPECT_NEAR(chance::over_by(96.0 * hour, 48.0 * hour).value(), 1.0 - 0.2441, 5e-5);
    EXPECT_EQ(chance::over_by(0.0 * hour, 48.0 * hour).value(), 0.0);
}

TEST(open_end, a_length_that_is_known_is_outlasted_or_not) {
    const scenario::Outage outage;
    EXPECT_EQ(chance::outlasts(outage, {.lasts = 3.0 * hour, .survives = false}).value(), 0.0);
    EXPECT_EQ(chance::outlasts(outage, {.lasts = 3.0 * hour, .survives = true}).value(), 1.0);
}

// (0.2441 - 0.0828)/(1 - 0.0828) = 0.1759: the longer it has lasted the longer it will.
TEST(open_end, once_it_has_lasted_the_rest_is_less_sure) {
    auto outage = open_ended(48.0 * hour);
    EXPECT_NEAR(outlasts(outage, 24.0 * hour), 0.2441, 5e-5);
    outage.out_for = 12.0 * hour;
    outage.lasts = outage.lasts - outage.out_for;
    EXPECT_NEAR(outlasts(outage, 12.0 * hour), 0.1759, 1e-4);
    EXPECT_EQ(outlasts(outage, 0.0 * hour), 0.0);
    EXPECT_EQ(outlasts(outage, outage.lasts), 1.0);
}

// 60 days are 4.286 times 14 days: ln is 1.4553, of the normal distribution 0.9272.
TEST(open_end, no_more_is_said_than_was_looked_at) {
    const auto outage = open_ended(14.0 * day);
    EXPECT_EQ(outage.lasts, 60.0 * day);
    EXPECT_NEAR(outlasts(outage, 60.0 * day), 0.9272, 1e-4);
    const auto shorter = open_ended(2.0 * day);
    EXPECT_NEAR(outlasts(shorter, shorter.lasts - 1.0 * second), 0.99, 1e-4);
    EXPECT_EQ(outlasts(shorter, shorter.lasts), 1.0);
}

TEST(open_end, longer_supply_or_a_shorter_median_is_never_less_sure) {
    for (const double half : {1.0, 8.0, 48.0, 200.0, 336.0}) {
        const auto outage = open_ended(half * hour);
        const auto shorter = open_ended(0.9 * half * hour);
        double before = 0.0;
        for (double share = 0.0; share <= 1.0; share += 1.0 / 256.0) {
            const double now = outlasts(outage, share * outage.lasts);
            EXPECT_GE(now, before) << half << " " << share;
            EXPECT_GE(outlasts(shorter, share * outage.lasts), now) << half << " " << share;
            EXPECT_TRUE(now >= 0.0 && now <= 1.0);
            before = now;
        }
    }
}

chance::Members one_lamp(const std::string& length) {
    const auto read = scenario::read_scenario(R"(format = 1
title = "One load"
[outage]
starts = 2026-03-05T00:00:00
battery_temperature = "25 degC"
)" + length + R"(
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
rated_over = "5 h"
resistance = "4 mohm"
age = "fresh"
[[load]]
name = "steady"
from = "12V"
power = "20 W"
evidence = "label"
)",
                                              "one.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    auto ready = std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value());
    return {*chance::World::of(read->scenario, {}, ready), 1, 16};
}

// Two log-normal spreads that are independent: the unit outlasts the outage with the chance that
// one normal deviate of ln(T/m)/sqrt(.1818^2 + 1) is passed, T the unit's median and .1818 the
// spread of its logarithm as worked out for the load from a label (members.cpp). With T = 58.7 h
// that is 81.1, 57.8 and 31.4 in 100.
TEST(open_end, two_log_normal_spreads_meet_as_one) {
    for (const double half : {24.0, 48.0, 96.0}) {
        const auto members =
            one_lamp("lasts = \"?\"\nhalf_over_by = \"" + std::to_string(half) + " h\"");
        const auto ends = members.ends(chance::as_it_is(members.world()));
        const auto figures = members.figures(ends, Probability(0.9));
        const double told = figures.half / (half * hour);
        EXPECT_NEAR(figures.of.value(), normal(std::log(told) / std::hypot(0.1818, 1.0)), 0.005)
            << half;
        EXPECT_LT(figures.low, figures.of);
        EXPECT_GT(figures.high, figures.of);
        EXPECT_LT(figures.high.value() - figures.low.value(), 0.01);
    }
}

// When the unit ends is another matter than when the outage does.
TEST(open_end, the_times_of_the_unit_stay_its_own) {
    const auto of = [](const std::string& length) {
        const auto members = one_lamp(length);
        const auto ends = members.ends(chance::as_it_is(members.world()));
        return members.figures(ends, Probability(0.9));
    };
    const auto open = of("lasts = \"?\"\nhalf_over_by = \"1 d\"");
    const auto other = of("lasts = \"?\"\nhalf_over_by = \"3 d\"");
    const auto known = of("lasts = \"20 d\"");
    EXPECT_EQ(open.count_on, known.count_on);
    EXPECT_EQ(open.half, known.half);
    EXPECT_EQ(open.one_in_ten, other.one_in_ten);
    EXPECT_GT(open.of, other.of);
}

}  // namespace
