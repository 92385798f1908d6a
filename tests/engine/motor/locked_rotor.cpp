#include "motor/locked_rotor.hpp"

#include "motor/code_letter.hpp"

namespace {

using namespace motor;
using scenario::MotorKind;
using testing::HasSubstr;
using testing::SizeIs;
using units::ampere;
using units::volt;
using units::watt;

const Installation unit{.where = "load[0].motor", .supply = 120.0 * volt};

scenario::Motor half_horse(MotorKind kind = MotorKind::split_phase) {
    scenario::Motor motor;
    motor.kind = kind;
    motor.horsepower = 0.5 * horsepower;
    motor.voltage = 115.0 * volt;
    return motor;
}

TEST(locked_rotor, the_plate_current_goes_before_every_other_evidence) {
    scenario::Motor motor = half_horse();
    motor.locked_rotor_current = 40.0 * ampere;
    motor.code_letter = "K";
    const auto found = locked_rotor(motor, unit);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->evidence.front().from, Evidence::plate_current);
    EXPECT_NEAR(found->current.low() / ampere, 36.0, 1e-9);
    EXPECT_NEAR(found->current.likely() / ampere, 40.0, 1e-9);
    EXPECT_NEAR(found->current.high() / ampere, 44.0, 1e-9);
    EXPECT_THAT(found->evidence, SizeIs(4));
    EXPECT_THAT(found->findings, SizeIs(0));
}

TEST(locked_rotor, evidence_that_disagrees_is_told_and_not_averaged) {
    scenario::Motor motor = half_horse();
    motor.locked_rotor_current = 20.0 * ampere;
    motor.code_letter = "K";  // 34.8 to 39.1 A
    const auto found = locked_rotor(motor, unit);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->current.likely() / ampere, 20.0, 1e-9);
    ASSERT_FALSE(found->findings.empty());
    EXPECT_EQ(found->findings.front().severity, scenario::Severity::caution);
    EXPECT_THAT(found->findings.front().text, HasSubstr("the code letter says 34.8 to 39.1 A"));
}

TEST(locked_rotor, horsepower_alone_is_looked_up_in_the_table) {
    const auto found = locked_rotor(half_horse(), unit);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->evidence.front().from, Evidence::full_load_table);
    EXPECT_NEAR(found->current.low() / ampere, 29.4, 1e-9);
    EXPECT_NEAR(found->current.high() / ampere, 58.8, 1e-9);
}

TEST(locked_rotor, a_fan_motor_is_not_judged_by_a_table_of_pump_motors) {
    const auto found = locked_rotor(half_horse(MotorKind::permanent_split_fan), unit);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->evidence.front().from, Evidence::running_draw);
    EXPECT_LT(found->current.likely() / ampere, 20.0);
}

TEST(locked_rotor, a_running_power_and_a_kind_are_enough) {
    scenario::Motor motor;
    motor.kind = MotorKind::universal;
    const Installation metered{
        .where = "load[1].motor",
        .supply = 120.0 * volt,
        .running_power = units::spanning<units::Power>(900.0 * watt, 1200.0 * watt, 1800.0 * watt)};
    const auto found = locked_rotor(motor, metered);
    ASSERT_TRUE(found);
    // 1.5 * 900 W / 0.97 / 115 V and 5 * 1800 W / 0.85 / 115 V
    EXPECT_NEAR(found->current.low() / ampere, 12.10, 0.01);
    EXPECT_NEAR(found->current.high() / ampere, 92.07, 0.01);
    EXPECT_THAT(found->assumptions, SizeIs(2));
}

TEST(locked_rotor, a_running_current_needs_no_power_factor) {
    scenario::Motor motor;
    motor.full_load_current = 5.0 * ampere;
    motor.voltage = 115.0 * volt;
    const auto found = locked_rotor(motor, unit);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->current.low() / ampere, 25.0, 1e-9);
    EXPECT_NEAR(found->current.high() / ampere, 37.5, 1e-9);
}

