// Locked-rotor demand, for every input.
#include "motor/code_letter.hpp"
#include "motor/locked_rotor.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::volt;
using units::watt;

double between(double low, double high) {
    return low + (high - low) * (*rc::gen::inRange(0, 1000001) / 1e6);
}

scenario::Motor any_motor() {
    scenario::Motor motor;
    motor.kind = *rc::gen::elementOf(
        std::vector{scenario::MotorKind::split_phase, scenario::MotorKind::capacitor_start,
                    scenario::MotorKind::permanent_split_fan, scenario::MotorKind::compressor_rsir,
                    scenario::MotorKind::submersible, scenario::MotorKind::universal});
    if (*rc::gen::arbitrary<bool>()) {
        motor.horsepower = between(0.05, 12.0) * horsepower;
    }
    if (*rc::gen::arbitrary<bool>()) {
        motor.code_letter = std::string(1, static_cast<char>(*rc::gen::inRange<int>('A', 'Z' + 1)));
    }
    if (*rc::gen::arbitrary<bool>()) {
        motor.locked_rotor_current = between(1.0, 100.0) * ampere;
    }
    if (*rc::gen::arbitrary<bool>()) {
        motor.full_load_current = between(0.1, 30.0) * ampere;
    }
    if (*rc::gen::arbitrary<bool>()) {
        motor.voltage = *rc::gen::elementOf(std::vector{110.0, 115.0, 120.0, 127.0, 230.0}) * volt;
    }
    return motor;
}

TEST(motor_current, an_answer_is_a_rising_range_and_a_refusal_says_where_and_what) {
    EXPECT_TRUE(rc::check([] {
        const auto found = locked_rotor(any_motor(), {.where = "motor", .supply = 120.0 * volt});
        if (!found) {
            RC_ASSERT(!found.error().empty());
            for (const units::Error& error : found.error()) {
                RC_ASSERT(!error.where.empty() && !error.found.empty() && !error.remedy.empty());
            }
            return;
        }
        RC_ASSERT(!found->evidence.empty() && !found->assumptions.empty());
        RC_ASSERT(found->current.low() <= found->current.likely());
        RC_ASSERT(found->current.likely() <= found->current.high());
        RC_ASSERT(found->current == found->evidence.front().current);
        const auto demand = demand_at(*found, 120.0 * volt);
        RC_ASSERT(demand.low.apparent <= demand.high.apparent);
        RC_ASSERT(demand.low.real <= demand.high.real);
        RC_ASSERT(std::isfinite(demand.high.reactive.amount() / watt));
    }));
}

TEST(motor_current, a_second_kind_of_evidence_never_changes_the_range_of_the_best) {
    EXPECT_TRUE(rc::check([] {
        scenario::Motor motor;
        motor.locked_rotor_current = between(10.0, 100.0) * ampere;
        const Installation at{.where = "motor", .supply = 120.0 * volt};
        const auto alone = locked_rotor(motor, at);
        motor.horsepower = between(0.1, 5.0) * horsepower;
        motor.code_letter = "K";
        const auto with_more = locked_rotor(motor, at);
        RC_ASSERT(alone->current == with_more->current);
    }));
}

}  // namespace
