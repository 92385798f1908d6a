#include "motor/start_case.hpp"

#include "motor/code_letter.hpp"
#include "motor/start.hpp"

namespace {

using namespace motor;
using scenario::MotorKind;
using testing::HasSubstr;
using testing::SizeIs;
using units::second;
using units::volt;
using units::watt;

constexpr MotorKind induction_kinds[] = {
    MotorKind::split_phase,         MotorKind::capacitor_start,
    MotorKind::permanent_split_fan, MotorKind::permanent_split_compressor,
    MotorKind::compressor_rsir,     MotorKind::compressor_csir,
    MotorKind::submersible,         MotorKind::shaded_pole};

LockedRotor locked(MotorKind kind) {
    scenario::Motor motor;
    motor.kind = kind;
    motor.horsepower = horsepower / 3.0;
    return *locked_rotor(motor, {.where = "motor", .supply = 120.0 * volt});
}

TEST(start_case, every_kind_starts_its_usual_load_at_rated_voltage) {
    for (const MotorKind kind : induction_kinds) {
        const auto cases = start_cases(locked(kind), {.output = horsepower / 3.0}, "motor");
        ASSERT_TRUE(cases) << in_words(kind);
        for (const StartCase& one : {cases->burden.low, cases->burden.likely, cases->burden.high}) {
            const Start found = start(one.motor, one.load, holding(one.motor.rated_voltage));
            EXPECT_EQ(found.end, StartEnd::runs) << in_words(kind);
            EXPECT_LE(found.torque_used.value(), 1.0 / 1.2 + 1e-6) << in_words(kind);
        }
    }
}

TEST(start_case, the_heavier_burden_takes_longer_and_draws_more) {
    for (const MotorKind kind : induction_kinds) {
        const auto cases = start_cases(locked(kind), {.output = horsepower / 3.0}, "motor");
        const auto run = [](const StartCase& one) {
            return start(one.motor, one.load, holding(one.motor.rated_voltage));
        };
        const Start low = run(cases->burden.low);
        const Start high = run(cases->burden.high);
        EXPECT_LT(*low.time_to_speed, *high.time_to_speed) << in_words(kind);
        EXPECT_LT(low.largest_current, high.largest_current) << in_words(kind);
    }
}

// The start times of the kinds stem from handbooks, not from this model: the two should meet.
TEST(start_case, computed_start_times_meet_those_of_the_kind) {
    for (const MotorKind kind : induction_kinds) {
        const auto cases = start_cases(locked(kind), {.output = horsepower / 3.0}, "motor");
        const auto time = [](const StartCase& one) {
            return *start(one.motor, one.load, holding(one.motor.rated_voltage)).time_to_speed;
        };
        const auto& usual = traits_of(kind).time_to_speed;
        EXPECT_LE(time(cases->burden.low), usual.high()) << in_words(kind);
        EXPECT_GE(time(cases->burden.high), 0.5 * usual.low()) << in_words(kind);
    }
}

TEST(start_case, a_compressor_against_pressure_may_stall_at_rated_voltage) {
    const auto cases = start_cases(
        locked(MotorKind::permanent_split_compressor),
        {.output = horsepower / 3.0, .drives = DrivenLoad::compressor_against_head}, "motor");
    const StartCase& likely = cases->burden.likely;
    EXPECT_EQ(start(likely.motor, likely.load, holding(likely.motor.rated_voltage)).end,
              StartEnd::stalls_at_rest);
}

TEST(start_case, motors_without_a_torque_curve_have_no_case) {
    LockedRotor universal = locked(MotorKind::split_phase);
    universal.kind = MotorKind::universal;
    EXPECT_FALSE(start_cases(universal, {.output = 500.0 * watt}, "motor"));
}

TEST(start_case, the_synchronous_speed_is_the_one_above_the_full_load_speed) {
    const auto speed = [](double per_minute_full, double hertz) {
        const auto cases = start_cases(locked(MotorKind::split_phase),
                                       {.output = horsepower / 3.0,
                                        .frequency = hertz * units::hertz,
                                        .full_load_speed = per_minute(per_minute_full)},
                                       "motor");
        return cases->burden.likely.motor.synchronous_speed / per_minute(1.0);
    };
    EXPECT_NEAR(speed(1725.0, 60.0), 1800.0, 1e-9);
    EXPECT_NEAR(speed(3450.0, 60.0), 3600.0, 1e-9);
    EXPECT_NEAR(speed(1140.0, 60.0), 1200.0, 1e-9);
    EXPECT_NEAR(speed(1425.0, 50.0), 1500.0, 1e-9);
}

TEST(start_case, what_was_taken_is_told) {
    const auto cases =
        start_cases(locked(MotorKind::split_phase), {.output = horsepower / 3.0}, "load[3].motor");
    ASSERT_THAT(cases->assumptions, SizeIs(3));
    EXPECT_THAT(cases->assumptions.back().text, HasSubstr("centrifugal pump"));
    EXPECT_THAT(cases->assumptions.back().where, HasSubstr("load[3].motor"));
}

TEST(start_case, the_output_comes_from_the_plate_or_from_the_running_power) {
    scenario::Motor motor;
    EXPECT_FALSE(shaft_output(motor, std::nullopt));
    EXPECT_NEAR(*shaft_output(motor, 600.0 * watt) / watt, 0.57 * 600.0, 1e-9);
    motor.horsepower = horsepower;
    EXPECT_EQ(shaft_output(motor, 600.0 * watt), horsepower);
}

}  // namespace