TEST(locked_rotor, a_230_v_motor_is_refused_on_a_120_v_unit) {
    scenario::Motor motor = half_horse();
    motor.voltage = 230.0 * volt;
    const auto refused = locked_rotor(motor, unit);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().where, "load[0].motor.voltage");
    EXPECT_THAT(refused.error().front().found, HasSubstr("a 230 V motor cannot be run from 120 V"));
}

TEST(locked_rotor, a_locked_current_below_the_running_one_is_a_plate_read_the_wrong_way) {
    scenario::Motor motor = half_horse();
    motor.locked_rotor_current = 5.0 * ampere;
    motor.full_load_current = 30.0 * ampere;
    const auto refused = locked_rotor(motor, unit);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().remedy, HasSubstr("LRA is the larger one"));
}

TEST(locked_rotor, all_that_is_wrong_is_told_at_once) {
    scenario::Motor motor = half_horse();
    motor.voltage = 230.0 * volt;
    motor.code_letter = "O";
    const auto refused = locked_rotor(motor, unit);
    ASSERT_FALSE(refused);
    ASSERT_THAT(refused.error(), SizeIs(2));
    EXPECT_EQ(refused.error().back().where, "load[0].motor.code_letter");
}

TEST(locked_rotor, a_code_letter_needs_horsepower_unless_the_plate_gives_the_current) {
    scenario::Motor motor;
    motor.code_letter = "K";
    EXPECT_FALSE(locked_rotor(motor, unit));
    motor.locked_rotor_current = 30.0 * ampere;
    EXPECT_TRUE(locked_rotor(motor, unit));
    motor.code_letter = "V";
    EXPECT_TRUE(locked_rotor(motor, unit));
    motor.code_letter = "Q";
    EXPECT_FALSE(locked_rotor(motor, unit));
}

TEST(locked_rotor, nothing_known_is_an_error_that_says_what_would_help) {
    const auto refused = locked_rotor({}, unit);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().remedy, HasSubstr("locked_rotor_current"));
}

TEST(locked_rotor, horsepower_on_a_brush_motor_is_no_evidence) {
    EXPECT_FALSE(locked_rotor(half_horse(MotorKind::universal), unit));
}

TEST(locked_rotor, a_direct_current_motor_is_refused) {
    scenario::Motor motor = half_horse(MotorKind::direct_current);
    EXPECT_FALSE(locked_rotor(motor, unit));
}

TEST(locked_rotor, a_letter_below_half_a_horse_is_used_with_a_note) {
    scenario::Motor motor = half_horse();
    motor.horsepower = horsepower / 3.0;
    motor.code_letter = "M";
    const auto found = locked_rotor(motor, unit);
    ASSERT_TRUE(found);
    ASSERT_FALSE(found->findings.empty());
    EXPECT_EQ(found->findings.back().severity, scenario::Severity::note);
}

TEST(locked_rotor, a_soft_start_device_lowers_the_current_and_a_start_switch_dislikes_it) {
    scenario::Motor motor = half_horse();
    motor.locked_rotor_current = 40.0 * ampere;
    motor.soft_start = true;
    const auto found = locked_rotor(motor, unit);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->current.low() / ampere, 0.35 * 36.0, 1e-9);
    EXPECT_NEAR(found->current.high() / ampere, 0.50 * 44.0, 1e-9);
    EXPECT_NEAR(found->evidence.front().current.likely() / ampere, 40.0, 1e-9);
    EXPECT_THAT(found->findings.back().text, HasSubstr("start winding"));
}

TEST(locked_rotor, real_and_reactive_power_of_the_start_make_its_apparent_power) {
    scenario::Motor motor = half_horse();
    motor.locked_rotor_current = 40.0 * ampere;
    const auto demand = demand_at(*locked_rotor(motor, unit), 120.0 * volt);
    for (const Demand& end : {demand.low, demand.likely, demand.high}) {
        const double sum = std::hypot(end.real / watt, end.reactive.amount() / watt);
        EXPECT_NEAR(sum, end.apparent.amount() / watt, 1e-9 * sum);
        EXPECT_NEAR(end.apparent.amount() / (end.current * 120.0 * volt), 1.0, 1e-12);
    }
    EXPECT_LT(demand.low.real, demand.high.real);
}

}  // namespace
