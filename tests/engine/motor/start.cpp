#include "motor/start.hpp"

#include "motor/code_letter.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::second;
using units::volt;

InductionMotor capacitor_motor() {
    return {.synchronous_speed = per_minute(1800.0),
            .full_load_slip = Slip(75.0 / 1800.0),
            .full_load_torque = 2.064 * newton_metre,
            .locked_torque = Multiple(2.5),
            .breakdown_torque = Multiple(2.5),
            .cut_out = SpeedShare(0.75),
            .inertia = 0.006 * kilogram_square_metre,
            .rated_voltage = 115.0 * volt,
            .locked_current = 45.0 * ampere,
            .running_current = 9.0 * ampere,
            .locked_power_factor = units::PowerFactor(0.85),
            .running_power_factor = units::PowerFactor(0.7)};
}

const LoadTorque pump{Multiple(0.1), Multiple(0.9)};
const LoadTorque heavy{Multiple(3.0), Multiple(0.0)};

TEST(start, a_load_heavier_than_the_locked_torque_stalls_at_rest) {
    const Start found = start(capacitor_motor(), heavy, holding(115.0 * volt));
    EXPECT_EQ(found.end, StartEnd::stalls_at_rest);
    EXPECT_FALSE(found.time_to_speed);
    EXPECT_NEAR(found.torque_used.value(), 3.0 / 2.5, 1e-9);
    EXPECT_NEAR(found.largest_current / ampere, 45.0, 1e-9);
}

TEST(start, a_load_the_motor_cannot_lift_over_the_dip_stalls_on_the_way) {
    InductionMotor motor = capacitor_motor();
    motor.cut_out.reset();
    motor.locked_torque = Multiple(1.5);
    // The square part grows over the torque curve well before its peak.
    const Start found = start(motor, {Multiple(0.5), Multiple(3.2)}, holding(115.0 * volt));
    ASSERT_EQ(found.end, StartEnd::stalls_on_the_way);
    const Slip slip(1.0 - found.stalls_at.value());
    const LoadTorque load{Multiple(0.5), Multiple(3.2)};
    EXPECT_NEAR(torque_at(motor, slip, true) / newton_metre,
                torque_of(load, motor, slip) / newton_metre, 1e-6);
}

TEST(start, no_voltage_is_a_stall_at_rest_and_all_numbers_stay_finite) {
    const Start found = start(capacitor_motor(), pump, holding(0.0 * volt));
    EXPECT_EQ(found.end, StartEnd::stalls_at_rest);
    EXPECT_DOUBLE_EQ(found.torque_used.value(), 1000.0);
}

TEST(start, a_motor_with_nothing_to_turn_uses_no_torque) {
    const Start found =
        start(capacitor_motor(), {Multiple(0.0), Multiple(0.0)}, holding(115.0 * volt));
    EXPECT_EQ(found.end, StartEnd::runs);
    EXPECT_DOUBLE_EQ(found.torque_used.value(), 0.0);
}

TEST(start, twice_the_inertia_takes_twice_the_time) {
    InductionMotor motor = capacitor_motor();
    const Start light = start(motor, pump, holding(115.0 * volt));
    motor.inertia = 2.0 * motor.inertia;
    const Start twice = start(motor, pump, holding(115.0 * volt));
    EXPECT_NEAR(*twice.time_to_speed / *light.time_to_speed, 2.0, 1e-6);
}

TEST(start, a_source_that_folds_back_lengthens_the_start_and_keeps_its_limit) {
    const InductionMotor motor = capacitor_motor();
    const Start stiff = start(motor, pump, holding(115.0 * volt));
    const Start folded =
        start(motor, pump, folding_back(115.0 * volt, 35.0 * ampere, 0.0 * ampere));
    ASSERT_EQ(folded.end, StartEnd::runs);
    EXPECT_GT(*folded.time_to_speed, *stiff.time_to_speed);
    EXPECT_LE(folded.largest_current / ampere, 35.0 + 1e-9);
    EXPECT_NEAR(folded.lowest_voltage / volt, 115.0 * 35.0 / 45.0, 1e-6);
}

TEST(start, the_course_begins_at_rest_rises_and_ends_where_asked) {
    const InductionMotor motor = capacitor_motor();
    const auto course = course_of_start(motor, pump, holding(115.0 * volt), 1.0 * second, 60);
    ASSERT_GE(course.size(), 30u);
    EXPECT_DOUBLE_EQ(course.front().speed.value(), 0.0);
    EXPECT_NEAR(course.front().current / ampere, 45.0, 1e-9);
    EXPECT_DOUBLE_EQ(course.back().time / second, 1.0);
    EXPECT_GT(course.back().speed.value(), 0.95);
    EXPECT_LT(course.back().speed.value(), 1.0);
    EXPECT_LT(course.back().current / ampere, 25.0);
    for (std::size_t i = 1; i < course.size(); ++i) {
        EXPECT_GE(course[i].time, course[i - 1].time);
        EXPECT_GE(course[i].speed, course[i - 1].speed);
    }
}

TEST(start, the_course_passes_the_breakdown_slip_when_the_verdict_says) {
    const InductionMotor motor = capacitor_motor();
    const Start found = start(motor, pump, holding(115.0 * volt));
    const auto course =
        course_of_start(motor, pump, holding(115.0 * volt), *found.time_to_speed, 90);
    EXPECT_NEAR(1.0 - course.back().speed.value(), breakdown_slip(motor).value(), 2e-3);
}

TEST(start, the_course_of_a_stall_holds_its_current) {
    const auto course =
        course_of_start(capacitor_motor(), heavy, holding(115.0 * volt), 5.0 * second, 20);
    EXPECT_DOUBLE_EQ(course.back().time / second, 5.0);
    EXPECT_DOUBLE_EQ(course.back().speed.value(), 0.0);
    EXPECT_NEAR(course.back().current / ampere, 45.0, 1e-9);
}

TEST(start, the_course_of_a_stall_at_the_switch_stays_there) {
    const auto course =
        course_of_start(capacitor_motor(), pump, holding(0.5 * 115.0 * volt), 5.0 * second, 40);
    EXPECT_NEAR(course.back().speed.value(), 0.75, 1e-6);
    EXPECT_DOUBLE_EQ(course.back().time / second, 5.0);
}

}  // namespace
