// Loads that cycle and cannot run together: what is told does not depend on how they are spelt.
#include <algorithm>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "chance/members.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// Two loads of 900 W, each on a quarter of the time, behind an inverter of 1,500 W.
chance::Members members_of(const std::string& name, const std::string& watts = "900 W",
                           const std::string& more = "") {
    const std::string text = R"(format = 1
title = "Two pumps"
[outage]
starts = 2026-03-05T18:00:00
lasts = "2 d"
battery_temperature = "25 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
count = 30
[inverter]
continuous = "1500 W"
surge = "3000 W"
[[load]]
name = "well"
from = "ac"
power = "900 W"
runs = { on = "5 min", every = "40 min" }
evidence = "metered"
[[load]]
name = ")" + name + R"("
from = "ac"
power = ")" + watts + R"("
runs = { on = "7 min", every = "55 min" }
evidence = "metered"
)" + more;
    const auto read = scenario::read_scenario(text, "pumps.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    auto ready = std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value());
    return {chance::World::of(read->scenario, {}, std::move(ready)).value(), 1, 4};
}

chance::Figures figures_of(const chance::Members& members) {
    return members.figures(members.ends(chance::as_it_is(members.world())), Probability(0.9));
}

TEST(meeting, under_forty_names_the_same_kind_of_end_and_the_chance_within_its_sampling) {
    const auto first = members_of("pump");
    ASSERT_TRUE(first.world().may_meet());
    std::vector<double> met;
    for (int number = 0; number < 40; ++number) {
        const auto members = members_of(fmt::format("pump {}", number));
        const auto ends = members.ends(chance::as_it_is(members.world()));
        EXPECT_EQ(chance::mostly_limited_by(ends), outage::LimitedBy::inverter_limit);
        const auto early = std::ranges::count_if(
            ends, [](const auto& end) { return !end.survives && end.lasts < 4.0 * hour; });
        met.push_back(double(early) / double(ends.size()));
    }
    // By hand: the beat of the cycles passes all phases in 40 x 55/15 min = 147 min, in which they
    // overlap for (5 + 7) of 55 min of phase; 256 members leave a deviation of 3 points of any
    // share, so that 40 names lie within 10 of their mean.
    double mean = 0.0;
    for (const double share : met)
        mean += share / double(met.size());
    for (const double share : met)
        EXPECT_NEAR(share, mean, 0.10);
    EXPECT_GT(mean, 0.5);
}

TEST(meeting, what_fits_together_has_no_phases) {
    EXPECT_FALSE(members_of("pump", "50 W").world().may_meet());
    EXPECT_FALSE(
        std::ranges::any_of(members_of("pump", "50 W").world().names(),
                            [](const std::string& name) { return name.ends_with("/phase"); }));
}

// Neither name nor place moves the usual phase; loads of the same figures start apart.
TEST(meeting, the_usual_phase_follows_from_the_loads_own_figures) {
    const auto starts = [](const chance::Members& members) {
        std::vector<double> from;
        for (const auto& load : members.world().ready().demand.loads)
            from.push_back(load.strands.front().on.front().until / second);
        return from;
    };
    const auto one = starts(members_of("pump"));
    EXPECT_EQ(one, starts(members_of("another")));
    const std::string third =
        "[[load]]\nname = \"third\"\nfrom = \"ac\"\npower = \"900 W\"\n"
        "runs = { on = \"7 min\", every = \"55 min\" }\n";
    const auto three = starts(members_of("pump", "900 W", third));
    EXPECT_EQ(three[0], one[0]);
    EXPECT_EQ(three[1], one[1]);
    EXPECT_NE(three[2], one[1]);
}

}  // namespace
