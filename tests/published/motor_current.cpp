// Locked-rotor current of single-phase motors against printed tables and worked examples.
#include "motor/code_letter.hpp"
#include "motor/full_load_current.hpp"
#include "motor/locked_rotor.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::ohm;
using units::volt;
using units::volt_ampere;

constexpr double half_percent = 0.005;  // the values were computed from printed ones and rounded

void expect_near_share(double found, double expected, double share) {
    EXPECT_NEAR(found, expected, share * std::abs(expected));
}

struct PrintedLetter {
    char letter;
    double low, high;  // kVA/hp as printed
};

// [NEC] Table 430.7(B). The printed upper end is 0.01 below where the next letter begins.
constexpr PrintedLetter printed_letters[] = {
    {'A', 0.0, 3.14},   {'B', 3.15, 3.54},  {'C', 3.55, 3.99},  {'D', 4.0, 4.49},
    {'E', 4.5, 4.99},   {'F', 5.0, 5.59},   {'G', 5.6, 6.29},   {'H', 6.3, 7.09},
    {'J', 7.1, 7.99},   {'K', 8.0, 8.99},   {'L', 9.0, 9.99},   {'M', 10.0, 11.19},
    {'N', 11.2, 12.49}, {'P', 12.5, 13.99}, {'R', 14.0, 15.99}, {'S', 16.0, 17.99},
    {'T', 18.0, 19.99}, {'U', 20.0, 22.39},
};

TEST(motor_current, every_code_letter_has_its_printed_band) {
    for (const PrintedLetter& row : printed_letters) {
        const auto band = locked_rotor_power(std::string(1, row.letter), 1.0 * horsepower);
        ASSERT_TRUE(band) << row.letter;
        EXPECT_NEAR(band->low() / volt_ampere, 1000.0 * row.low, 1e-6) << row.letter;
        EXPECT_NEAR(band->high() / volt_ampere, 1000.0 * row.high, 10.0 + 1e-6) << row.letter;
        EXPECT_GT(band->high() / volt_ampere, 1000.0 * row.high) << row.letter;
        EXPECT_EQ(code_letter_of(1000.0 * row.low * volt_ampere, 1.0 * horsepower), row.letter);
        EXPECT_EQ(code_letter_of(1000.0 * row.high * volt_ampere, 1.0 * horsepower), row.letter);
    }
    EXPECT_EQ(code_letter_of(22400.0 * volt_ampere, 1.0 * horsepower), 'V');
    EXPECT_EQ(code_letter_of(90000.0 * volt_ampere, 1.0 * horsepower), 'V');
}

// Middles of bands as a handbook prints them, [Welding-generator handbook]; one decimal.
TEST(motor_current, the_likely_value_of_a_letter_is_the_middle_a_handbook_prints) {
    const std::pair<char, double> middles[] = {{'F', 5.3},  {'L', 9.5},  {'M', 10.6},
                                               {'N', 11.8}, {'P', 13.2}, {'R', 15.0}};
    for (const auto& [letter, middle] : middles) {
        const auto band = locked_rotor_power(std::string(1, letter), 1.0 * horsepower);
        EXPECT_NEAR(band->likely() / volt_ampere / 1000.0, middle, 0.0501) << letter;
    }
}

struct FullLoadRow {
    double hp, at_115, at_200, at_208, at_230;
};

// [NEC] Table 430.248, amperes as printed.
constexpr FullLoadRow printed_full_load[] = {
    {1.0 / 6.0, 4.4, 2.5, 2.4, 2.2}, {0.25, 5.8, 3.3, 3.2, 2.9},    {1.0 / 3.0, 7.2, 4.1, 4.0, 3.6},
    {0.5, 9.8, 5.6, 5.4, 4.9},       {0.75, 13.8, 7.9, 7.6, 6.9},   {1.0, 16.0, 9.2, 8.8, 8.0},
    {1.5, 20.0, 11.5, 11.0, 10.0},   {2.0, 24.0, 13.8, 13.2, 12.0}, {3.0, 34.0, 19.6, 18.7, 17.0},
    {5.0, 56.0, 32.2, 30.8, 28.0},   {7.5, 80.0, 46.0, 44.0, 40.0}, {10.0, 100.0, 57.5, 55.0, 50.0},
};

