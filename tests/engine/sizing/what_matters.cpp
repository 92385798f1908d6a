#include "sizing/what_matters.hpp"

#include <algorithm>

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

std::vector<sizing::Influence> found_in(const scenario::Scenario& scenario, int packs, int panels,
                                        unsigned threads = 0) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    const auto members = sizing::members_of(
        scenario, {}, std::make_shared<const outage::Ready>(std::move(*ready)), 1, 128);
    sizing::MemberRuns runs(members);
    return sizing::influences(members, runs.ends(packs, panels), packs, panels, threads);
}

TEST(what_matters, what_decides_most_comes_first) {
    const auto found = found_in(demo("ice_storm"), 9, 3);
    ASSERT_GE(found.size(), 3U);
    EXPECT_EQ(found.front().input, "furnace blower");  // 120 W for eight hours a day, a guess
    for (std::size_t i = 1; i < found.size(); ++i)
        EXPECT_LE(found[i].flips, found[i - 1].flips) << found[i].input;
}

TEST(what_matters, nothing_decides_what_is_sure_either_way) {
    EXPECT_TRUE(found_in(demo("ice_storm"), 1, 0).empty());
    EXPECT_TRUE(found_in(demo("ice_storm"), 40, 3).empty());
}

TEST(what_matters, is_the_same_for_any_number_of_threads) {
    const auto one = found_in(demo("ice_storm"), 9, 3, 1);
    const auto three = found_in(demo("ice_storm"), 9, 3, 3);
    ASSERT_EQ(one.size(), three.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(one[i].input, three[i].input);
        EXPECT_EQ(one[i].flips, three[i].flips);
    }
}

// What side by side must give: each member again by the clock.
TEST(what_matters, is_what_the_clock_says) {
    for (const char* name : {"ice_storm", "summer_storm"}) {
        const auto scenario = demo(name);
        auto ready = outage::make_ready(scenario);
        ASSERT_TRUE(ready.has_value());
        const auto members = sizing::members_of(
            scenario, {}, std::make_shared<const outage::Ready>(std::move(*ready)), 1, 64);
        const auto& world = members.world();
        const int packs = world.packs() + 2;
        sizing::MemberRuns runs(members);
        const auto ends = runs.ends(packs, world.panels());
        const auto& names = world.names();
        const std::vector<std::size_t> place{
            std::size_t(std::ranges::find(names, "sun/scale") - names.begin())};
        ASSERT_LT(place.front(), names.size());
        int flips = 0;
        for (int number = 0; number < 64; ++number) {
            const auto lived = world.lived(members.redrawn(number, place));
            const auto course =
                world.run(lived, packs, lived.sun, {.trace = false, .after_failure = false});
            flips += course.survives != ends[std::size_t(number)].survives ? 1 : 0;
        }
        const auto found = sizing::influences(members, ends, packs, world.panels());
        const auto panels = std::ranges::find(found, "the panels", &sizing::Influence::input);
        EXPECT_EQ(panels == found.end() ? 0.0 : panels->flips.value(), flips / 64.0) << name;
    }
}

}  // namespace
