#include "sizing/builds/builds.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

scenario::Scenario demo(const std::string& name) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml", {});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

struct Found {
    scenario::Scenario scenario = demo("ice_storm");
    sizing::Grid grid;
    sizing::GridAsked asked{.most_packs = 12, .most_panels = 5};
    int panels = 0;

    Found() {
        const auto members = sizing::members_of(
            scenario, {},
            std::make_shared<const outage::Ready>(outage::make_ready(scenario).value()), 1, 64);
        sizing::MemberRuns runs(members);
        grid = *sizing::grid_of(runs, asked);
        panels = members.world().panels();
    }
};

TEST(builds, the_fewest_packs_meet_the_goal_and_one_fewer_does_not) {
    const Found found;
    const auto builds = sizing::builds_of(found.scenario, found.panels, found.grid);
    ASSERT_TRUE(builds.with_these_panels && builds.one_fewer);
    EXPECT_GE(builds.with_these_panels->chance(), builds.goal);
    EXPECT_LT(builds.one_fewer->chance(), builds.goal);
    EXPECT_EQ(builds.with_these_panels->panels, found.panels);
    EXPECT_EQ(builds.one_fewer->packs + 1, builds.with_these_panels->packs);
}

// Against every cell by itself.
TEST(builds, nothing_that_meets_the_goal_is_cheaper_or_lighter_than_what_is_called_so) {
    const Found found;
    const auto builds = sizing::builds_of(found.scenario, found.panels, found.grid);
    ASSERT_TRUE(builds.cheapest && builds.lightest);
    for (const auto& cell : found.grid.cells) {
        if (cell.figures.of < builds.goal) continue;
        const auto made = sizing::bill(found.scenario, cell.packs, cell.panels);
        EXPECT_GE(*made.price, *builds.cheapest->bill.price);
        EXPECT_GE(*made.weight, *builds.lightest->bill.weight);
    }
}

TEST(builds, fewer_packs_than_another_need_asks_for_do_not_count) {
    const Found found;
    const auto builds = sizing::builds_of(found.scenario, found.panels, found.grid, 12);
    ASSERT_TRUE(builds.cheapest && builds.with_these_panels);
    EXPECT_EQ(builds.cheapest->packs, 12);
    EXPECT_EQ(builds.with_these_panels->packs, 12);
}

TEST(builds, health_asks_for_99_in_a_hundred_where_the_file_is_silent) {
    EXPECT_EQ(sizing::goal_of(demo("ice_storm")).value(), 0.90);
    EXPECT_EQ(sizing::goal_of(demo("breathing_at_night")).value(), 0.99);
}

}  // namespace