TEST(motor_current, every_row_of_the_full_load_table_is_as_printed) {
    for (const FullLoadRow& row : printed_full_load) {
        const auto at = [&](double volts) {
            return *full_load_current(row.hp * horsepower, volts * volt) / ampere;
        };
        EXPECT_NEAR(at(115.0), row.at_115, 1e-9) << row.hp;
        EXPECT_NEAR(at(120.0), row.at_115, 1e-9) << row.hp;
        EXPECT_NEAR(at(200.0), row.at_200, 1e-9) << row.hp;
        EXPECT_NEAR(at(208.0), row.at_208, 1e-9) << row.hp;
        EXPECT_NEAR(at(230.0), row.at_230, 1e-9) << row.hp;
    }
}

struct LockedRow {
    double hp, at_115, at_208, at_230;
};

// [NEC] Table 430.251(A), amperes as printed. Its 208 V column lies up to 1 % above 6 times the
// 208 V currents of Table 430.248 (80 against 79.2 A).
constexpr LockedRow printed_locked[] = {
    {0.5, 58.8, 32.5, 29.4}, {0.75, 82.8, 45.8, 41.4}, {1.0, 96, 53, 48},
    {1.5, 120, 66, 60},      {2.0, 144, 80, 72},       {3.0, 204, 113, 102},
    {5.0, 336, 186, 168},    {7.5, 480, 265, 240},     {10.0, 600, 332, 300},
};

TEST(motor_current, the_high_end_of_the_table_is_the_printed_locked_rotor_conversion) {
    for (const LockedRow& row : printed_locked) {
        const auto at = [&](double volts) {
            return locked_to_full_load().high().value() *
                   (*full_load_current(row.hp * horsepower, volts * volt) / ampere);
        };
        expect_near_share(at(115.0), row.at_115, half_percent);
        expect_near_share(at(208.0), row.at_208, 0.0105);
        expect_near_share(at(230.0), row.at_230, half_percent);
    }
}

units::Range<units::Current> current_of(double hp, double volts, const char* letter) {
    const scenario::Motor motor{.kind = scenario::MotorKind::split_phase,
                                .locked_rotor_current = {},
                                .horsepower = hp * horsepower,
                                .code_letter = letter,
                                .full_load_current = {},
                                .voltage = volts * volt,
                                .soft_start = {}};
    return locked_rotor(motor, {.where = "motor", .supply = volts * volt})->current;
}

// [Welding-generator handbook] worked example: printed 12.2 A.
TEST(motor_current, a_quarter_horse_of_letter_m_at_230_v) {
    const auto current = current_of(0.25, 230.0, "M");
    expect_near_share(current.high() / ampere, 12.17, half_percent);
    EXPECT_NEAR(current.high() / ampere, 12.2, 0.05);
}

// Computed by hand from [NEC] Table 430.7(B).
TEST(motor_current, letters_k_and_l_at_115_v) {
    const auto half = current_of(0.5, 115.0, "K");
    expect_near_share(half.low() / ampere, 34.78, half_percent);
    expect_near_share(half.high() / ampere, 39.13, half_percent);
    const auto one = current_of(1.0, 115.0, "L");
    expect_near_share(one.low() / ampere, 78.26, half_percent);
    expect_near_share(one.high() / ampere, 86.96, half_percent);
}

// [Submersible handbook] prints 64.4 A and letter R for 1/2 hp, 115 V; from memory.
TEST(motor_current, a_submersible_pump_has_the_letter_its_maker_prints) {
    const units::ApparentPower locked(64.4 * ampere * (115.0 * volt));
    expect_near_share(locked / volt_ampere / 1000.0 / 0.5, 14.81, half_percent);
    EXPECT_EQ(code_letter_of(locked, 0.5 * horsepower), 'R');
}

// The same handbook sizes generators for a dip of 35 %, which makes 3,129 VA of 7,406.
TEST(motor_current, a_generator_list_expects_a_third_less_voltage) {
    scenario::Motor motor;
    motor.locked_rotor_current = 64.4 * ampere;
    motor.voltage = 115.0 * volt;
    const auto locked = locked_rotor(motor, {.where = "motor", .supply = 115.0 * volt});
    const auto full = demand_at(*locked, 115.0 * volt).likely.apparent / volt_ampere;
    const auto sagging = demand_at(*locked, 0.65 * 115.0 * volt).likely.apparent / volt_ampere;
    expect_near_share(full, 7406.0, half_percent);
    expect_near_share(sagging, 3129.0, half_percent);
}

