#include "sizing/ration.hpp"

#include <algorithm>
#include <filesystem>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using sizing::ShedLoad;
using units::Probability;

scenario::Scenario scenario_of(const std::string& name) {
    const auto read =
        scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name);
    EXPECT_TRUE(read);
    return read->scenario;
}

outage::Ready ready_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    return std::move(*ready);
}

chance::Members members_of(const scenario::Scenario& scenario) {
    return sizing::members_of(scenario, {},
                              std::make_shared<const outage::Ready>(ready_of(scenario)), 1, 64);
}

constexpr Probability goal(0.9);

sizing::Ration ration_of(const scenario::Scenario& scenario) {
    return sizing::ration(members_of(scenario), goal);
}

sizing::Ladder ladder_of(const scenario::Scenario& scenario, int most_packs) {
    return sizing::ration_ladder(members_of(scenario), most_packs, goal);
}

void expect_same(const chance::Figures& a, const chance::Figures& b) {
    EXPECT_EQ(a.of, b.of);
    EXPECT_EQ(a.count_on, b.count_on);
    EXPECT_EQ(a.half, b.half);
    EXPECT_EQ(a.one_in_ten, b.one_in_ten);
}

std::vector<std::string> names_of(const std::vector<ShedLoad>& loads) {
    std::vector<std::string> names;
    for (const auto& load : loads) {
        names.push_back(load.name);
    }
    return names;
}

TEST(ration, comfort_goes_before_light_and_property_stays_longest) {
    const auto ration = ration_of(scenario_of("ice_storm.toml"));
    ASSERT_EQ(ration.steps.size(), 2U);
    EXPECT_THAT(names_of(ration.steps[0].off), testing::ElementsAre("modem and router"));
    EXPECT_THAT(names_of(ration.steps[1].off), testing::ElementsAre("lamps", "phones"));
    EXPECT_THAT(names_of(ration.kept), testing::ElementsAre("chest freezer", "furnace blower"));
    EXPECT_FALSE(ration.vital);
}

// The same members for a file that never had the load.
TEST(ration, a_step_lasts_as_long_as_an_outage_without_its_loads) {
    const auto whole = scenario_of("ice_storm.toml");
    auto without = whole;
    std::erase_if(without.loads, [](const auto& load) { return load.name == "modem and router"; });
    const auto ration = ration_of(whole);
    expect_same(ration.steps[0].figures, ration_of(without).all_on.figures);
}

// 14 W from 07:00 to 23:00.
TEST(ration, what_a_step_saves_is_what_its_loads_take_a_day) {
    const auto ration = ration_of(scenario_of("ice_storm.toml"));
    EXPECT_NEAR(ration.steps[0].spared / units::watt_hour, 14.0 * 16.0, 0.5);
}

TEST(ration, life_and_health_stay_on_whatever_number_the_file_gives_them) {
    auto scenario = scenario_of("breathing_at_night.toml");
    scenario.loads.front().priority = 5;  // medical = true stands beside it
    const auto ration = ration_of(scenario);
    EXPECT_TRUE(ration.vital);
    EXPECT_THAT(names_of(ration.kept), testing::ElementsAre("breathing machine"));
    for (const auto& step : ration.steps) {
        EXPECT_THAT(names_of(step.off), testing::Not(testing::Contains("breathing machine")));
    }
}

TEST(ration, an_inverter_that_feeds_nothing_any_more_goes_off_too) {
    auto scenario = scenario_of("ice_storm.toml");
    std::erase_if(scenario.loads, [](const auto& load) {
        return load.name == "chest freezer" || load.name == "furnace blower";
    });
    scenario.packs.resize(1);
    const auto ration = ration_of(scenario);
    ASSERT_EQ(ration.steps.size(), 1U);
    EXPECT_TRUE(ration.steps[0].inverter);
    EXPECT_GT(ration.steps[0].figures.count_on, ration.all_on.figures.count_on);
}

TEST(ration, loads_of_one_rank_leave_nothing_to_choose) {
    auto scenario = scenario_of("ice_storm.toml");
    for (auto& load : scenario.loads) {
        load.priority = 3;
    }
    const auto ration = ration_of(scenario);
    EXPECT_TRUE(ration.steps.empty());
    EXPECT_EQ(ration.kept.size(), scenario.loads.size());
}

TEST(ration, no_step_of_any_example_shortens_the_outage) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(CANDLEMARK_SOURCE_DIR "/scenarios"))) {
        if (entry.path().extension() != ".toml") continue;
        const auto ration = ration_of(scenario_of(entry.path().filename()));
        auto before = ration.all_on;
        for (const auto& step : ration.steps) {
            EXPECT_GE(step.figures.of, before.figures.of) << entry.path();
            EXPECT_GE(step.figures.count_on, before.figures.count_on) << entry.path();
            EXPECT_GE(step.figures.half, before.figures.half) << entry.path();
            before = step;
        }
    }
}

TEST(ladder, going_down_the_ladder_lasts_longer_and_takes_no_more_packs) {
    const auto ladder = ladder_of(scenario_of("ice_storm.toml"), 16);
    ASSERT_GE(ladder.rungs.size(), 3U);
    units::Duration lasts{};
    int packs = 16;
    int priority = 5;
    for (const auto& rung : ladder.rungs) {
        EXPECT_GE(rung.figures.count_on, lasts) << rung.off.name;
        EXPECT_LE(rung.packs_so_far, packs) << rung.off.name;
        EXPECT_LE(rung.priority, priority) << rung.off.name;
        lasts = rung.figures.count_on;
        packs = rung.packs_so_far;
        priority = rung.priority;
    }
    EXPECT_GE(packs, 1);
}

TEST(ladder, what_keeps_somebody_well_is_never_on_the_ladder) {
    auto scenario = scenario_of("breathing_at_night.toml");
    ASSERT_TRUE(
        std::ranges::any_of(scenario.loads, [](const auto& load) { return load.priority == 1; }));
    for (const auto& rung : ladder_of(scenario, 8).rungs)
        EXPECT_GT(rung.priority, 1) << rung.off.name;
    scenario.loads.front().priority = 5;  // medical = true stands beside it
    for (const auto& rung : ladder_of(scenario, 8).rungs)
        EXPECT_NE(rung.off.name, scenario.loads.front().name);
}

// Rung by rung and rank by rank the same loads go, so both end at the same instant.
TEST(ladder, ends_a_rank_where_the_ration_does) {
    const auto scenario = scenario_of("ice_storm.toml");
    const auto ration = ration_of(scenario);
    const auto ladder = ladder_of(scenario, 16);
    std::size_t rung = 0;
    for (const auto& step : ration.steps) {
        rung += step.off.size();
        ASSERT_LE(rung, ladder.rungs.size());
        expect_same(ladder.rungs[rung - 1].figures, step.figures);
    }
    EXPECT_GT(rung, 2U);
}

}  // namespace
