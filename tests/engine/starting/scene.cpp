// The parts of a scenario's starts: its motors, what else may be on, the bank.
#include "engine/starting/made_plan.hpp"

namespace {

using namespace starting;
using made_plan::runs_of;
using made_plan::with_loads;
using units::watt;

constexpr const char* pump_lamp_and_heater = R"([[load]]
name = "pump"
power = "500 W"
motor = {kind = "split_phase", locked_rotor_current = "25 A", voltage = "120 V"}
runs = {on = "1 min", every = "10 min"}
[[load]]
name = "lamp"
from = "12V"
power = "18 W"
[[load]]
name = "heater"
power = "700 W"
count = 2
hours = ["06:00-08:00"]
)";

TEST(scene, hours_and_days_say_what_may_run_together) {
    scenario::Load morning{.hours = {{6.0 * units::hour, 8.0 * units::hour}}};
    scenario::Load noon{.hours = {{12.0 * units::hour, 13.0 * units::hour}}};
    scenario::Load night{.hours = {{22.0 * units::hour, 7.0 * units::hour}}};
    EXPECT_FALSE(may_run_together(morning, noon));
    EXPECT_TRUE(may_run_together(morning, night));  // from 6:00 to 7:00
    EXPECT_FALSE(may_run_together(noon, night));
    EXPECT_TRUE(may_run_together(scenario::Load{}, noon));
    morning.days = {1};
    night.days = {2, 3};
    EXPECT_FALSE(may_run_together(morning, night));
    noon.usual_hours = true;  // only a guess
    EXPECT_TRUE(may_run_together(scenario::Load{.hours = morning.hours}, noon));
}

// Beside the pump: the lamp never goes off, so 18 W of it are sure; the heaters, 2 of 700 W, may be
// on or not. A converter of 90 % draws 20 W on the bus for 18 W at the lamp.
TEST(scene, what_is_beside_a_start_is_sure_or_possible) {
    const auto plan = with_loads(pump_lamp_and_heater);
    auto runs = runs_of(plan);
    runs[1].converter = units::Efficiency(0.9);
    const auto scene = start_scene(plan, runs);
    ASSERT_TRUE(scene) << print(scene.error().front());
    ASSERT_TRUE(scene->motors[0]);
    EXPECT_FALSE(scene->motors[1] || scene->motors[2]);
    const auto others = beside(plan, *scene, 0);
    EXPECT_NEAR(others.real.low / watt, 0.0, 1e-9);
    EXPECT_NEAR(others.real.high / watt, 1400.0, 1e-9);
    EXPECT_NEAR(others.direct.low / watt, 20.0, 1e-9);
    EXPECT_NEAR(others.direct.high / watt, 20.0, 1e-9);
    // Beside one heater runs the other one.
    EXPECT_NEAR(beside(plan, *scene, 2).real.high / watt, 500.0 + 700.0, 1e-9);
}

TEST(scene, what_cannot_be_started_at_all_is_named) {
    const auto high = with_loads(
        "[[load]]\nname = \"saw\"\npower = \"900 W\"\nmotor = {kind = \"universal\", voltage = "
        "\"230 V\"}\n");
    const auto scene = start_scene(high, runs_of(high));
    ASSERT_TRUE(scene);
    ASSERT_TRUE(scene->refused[0]);
    EXPECT_EQ(scene->refused[0]->where, "load[0].motor.voltage");
    const auto on_the_bus = with_loads(
        "[[load]]\nname = \"pump\"\nfrom = \"12V\"\npower = \"60 W\"\nmotor = {kind = "
        "\"shaded_pole\"}\n");
    const auto wrong = start_scene(on_the_bus, runs_of(on_the_bus));
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().front().where, "load[0].motor.kind");
}

}  // namespace
