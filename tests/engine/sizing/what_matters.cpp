#include "sizing/what_matters.hpp"

#include <gtest/gtest.h>

#include "scenario/read.hpp"

namespace {

using namespace units;

scenario::Scenario demo(const std::string& name) {
    const auto read = scenario::read_scenario_file(
        std::string(CANDLEMARK_SOURCE_DIR "/scenarios/") + name + ".toml", {});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

outage::Ready ready_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    return std::move(*ready);
}

TEST(what_matters, the_better_end_of_an_input_lasts_longer_and_the_widest_comes_first) {
    const auto found = sizing::influences(ready_of(demo("ice_storm")));
    ASSERT_GE(found.size(), 3U);
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_GT(found[i].at_best, found[i].at_worst) << found[i].input;
        if (i > 0) {
            EXPECT_LE(found[i].spread(), found[i - 1].spread());
        }
    }
}

TEST(what_matters, going_down_the_ladder_lasts_longer_and_takes_no_more_packs) {
    const auto ladder = sizing::ration_ladder(ready_of(demo("ice_storm")), 16);
    ASSERT_GE(ladder.rungs.size(), 3U);
    auto lasts = ladder.lasts;
    int packs = ladder.packs;
    int priority = 5;
    for (const auto& rung : ladder.rungs) {
        EXPECT_GE(rung.lasts_so_far, lasts) << rung.name;
        EXPECT_LE(rung.packs_so_far, packs) << rung.name;
        EXPECT_LE(rung.priority, priority) << rung.name;
        lasts = rung.lasts_so_far;
        packs = rung.packs_so_far;
        priority = rung.priority;
    }
}

TEST(what_matters, what_keeps_somebody_well_is_never_on_the_ladder) {
    const auto scenario = demo("breathing_at_night");
    ASSERT_TRUE(
        std::ranges::any_of(scenario.loads, [](const auto& load) { return load.priority == 1; }));
    for (const auto& rung : sizing::ration_ladder(ready_of(scenario), 8).rungs)
        EXPECT_GT(rung.priority, 1) << rung.name;
}

}  // namespace
