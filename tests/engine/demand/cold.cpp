// The pace of a load that keeps food cold: ratios of draws by [ICC 301], worked by hand in
// kept_cold.cpp.
#include "demand/cold.hpp"

#include "support/planned_loads.hpp"

namespace {

using namespace demand;
using units::celsius;
using units::hour;
using units::watt_hour;

scenario::Load refrigerator(double room) {
    scenario::Load made = planned_loads::load("fridge", 1);
    made.keeps_cold = scenario::KeepsCold::refrigerator;
    made.draw = scenario::MeteredUse{1440.0 * watt_hour, 24.0 * hour, celsius(22.0)};
    made.runs = scenario::DutyCycle{0.25 * hour, 1.0 * hour, {}};
    made.room = celsius(room);
    return made;
}

ColdPlan plan_of(const scenario::Load& load) {
    scenario::Assumptions assumed;
    return cold_plan(load, {}, "load[0]", assumed).value();
}

// 1.3271 / 0.9206 = 1.4416 times the draw at 35 degC over 22 degC: 15 min of each hour become
// 21.62 min, and the compressor's capacity is 1 / (0.25 x 1.4416) = 2.7747 times the mean.
TEST(cold, a_compressor_of_one_speed_runs_longer_in_a_warm_room) {
    const ColdPace likely = plan_of(refrigerator(35.0)).paces[1];
    EXPECT_NEAR(likely.on / units::minute, 21.62, 0.01);
    EXPECT_NEAR(likely.keeper.capacity.value(), 2.7747, 5e-4);
    EXPECT_EQ(likely.steady, DrawRatio(1.0));
    EXPECT_EQ(likely.recovering, DrawRatio(1.0));
    EXPECT_NEAR(plan_of(refrigerator(22.0)).paces[1].on / units::minute, 15.0, 1e-9);
}

// Of which only the mean is known: it draws 1.4416 times as much throughout, and three times its
// mean, a third of the time being usual [DOE appliances], while it gets cold again.
TEST(cold, what_tells_its_mean_alone_draws_more_in_a_warm_room) {
    scenario::Load load = refrigerator(35.0);
    load.runs.reset();
    const ColdPace likely = plan_of(load).paces[1];
    EXPECT_NEAR(likely.steady.value(), 1.4416, 2e-4);
    EXPECT_NEAR(likely.recovering.value(), 3.0, 1e-12);
    EXPECT_NEAR(likely.keeper.capacity.value(), 3.0 / 1.4416, 5e-4);
    EXPECT_EQ(likely.on, units::Duration{});
}

// 3 degC and half of the way to 22 degC is 12.5 degC; in a room below its set point it stays there.
TEST(cold, inside_lies_between_its_set_point_and_its_room) {
    EXPECT_NEAR(units::in_celsius(inside(plan_of(refrigerator(22.0)), Warmed(0.5))), 12.5, 1e-9);
    EXPECT_NEAR(units::in_celsius(inside(plan_of(refrigerator(1.0)), Warmed(0.5))), 3.0, 1e-9);
    scenario::Load freezer = refrigerator(22.0);
    freezer.keeps_cold = scenario::KeepsCold::freezer;
    EXPECT_NEAR(units::in_celsius(inside(plan_of(freezer), Warmed(0.25))), -8.0, 1e-9);
}

TEST(cold, the_rooms_that_the_file_does_not_tell_are_told) {
    scenario::Load load = refrigerator(22.0);
    load.room.reset();
    load.draw = scenario::MeteredUse{1440.0 * watt_hour, 24.0 * hour, {}};
    scenario::Assumptions assumed;
    ASSERT_TRUE(cold_plan(load, {}, "load[0]", assumed));
    ASSERT_EQ(assumed.size(), 2U);
    EXPECT_EQ(assumed[0].where, "load[0].room");
    EXPECT_EQ(assumed[1].where, "load[0].metered.room");
    load.keeps_cold = scenario::KeepsCold::nothing;
    EXPECT_FALSE(cold_plan(load, {}, "load[0]", assumed));
}

}  // namespace
