// How the packs stand at a motor's starts over the members.
#include "sizing/start_states.hpp"

#include <algorithm>

#include "outage/plan.hpp"
#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

const std::string pumping = R"(
format = 1
title = "Pump"
[outage]
starts = 2026-06-03T06:00:00
lasts = "30 h"
battery_temperature = "25 degC"
[[pack]]
name = "wet"
chemistry = "flooded"
capacity = "225 Ah"
count = 2
[inverter]
continuous = "3000 W"
surge = "6000 W"
[[load]]
name = "pump"
power = "500 W"
evidence = "metered"
runs = {on = "1 min", every = "1 h"}
motor = {kind = "split_phase", horsepower = "1/3 hp", locked_rotor_current = "29 A"}
[[load]]
name = "lamp"
power = "60 W"
evidence = "guess"
)";

struct Pump {
    outage::Plan plan;
    chance::Members members;
};

Pump pump() {
    const auto read = scenario::read_scenario(pumping, "pump.toml", {});
    EXPECT_TRUE(read);
    auto made = outage::make_ready(read->scenario, "");
    EXPECT_TRUE(made);
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    return {outage::plan_outage(*ready), sizing::members_of(read->scenario, "", ready, 1, 64)};
}

TEST(start_states, are_the_rested_voltages_of_the_members_that_have_supply) {
    const auto [plan, members] = pump();
    ASSERT_GT(plan.starts.size(), 10u);
    const auto states = sizing::start_states(members, plan.starts);
    ASSERT_EQ(states.size(), plan.starts.size());
    const auto& world = members.world();
    const std::size_t number = plan.starts.size() - 1;
    std::vector<double> rested;
    for (int member = 0; member < 64; ++member) {
        const auto lived = world.lived(members.values(member));
        const auto course = world.run(lived, world.packs(), lived.sun, {.trace = true});
        const outage::TracePoint* at = nullptr;
        for (const auto& point : course.trace)
            if (point.at <= plan.starts[number].at) at = &point;
        if (at->wanted <= (1.0 + 1e-9) * at->served) rested.push_back(at->rested / volt);
    }
    std::ranges::sort(rested);
    ASSERT_EQ(states[number].members, int(rested.size()));
    const auto rank = [&](double share) {
        return rested[std::size_t(std::ceil(share * double(rested.size()) - 1e-9)) - 1];
    };
    EXPECT_DOUBLE_EQ(states[number].low / volt, rank(0.1));
    EXPECT_DOUBLE_EQ(states[number].middle / volt, rank(0.5));
    EXPECT_DOUBLE_EQ(states[number].high / volt, rank(0.9));
}

TEST(start_states, spread_as_the_outage_goes_on_and_are_the_same_in_any_number_of_threads) {
    const auto [plan, members] = pump();
    const auto one = sizing::start_states(members, plan.starts, 1);
    const auto two = sizing::start_states(members, plan.starts, 2);
    for (std::size_t i = 0; i < one.size(); ++i) {
        EXPECT_EQ(one[i].middle, two[i].middle);
        EXPECT_LE(one[i].low, one[i].middle);
        EXPECT_LE(one[i].middle, one[i].high);
    }
    EXPECT_GT(one[12].high - one[12].low, one[1].high - one[1].low);
}

TEST(start_states, nobody_has_supply_where_no_member_lasts_so_long) {
    const auto [plan, members] = pump();
    auto late = plan.starts;
    late.back().at = 29.9 * hour;  // two packs hold some twenty hours of it
    const auto states = sizing::start_states(members, late);
    EXPECT_LE(states.back().members, states.front().members);
    EXPECT_TRUE(sizing::start_states(members, {}).empty());
}

}  // namespace
