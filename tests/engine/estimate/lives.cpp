#include "estimate/lives.hpp"

#include <algorithm>

#include "sizing/members_of.hpp"
#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

TEST(lives, a_member_stands_where_the_clock_has_it) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 7, 64);
    const auto lives = estimate::Lives::of(scenario, "", ready,
                                           estimate::story_of(scenario, scenario.outage.starts));
    ASSERT_TRUE(lives.has_value());
    const Duration at[] = {5.5 * hour, 17.25 * hour};
    for (int number = 0; number < 8; ++number) {
        const auto values = members.values(number);
        const auto states = lives->states(values, at);
        ASSERT_EQ(states.size(), 2U);
        const auto lived = lives->world().lived(values);
        const auto course = lives->world().run(lived, lives->world().packs(), lived.sun,
                                               {.trace = true, .intervals = 0.25 * hour});
        for (std::size_t i = 0; i < 2; ++i) {
            const auto interval = std::ranges::find_if(course.intervals, [&](const auto& one) {
                return std::abs((one.to - at[i]) / second) < 1.0;
            });
            ASSERT_NE(interval, course.intervals.end());
            EXPECT_NEAR(states[i].charge.value(), interval->charge.value(), 1e-6);
        }
        const auto ends = lives->ends({std::vector<double>(values.begin(), values.end())});
        EXPECT_EQ(ends.front(), members.end_of(number, chance::as_it_is(members.world())));
    }
}

// Side by side they are seen where each is alone, whether they are run to the end or not.
TEST(lives, many_members_stand_where_each_stands_alone) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 7, 64);
    const auto lives = estimate::Lives::of(scenario, "", ready,
                                           estimate::story_of(scenario, scenario.outage.starts));
    ASSERT_TRUE(lives.has_value());
    const estimate::Moment at[] = {{5.5 * hour, true}, {17.25 * hour, false}};
    const Duration times[] = {at[0].at, at[1].at};
    std::vector<std::vector<double>> values;
    for (int number = 0; number < 24; ++number) {
        const auto of_one = members.values(number);
        values.emplace_back(of_one.begin(), of_one.end());
    }
    const auto whole = lives->whole(values, at);
    const auto only_seen = lives->states(values, at);
    for (std::size_t number = 0; number < values.size(); ++number) {
        const auto alone = lives->states(values[number], times);
        for (std::size_t i = 0; i < 2; ++i) {
            const auto& seen = only_seen[number][i];
            EXPECT_EQ(seen.charge, whole[number].states[i].charge);
            EXPECT_EQ(seen.loaded, whole[number].states[i].loaded);
            EXPECT_NEAR(seen.charge.value(), alone[i].charge.value(), 1e-6);
        }
        EXPECT_NEAR(only_seen[number][0].loaded / volt, alone[0].loaded / volt, 1e-4);
    }
}

// With two panels in the place's sun: since the midnight before, as the account of the clock has it.
TEST(lives, a_member_has_taken_of_the_sun_what_the_clock_counts_since_midnight) {
    const auto scenario = with(
        "[place]\nname = \"Chicago IL\"\n[[panel]]\ncount = 2\npower = "
        "\"100 W\"\n[charge_controller]\nkind = \"mppt\"\n");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 7, 64);
    const auto lives = estimate::Lives::of(scenario, "", ready,
                                           estimate::story_of(scenario, scenario.outage.starts));
    ASSERT_TRUE(lives.has_value());
    const Duration at[] = {19.0 * hour, 44.0 * hour};  // 13:00 and, the day after, 14:00
    Energy most{};
    for (int number = 0; number < 4; ++number) {
        const auto values = members.values(number);
        const auto states = lives->states(values, at);
        const auto lived = lives->world().lived(values);
        const auto course = lives->world().run(lived, lives->world().packs(), lived.sun,
                                               {.intervals = 0.25 * hour});
        for (std::size_t i = 0; i < 2; ++i) {
            const Duration midnight = (i == 0 ? 6.0 : 30.0) * hour;
            Energy taken{};
            for (const auto& interval : course.intervals)
                if (interval.from >= midnight - 1.0 * second && interval.to <= at[i] + 1.0 * second)
                    taken += interval.flows.sun_used + interval.flows.sun_stored;
            const double counted = (taken / watt_hour).value();
            EXPECT_NEAR((states[i].sun_taken / watt_hour).value(), counted, 1e-6 * (1.0 + counted));
            most = std::max(most, taken);
        }
    }
    EXPECT_GT(most, 1.0 * watt_hour);
}

}  // namespace
