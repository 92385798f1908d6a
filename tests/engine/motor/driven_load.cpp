#include "motor/driven_load.hpp"

namespace {

using namespace motor;

// A motor of 4 N m at full load, with a slip of 5 %.
InductionMotor four_newton_metres() {
    return {.full_load_slip = Slip(0.05), .full_load_torque = 4.0 * newton_metre};
}

// A fan takes 10 % at any speed and the rest with the square of it: at half of the full-load speed,
// slip 1 - 0.475 = 0.525, 0.1 + 0.9/4 = 0.325 of 4 N m.
TEST(driven_load, the_torque_of_a_fan_falls_with_the_square_of_its_speed) {
    const LoadTorque fan{.steady = Multiple(0.1), .with_speed_squared = Multiple(0.9)};
    EXPECT_NEAR(torque_of(fan, four_newton_metres(), Slip(0.525)) / newton_metre, 1.3, 1e-12);
    EXPECT_NEAR(torque_of(fan, four_newton_metres(), Slip(1.0)) / newton_metre, 0.4, 1e-12);
    EXPECT_NEAR(torque_of(fan, four_newton_metres(), Slip(0.05)) / newton_metre, 4.0, 1e-12);
}

TEST(driven_load, a_hoist_weighs_the_same_at_any_speed) {
    const auto& hoist = traits_of(DrivenLoad::hoist).torque.likely;
    for (const double slip : {1.0, 0.5, 0.05})
        EXPECT_NEAR(torque_of(hoist, four_newton_metres(), Slip(slip)) / newton_metre, 4.0, 1e-12);
}

// Common practice, no source: what a kind of motor is usually built into.
TEST(driven_load, each_kind_of_motor_turns_its_usual_thing) {
    EXPECT_EQ(usual_load(scenario::MotorKind::submersible), DrivenLoad::centrifugal_pump);
    EXPECT_EQ(usual_load(scenario::MotorKind::shaded_pole), DrivenLoad::fan);
    EXPECT_EQ(usual_load(scenario::MotorKind::compressor_rsir), DrivenLoad::compressor_equalised);
    EXPECT_EQ(usual_load(scenario::MotorKind::capacitor_start), DrivenLoad::unstated);
}

// What nobody states reaches from a pump's curve to full torque at rest; so does its range.
TEST(driven_load, what_is_not_stated_spans_the_others) {
    const auto& open = traits_of(DrivenLoad::unstated).torque;
    EXPECT_EQ(open.low.steady, Multiple(0.1));
    EXPECT_EQ(open.high.steady, Multiple(1.0));
    EXPECT_EQ(open.high.with_speed_squared, Multiple(0.0));
}

}  // namespace
