#include "estimate/meters.hpp"

#include <cmath>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

// 40 W for 1 h of two items and 20 W for 2 h of one, in 4 h: (2 x 40 + 2 x 20) / 4 = 30 W.
TEST(meters, a_planned_mean_counts_items_and_shares_of_power) {
    const demand::PlannedLoad load{
        .power = {.likely = 40.0 * watt},
        .strands = {{.items = 2, .on = {{1.0 * hour, 2.0 * hour}}},
                    {.on = {{0.0 * hour, 2.0 * hour}}, .of_power = demand::DrawRatio(0.5)}}};
    EXPECT_NEAR(*estimate::planned_mean(load, {{}, 4.0 * hour}) / watt, 30.0, 1e-9);
    EXPECT_NEAR(*estimate::planned_mean(load, {1.0 * hour, 2.0 * hour}) / watt, 100.0, 1e-9);
    EXPECT_FALSE(estimate::planned_mean(load, {3.0 * hour, 4.0 * hour}));
    EXPECT_FALSE(estimate::planned_mean(load, {1.0 * hour, 1.0 * hour}));
}

// A blower guessed at 30 W, four in five within half: its deviation d is that of the plan. A meter
// that shows 0.81 kWh over 18 h reads 45 W, ln 1.5 = 0.4055 above the plan, with an error e. The
// normal law of one reading [closed form, method.md (1)]: mean 0.4055 d^2 / (d^2 + e^2), deviation
// d e / sqrt(d^2 + e^2), surprise 0.4055 / sqrt(d^2 + e^2).
TEST(meters, one_reading_moves_a_load_by_its_share_of_both_errors) {
    const auto scenario = with(meter("blower", "0.81 kWh"));
    const auto ready = ready_of(scenario);
    const auto story = estimate::story_of(scenario, *read_local_time(next_noon));
    const auto world = chance::World::of(scenario, "", ready).value();
    const auto all = estimate::metered(scenario, story, world);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].load, 1U);
    const double d = all[0].before.deviation;
    // ln 1.5 / 1.2816 above and ln 2 / 1.2816 below at half of it either way: 0.316 to 0.541
    EXPECT_GT(d, 0.31);
    EXPECT_LT(d, 0.55);
    const double read = std::log(1.5);
    const double share = all[0].after.mean / read;  // d^2 / (d^2 + e^2)
    EXPECT_GT(share, 0.5);
    EXPECT_LT(share, 1.0);
    EXPECT_NEAR(all[0].after.deviation, d * std::sqrt(1.0 - share), 1e-9);
    EXPECT_NEAR(all[0].surprise, read / d * std::sqrt(share), 1e-9);
}

// The same reading twice on one load: the meter's own 5 % stays, so that both together say little
// more than one. living through n readings of an error b of its own and s of each: a mean is as good
// as sqrt(b^2 + s^2 / n), here with s = 0.03.
TEST(meters, two_readings_of_one_meter_are_no_better_than_it_is) {
    const auto of = [](const std::string& log) {
        const auto scenario = with(log);
        const auto ready = ready_of(scenario);
        const auto world = chance::World::of(scenario, "", ready).value();
        const auto story = estimate::story_of(scenario, *read_local_time("2026-01-15T18:00:00"));
        return estimate::metered(scenario, story, world);
    };
    const std::string later =
        "[[log]]\nat = 2026-01-15T18:00:00\nload = \"blower\"\nmetered = { energy = \"1.08 "
        "kWh\", over = \"24 h\" }\n";
    const auto all = of(meter("blower", "0.81 kWh") + later);
    ASSERT_EQ(all.size(), 2U);
    const double d = all[0].before.deviation;
    const double of_mean = estimate::deviation_of_mean(0.05, 0.03, 2);
    EXPECT_NEAR(all[1].after.deviation, d * of_mean / std::hypot(d, of_mean), 1e-9);
    EXPECT_NEAR(all[1].after.mean, std::log(1.5) * d * d / (d * d + of_mean * of_mean), 1e-9);
}

}  // namespace
