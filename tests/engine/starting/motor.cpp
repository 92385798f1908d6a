#include "starting/motor.hpp"

#include "engine/starting/made_start.hpp"

namespace {

using namespace made_start;

// 25 A of the plate at 120 V are 3,000 VA; at a power factor of 0.6 to 0.85 for split-phase motors.
TEST(motor, a_plate_gives_the_demand_at_the_inverters_voltage) {
    const auto side = side_of(three_kilowatts());
    const auto started = pump(side, 25.0);
    EXPECT_NEAR(started.demand.likely.apparent / units::volt_ampere, 3000.0, 1e-6);
    EXPECT_NEAR(started.demand.likely.real / watt, 0.75 * 3000.0, 1e-6);
    EXPECT_EQ(started.where, "load[0]");
    EXPECT_TRUE(started.at_full_voltage.high.comes_up);
    EXPECT_LE(started.at_full_voltage.low.time, started.at_full_voltage.high.time);
}

// A soft-start device lets 35 to 50 % through, common practice; 25 A of a plate are taken as 22.5 to
// 27.5 A. The least is 0.35 x 22.5 = 7.875 A, the most 0.5 x 27.5 = 13.75 A.
TEST(motor, a_soft_start_device_lets_a_part_through) {
    const auto side = side_of(three_kilowatts());
    const auto soft = pump(side, 25.0, true);
    EXPECT_NEAR(soft.demand.low.current / ampere, 7.875, 1e-6);
    EXPECT_NEAR(soft.demand.high.current / ampere, 13.75, 1e-6);
}

TEST(motor, one_for_another_voltage_is_refused_at_its_key) {
    const scenario::Load well{.name = "well pump",
                              .motor = scenario::Motor{.kind = scenario::MotorKind::submersible,
                                                       .locked_rotor_current = 32.0 * ampere,
                                                       .voltage = 230.0 * volt}};
    const auto refused = starting_motor(well, "load[2]", {.real = exactly(900.0 * watt)},
                                        side_of(three_kilowatts()));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().where, "load[2].motor.voltage");
    EXPECT_NE(in_english(refused.error().front().found).find("230 V"), std::string::npos);
}

// A source that gives half the voltage turns a split-phase motor with a quarter of its torque,
// which is less than the pump asks for: it stalls and is switched off.
TEST(motor, half_the_voltage_does_not_bring_it_up) {
    const auto started = pump(side_of(three_kilowatts()), 25.0);
    const auto found = run_up(started, End::high, ::motor::holding(60.0 * volt), units::Share(1.0));
    EXPECT_FALSE(found.comes_up);
    EXPECT_EQ(found.time, given_up_after);
    EXPECT_GT(found.torque_used, units::Share(1.0));
}

}  // namespace
