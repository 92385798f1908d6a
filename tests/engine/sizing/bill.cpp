#include "sizing/builds/bill.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using namespace units;

scenario::Scenario demo(const std::string& name) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml", {});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

// The demo has a pack of 11 kg at 310 in the case, others of 14 kg at 360, panels of 7 kg at 80.
TEST(bill, adds_weights_and_prices_of_every_part) {
    const auto made = sizing::bill(demo("ice_storm"), 10, 3);
    ASSERT_TRUE(made.weight && made.price);
    EXPECT_NEAR(*made.weight / kilogram, 11.0 + 9 * 14.0 + 3 * 7.0, 1e-9);
    EXPECT_NEAR(made.price->amount(), 310.0 + 9 * 360.0 + 3 * 80.0, 1e-9);
}

TEST(bill, counts_walks_by_what_may_be_carried) {
    auto scenario = demo("ice_storm");
    if (!scenario.goal) scenario.goal.emplace();
    // By hand: nine of 14 kg go alone, 11 + 7, 7 + 7.
    scenario.goal->carry_at_most = 20.0 * kilogram;
    EXPECT_EQ(sizing::bill(scenario, 10, 3).trips, 11);
    // Three times two of 14 kg and a panel, then two of 14, then 14 + 11.
    scenario.goal->carry_at_most = 35.0 * kilogram;
    EXPECT_EQ(sizing::bill(scenario, 10, 3).trips, 5);
    scenario.goal->carry_at_most = 13.0 * kilogram;
    EXPECT_FALSE(sizing::bill(scenario, 2, 0).trips);
    EXPECT_TRUE(sizing::something_is_too_heavy(scenario));
}

TEST(bill, what_one_part_leaves_out_is_not_known_and_never_nought) {
    auto scenario = demo("ice_storm");
    scenario.panels.front().price.reset();
    EXPECT_FALSE(sizing::bill(scenario, 3, 1).price);
    EXPECT_TRUE(sizing::bill(scenario, 3, 0).price);
    scenario.packs.back().weight.reset();
    EXPECT_FALSE(sizing::bill(scenario, 2, 0).weight);
    EXPECT_TRUE(sizing::bill(scenario, 1, 0).weight);
}

}  // namespace
