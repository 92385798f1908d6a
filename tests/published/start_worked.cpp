// A start as a whole, joined from motor, inverter, packs and cable, against cases worked by hand.
#include "motor/code_letter.hpp"
#include "starting/fuse_in_time.hpp"
#include "starting/start.hpp"

namespace {

using namespace starting;
using units::ampere;
using units::exactly;
using units::ohm;
using units::PowerFactor;
using units::Range;
using units::second;
using units::volt;
using units::watt;

constexpr double half_percent = 0.005;

void expect_near_share(double found, double expected, double share = half_percent) {
    EXPECT_NEAR(found, expected, share * std::abs(expected));
}

InverterSide three_kilowatts(std::optional<units::Voltage> output = {}) {
    const auto side = inverter_side({.continuous = 3000.0 * watt,
                                     .surge = 6000.0 * watt,
                                     .cutoff_voltage = 10.5 * volt,
                                     .output_voltage = output},
                                    12.8 * volt);
    EXPECT_TRUE(side);
    return *side;
}

// The power factors of the worked case are those of the kind but for the lowest, 0.65.
StartingMotor with_power_factor(StartingMotor motor, Range<PowerFactor> factor,
                                units::Voltage supply) {
    motor.locked.power_factor = factor;
    motor.demand = motor::demand_at(motor.locked, supply);
    return motor;
}

StartingMotor third_horse_sump(const InverterSide& side) {
    const scenario::Load pump{.name = "sump pump",
                              .draw = scenario::StatedPower{600.0 * watt},
                              .motor = scenario::Motor{.kind = scenario::MotorKind::split_phase,
                                                       .horsepower = motor::horsepower / 3.0,
                                                       .code_letter = "M",
                                                       .voltage = 115.0 * volt}};
    const auto motor = starting_motor(
        pump, "load[0]", {.real = exactly(600.0 * watt), .factor = PowerFactor(0.6)}, side);
    EXPECT_TRUE(motor);
    return with_power_factor(
        *motor, units::spanning(PowerFactor(0.65), PowerFactor(0.75), PowerFactor(0.85)),
        120.0 * volt);
}

// 13.0 V, 6 milliohm a pack with its branch, 1.5 milliohm in common, 200 A for 5 s.
DirectSource packs(int count) {
    return {
        .branches = {{.name = "pack",
                      .emf = 13.0 * volt,
                      .path = exactly(0.006 * ohm),
                      .count = count,
                      .limits = {.pulse = {{.current = 200.0 * ampere, .lasts = 5.0 * second}}}}},
        .shared = 0.0015 * ohm};
}

const Background two_hundred_and_ten_watts =
    background_of({.real = exactly(210.0 * watt), .factor = PowerFactor(0.9)});

struct Row {
    int count;
    double volts[3];
    double amperes_of_a_pack[3];  // of all packs where there is one
};

// Worked by hand: powers as P and Q, default losses, V = [E + sqrt(E^2 - 4 R P)]/2, each pack's
// current 1.15 times the mean. Printed digits, of powers too, are the tolerance.
TEST(start_worked, a_sump_pump_on_one_two_and_three_packs) {
    const auto side = three_kilowatts();
    const std::vector<StartingMotor> motors{third_horse_sump(side)};
    const StartDraw draw = draw_of(motors, two_hundred_and_ten_watts, side, packs(1));
    const double motor_alone[] = {3629.0, 3847.0, 4065.0};
    const double together[] = {3844.0, 4073.0, 4297.0};
    const double direct[] = {3188.0, 3778.0, 4415.0};
    const double multiple[] = {1.281, 1.358, 1.432};
    for (const End end : all_ends) {
        const auto i = static_cast<std::size_t>(end);
        expect_near_share(at(motors.front().demand, end).apparent / units::volt_ampere,
                          motor_alone[i]);
        expect_near_share(at(draw.apparent, end) / units::volt_ampere, together[i]);
        expect_near_share(at(draw.apparent, end) / side.continuous_apparent, multiple[i]);
        expect_near_share(at(draw.direct_power, end) / watt, direct[i]);
    }
    for (const Row& row : {Row{1, {10.78, 10.23, 9.52}, {296.0, 369.0, 464.0}},
                           Row{2, {11.78, 11.53, 11.23}, {155.6, 188.5, 226.0}},
                           Row{3, {12.08, 11.89, 11.68}, {101.2, 121.8, 144.9}}}) {
        const auto found = judge(draw, &side, packs(row.count));
        for (const End end : all_ends) {
            const auto i = static_cast<std::size_t>(end);
            EXPECT_NEAR(at(found.voltage, end) / volt, row.volts[i], 0.0055) << row.count;
            expect_near_share(at(found.pack_current, end) / ampere, row.amperes_of_a_pack[i]);
        }
    }
}

TEST(start_worked, one_pack_will_not_start_it_two_may_and_three_do) {
    const auto side = three_kilowatts();
    const std::vector<StartingMotor> motors{third_horse_sump(side)};
    const auto with = [&](int count) {
        return judge_start(motors, two_hundred_and_ten_watts, side, packs(count));
    };
    const auto one = with(1);
    EXPECT_EQ(one.verdict, StartVerdict::will_not_start);
    EXPECT_EQ(one.binding, Constraint::pack_current);
    EXPECT_GT(one.of(Constraint::pack_current)->used.low(), Utilised(1.0));
    const auto two = with(2);
    EXPECT_EQ(two.verdict, StartVerdict::marginal);
    EXPECT_EQ(two.binding, Constraint::pack_current);
    expect_near_share(two.of(Constraint::pack_current)->used.high().value(), 226.0 / 200.0);
    const auto three = with(3);
    EXPECT_EQ(three.verdict, StartVerdict::starts);
    // Printed to two digits.
    EXPECT_NEAR(three.of(Constraint::pack_current)->used.high().value(), 0.72, 0.006);
    EXPECT_NEAR(three.of(Constraint::surge_power)->used.high().value(), 0.72, 0.006);
    EXPECT_NEAR(three.of(Constraint::low_voltage)->used.high().value(), 0.53, 0.006);
    EXPECT_NEAR(three.of(Constraint::surge_duration)->used.high().value(), 0.50, 0.006);
}

// The constant-power source by hand.
TEST(start_worked, a_constant_power_on_a_sagging_bank) {
    const DirectSource source{
        .branches = {{.emf = 12.8 * volt, .path = exactly(0.004 * ohm), .count = 1}}};
    const auto behind = equivalent(source, End::likely);
    expect_near_share(at_power(behind, 3333.0 * watt).voltage / volt, 11.656);
    expect_near_share(at_power(behind, 3333.0 * watt).current / ampere, 285.9);
    expect_near_share(at_power(behind, 6900.0 * watt).voltage / volt, 10.055);
    expect_near_share(at_power(behind, 6900.0 * watt).current / ampere, 686.2);
    EXPECT_FALSE(at_power(behind, 10241.0 * watt).possible);  // E^2/4R is 10,240 W
    EXPECT_TRUE(at_power(behind, 10239.0 * watt).possible);
}

// Of the pulsating power of a single phase, by hand.
TEST(start_worked, the_ripple_of_a_single_phase) {
    expect_near_share(largest_ripple(PowerFactor(0.8)), 1.3346);
    expect_near_share(largest_ripple(PowerFactor(0.5)), 1.7321);
}

}  // namespace