// 120/115 squared.
TEST(motor_current, a_115_v_motor_takes_nine_percent_more_at_120_v) {
    scenario::Motor motor;
    motor.locked_rotor_current = 30.0 * ampere;
    motor.voltage = 115.0 * volt;
    const auto locked = locked_rotor(motor, {.where = "motor", .supply = 120.0 * volt});
    const double factor = demand_at(*locked, 120.0 * volt).likely.apparent /
                          demand_at(*locked, 115.0 * volt).likely.apparent;
    expect_near_share(factor, 1.0888, half_percent);
}

// Two textbook motors, worked out from the impedances of their windings with their capacitor: 0.944
// [Capacitor-start solution] (220 V, 1 hp) and 0.950 [Fitzgerald] (120 V, 1/4 hp, from memory).
TEST(motor_current, capacitor_start_motors_start_at_a_high_power_factor) {
    const auto& range = traits_of(scenario::MotorKind::capacitor_start).locked_power_factor;
    EXPECT_LT(range.low().value(), 0.944);
    EXPECT_GE(range.high().value(), 0.950);
}

// [NREL motor stall]: stalled, resistance and reactance are equal, 0.1 of the rated impedance: a power
// factor of 0.7071.
TEST(motor_current, a_stalled_air_conditioner_by_its_impedance) {
    const auto& kind = traits_of(scenario::MotorKind::permanent_split_compressor);
    EXPECT_LE(kind.locked_power_factor.low().value(), 0.7071);
    EXPECT_GE(kind.locked_power_factor.high().value(), 0.7071);
}

struct DataSheet {
    scenario::MotorKind kind;
    double hp, volts, amperes;
    const char* letter;
    double low, high;  // locked over full-load current, from the letter
};

// [Motor packets]: what makers print of fan and blower motors; ratios computed from the letter.
TEST(motor_current, ratios_of_data_sheets_overlap_those_of_their_kind) {
    const DataSheet sheets[] = {
        {scenario::MotorKind::split_phase, 1.0 / 3.0, 115.0, 5.5, "M", 5.3, 5.9},
        {scenario::MotorKind::permanent_split_fan, 1.0 / 3.0, 230.0, 2.3, "B", 2.0, 2.2},
        {scenario::MotorKind::permanent_split_fan, 0.75, 230.0, 3.7, "B", 2.8, 3.1},
    };
    for (const DataSheet& sheet : sheets) {
        const auto current = current_of(sheet.hp, sheet.volts, sheet.letter);
        EXPECT_NEAR(current.low() / ampere / sheet.amperes, sheet.low, 0.06);
        EXPECT_NEAR(current.high() / ampere / sheet.amperes, sheet.high, 0.06);
        const auto& ratio = traits_of(sheet.kind).locked_to_running;
        EXPECT_LE(ratio.low().value(), sheet.high);
        EXPECT_GE(ratio.high().value(), sheet.low);
    }
}

// The worked sump pump: 1/3 hp split-phase, letter M at 115 V, run on 120 V, power factor
// 0.65/0.75/0.85, with 210 W at 0.9 already on; computed by hand.
TEST(motor_current, the_demand_of_the_worked_sump_pump) {
    scenario::Motor motor;
    motor.horsepower = horsepower / 3.0;
    motor.code_letter = "M";
    motor.voltage = 115.0 * volt;
    auto locked = *locked_rotor(motor, {.where = "motor", .supply = 120.0 * volt});
    locked.power_factor = units::spanning(units::PowerFactor(0.65), units::PowerFactor(0.75),
                                          units::PowerFactor(0.85));
    const auto demand = demand_at(locked, 120.0 * volt);
    expect_near_share(demand.low.apparent / volt_ampere, 3629.0, half_percent);
    expect_near_share(demand.likely.apparent / volt_ampere, 3847.0, half_percent);
    expect_near_share(demand.high.apparent / volt_ampere, 4065.0, half_percent);
    const auto with_the_rest = [](const Demand& start) {
        const double real = start.real / units::watt + 210.0;
        const double reactive =
            start.reactive.amount() / units::watt + 210.0 * std::tan(std::acos(0.9));
        return std::hypot(real, reactive);
    };
    expect_near_share(with_the_rest(demand.low), 3844.0, half_percent);
    expect_near_share(with_the_rest(demand.likely), 4073.0, half_percent);
    expect_near_share(with_the_rest(demand.high), 4297.0, half_percent);
}

}  // namespace
