#include "motor/kind.hpp"

namespace {

using motor::Multiple;
using motor::traits_of;
using scenario::MotorKind;

// [Motor packets]: fan motors of code letter B, 3.15 to 3.55 kVA/hp. At an efficiency of 0.62 and a
// power factor of 0.825 a horsepower draws 746/(0.62 x 0.825) = 1,458 VA, so 2.2 to 2.4 times.
TEST(kind, a_fan_motor_starts_gently_as_its_code_letter_says) {
    const auto& fan = traits_of(MotorKind::permanent_split_fan);
    EXPECT_LE(fan.locked_to_running.low(), Multiple(3.15 / 1.458));
    EXPECT_GE(fan.locked_to_running.high(), Multiple(3.55 / 1.458));
    EXPECT_FALSE(fan.has_start_switch);
    EXPECT_FALSE(fan.follows_full_load_table);
}

// A capacitor in the start winding gives a motor more torque at rest and a higher power factor; a
// ring of copper in its place, a shaded pole, less of either.
TEST(kind, a_start_capacitor_lifts_torque_and_power_factor) {
    const auto& split = traits_of(MotorKind::split_phase);
    const auto& capacitor = traits_of(MotorKind::capacitor_start);
    const auto& shaded = traits_of(MotorKind::shaded_pole);
    EXPECT_GT(capacitor.locked_torque->low(), split.locked_torque->high());
    EXPECT_LT(shaded.locked_torque->high(), split.locked_torque->low());
    EXPECT_GT(capacitor.locked_power_factor.likely(), split.locked_power_factor.likely());
    EXPECT_LT(shaded.locked_power_factor.likely(), split.locked_power_factor.likely());
}

// Brushes and electronics have no curve of torque over slip, and no start switch.
TEST(kind, motors_that_are_no_induction_motors_have_no_curve) {
    for (const MotorKind kind : {MotorKind::universal, MotorKind::electronic}) {
        EXPECT_FALSE(traits_of(kind).locked_torque);
        EXPECT_FALSE(traits_of(kind).breakdown_torque);
        EXPECT_FALSE(traits_of(kind).has_start_switch);
    }
}

}  // namespace
