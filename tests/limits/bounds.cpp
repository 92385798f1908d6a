// What a question takes on by itself is bounded by counts, not by the clock on the wall.
#include <gmock/gmock.h>

#include "key_trials.hpp"
#include <gtest/gtest.h>

#include "command_line/run.hpp"
#include "demand/size.hpp"
#include "outage/clock/work.hpp"
#include "outage/panel_counts.hpp"
#include "outage/told/load_uses.hpp"
#include "scenario/file/read.hpp"
#include "scenario/keys/most.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

scenario::Scenario base_with(const scenario::Overrides& overrides) {
    const auto read = scenario::read_scenario(key_trials::bases().front().text, "base", overrides);
    EXPECT_TRUE(read) << (read ? "" : units::print(read.error().front()));
    return read ? read->scenario : scenario::Scenario{};
}

Energy wanted_by_the_refrigerators(const char* count) {
    const auto demand = demand::plan_demand(base_with({{"load.refrigerator.count", count}}));
    EXPECT_TRUE(demand);
    return outage::load_uses(*demand).front().wanted;
}

// 1,000 that start one after another want 1,000 times what one wants, whatever their groups; one
// alone begins somewhere in its cycle, which of 64 cycles is the last one at most.
TEST(Bounds, many_that_cycle_want_as_much_in_groups_as_one_by_one) {
    const double each = wanted_by_the_refrigerators("1000") / wanted_by_the_refrigerators("32");
    EXPECT_NEAR(each, 1000.0 / 32.0, 1000.0 / 32.0 * 0.002);
}

TEST(Bounds, items_of_one_load_switch_in_at_most_so_many_groups) {
    const auto demand = demand::plan_demand(base_with({{"load.refrigerator.count", "1000"}}));
    ASSERT_TRUE(demand);
    const auto& strands = demand->loads.front().strands;
    EXPECT_EQ(strands.size(), static_cast<std::size_t>(demand::most_strands));
    int items = 0;
    for (const auto& strand : strands)
        items += strand.items;
    EXPECT_EQ(items, 1000);
}

TEST(Bounds, loads_that_switch_too_often_are_refused_at_their_cycle) {
    const auto refused = demand::plan_demand(base_with(
        {{"load.refrigerator.runs", "{on = \"1 s\", every = \"2 s\"}"}, {"outage.lasts", "60 d"}}));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().where, "load[0].runs.every");
    EXPECT_THAT(refused.error().front().remedy, testing::HasSubstr("at most 40000"));
    const auto taken = demand::plan_demand(
        base_with({{"load.refrigerator.runs", "{on = \"1 s\", every = \"5 min\"}"},
                   {"outage.lasts", "60 d"}}));
    EXPECT_TRUE(taken);
}

TEST(Bounds, fewer_weathers_are_looked_at_where_a_run_is_long) {
    const auto brief = outage::make_ready(base_with({}));
    const auto lengthy = outage::make_ready(
        base_with({{"outage.lasts", "60 d"},
                   {"load.refrigerator.runs", "{on = \"1 min\", every = \"5 min\"}"}}));
    ASSERT_TRUE(brief && lengthy);
    EXPECT_EQ(outage::weathers_within_reach(*brief, 2000, 20), 2000);
    const int fewer = outage::weathers_within_reach(*lengthy, 2000, 20);
    EXPECT_LT(fewer, 2000);
    EXPECT_LT(fewer * outage::steps_of_a_run(*lengthy), 2.1e6);
    EXPECT_EQ(outage::weathers_within_reach(*lengthy, 2000, 20, 1e9), 20);
}

outage::Ready shipped(const std::string& name, const std::string& lasts) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml",
        {*scenario::read_override("outage.lasts=\"" + lasts + "\"")});
    auto ready = outage::make_ready(read.value().scenario);
    return std::move(ready.value());
}

TEST(Bounds, lead_and_a_current_passed_on_weigh_what_their_steps_cost) {
    const auto lithium = shipped("ice_storm", "60 h");
    const auto lead = shipped("saw_and_pump", "60 h");
    const auto passed_on = shipped("summer_storm", "60 h");
    EXPECT_EQ(outage::member_steps_of_a_run(lithium), outage::steps_of_a_run(lithium));
    EXPECT_EQ(outage::member_steps_of_a_run(lead), 2.0 * outage::steps_of_a_run(lead));
    EXPECT_EQ(outage::member_steps_of_a_run(passed_on), 1.5 * outage::steps_of_a_run(passed_on));
}

TEST(Bounds, fewer_members_are_run_where_an_outage_is_long) {
    const auto blocks = [](const std::string& name, const std::string& lasts) {
        const auto read = scenario::read_scenario_file(
            std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml");
        return sizing::usual_blocks(read.value().scenario, shipped(name, lasts));
    };
    EXPECT_EQ(blocks("summer_storm", "3 d"), 4);
    EXPECT_LT(blocks("summer_storm", "10 d"), 4);
    EXPECT_EQ(blocks("summer_storm", "60 d"), 1);
    EXPECT_EQ(blocks("saw_and_pump", "60 h"), 4);
    EXPECT_LT(blocks("saw_and_pump", "20 d"), 4);
}

command_line::Outcome packs_of(std::vector<std::string> more) {
    std::vector<std::string> arguments = {"packs", "-", "--threads", "1"};
    arguments.insert(arguments.end(), more.begin(), more.end());
    command_line::Surroundings around;
    around.columns = 4000;
    around.standard_input = [] {
        return units::Result<std::string>(std::string(key_trials::bases().front().text));
    };
    return command_line::run(arguments, around);
}

TEST(Bounds, packs_over_the_longest_outage_are_tried_for_fewer_members) {
    const auto outcome = packs_of({"--set", "outage.lasts=60 d"});
    EXPECT_NE(outcome.status, command_line::Status::unusable) << outcome.errors;
    EXPECT_THAT(outcome.output, testing::ContainsRegex("members run +64"));
}

// Both keys within their limits, together more than can be worked through.
TEST(Bounds, packs_that_take_too_long_are_refused_unless_members_are_asked_for) {
    const std::vector<std::string> much = {
        "--set", "outage.lasts=60 d", "--set",
        "load.refrigerator.runs={on = \"1 min\", every = \"5 min\"}"};
    const auto refused = packs_of(much);
    EXPECT_EQ(refused.status, command_line::Status::unusable);
    EXPECT_THAT(refused.errors, testing::AllOf(testing::HasSubstr("outage.lasts: found"),
                                               testing::HasSubstr("--members 64")));
    auto asked = much;
    asked.insert(asked.end(), {"--members", "1", "--most-packs", "2", "--most-panels", "1"});
    EXPECT_NE(packs_of(asked).status, command_line::Status::unusable);
}

TEST(Bounds, of_many_panels_not_every_count_is_looked_at) {
    const auto ready = outage::make_ready(base_with({{"panel.count", "57"}}));
    ASSERT_TRUE(ready);
    const auto counts = outage::panels_looked_at(*ready, scenario::most_panels);
    EXPECT_LT(counts.size(), 36U);
    EXPECT_TRUE(std::ranges::is_sorted(counts, std::less_equal<>()));
    EXPECT_EQ(counts.front(), 0);
    EXPECT_EQ(counts.back(), scenario::most_panels);
    EXPECT_THAT(counts, testing::Contains(57));
    EXPECT_THAT(outage::panels_looked_at(*ready, 6), testing::ElementsAre(0, 1, 2, 3, 4, 5, 6));
}

}  // namespace
