#include "demand/size.hpp"

#include "support/planned_loads.hpp"

namespace {

using planned_loads::load;
using planned_loads::with;
using units::day;
using units::minute;

scenario::Load cycling(std::string name, units::Duration every) {
    scenario::Load made = load(std::move(name), 100);
    made.runs = scenario::DutyCycle{0.5 * every, every, {}};
    return made;
}

// 30 d of a cycle of a minute: 30 x 1,440 = 43,200 turns and 31 spans of a day, on and off each:
// 86,462. With a lamp beside it (62) 86,524. Of 40,000 the spans leave 39,876 for 86,400 / s: 130.003 s,
// rounded up 131 s.
TEST(size, a_month_of_a_cycle_by_the_minute_is_too_much_and_names_the_load) {
    scenario::Scenario scenario = with({load("lamp", 10), cycling("pump", 1.0 * minute)});
    scenario.outage.lasts = 30.0 * day;
    const units::Errors errors = demand::too_many_switchings(scenario);
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors.front().where, "load[1].runs.every");
    EXPECT_NE(in_english(errors.front().found).find("86462 times"), std::string::npos)
        << errors.front().found;
    EXPECT_NE(in_english(errors.front().found).find("86524 times"), std::string::npos)
        << errors.front().found;
    scenario.loads[1].runs->every = 131.0 * units::second;
    scenario.loads[1].runs->on = 65.5 * units::second;
    EXPECT_TRUE(demand::too_many_switchings(scenario).empty());
    scenario.loads[1].runs->every = 130.0 * units::second;
    EXPECT_EQ(demand::too_many_switchings(scenario).size(), 1U);
}

// 33 pumps start in 32 groups: 2 x 32 x (31 + 30 x 24 / 1.2) = 40,384 is too much, of 31 pumps
// 2 x 31 x 631 = 39,122 is not.
TEST(size, more_than_32_of_one_load_switch_in_32_groups) {
    scenario::Scenario scenario = with({cycling("pump", 72.0 * minute)});
    scenario.outage.lasts = 30.0 * day;
    scenario.loads[0].count = 31;
    EXPECT_TRUE(demand::too_many_switchings(scenario).empty());
    for (const int count : {32, 33, 1000}) {
        scenario.loads[0].count = count;
        ASSERT_EQ(demand::too_many_switchings(scenario).size(), 1U);
        EXPECT_NE(
            in_english(demand::too_many_switchings(scenario).front().found).find("40384 times"),
            std::string::npos);
    }
}

}  // namespace
