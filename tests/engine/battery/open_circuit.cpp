#include "battery/open_circuit.hpp"

#include <array>

namespace {

using namespace battery;
using namespace units;

const std::array<Knot, 4> knots{{{StateOfCharge(0.0), 11.0 * volt},
                                 {StateOfCharge(0.1), 12.0 * volt},
                                 {StateOfCharge(0.9), 12.8 * volt},
                                 {StateOfCharge(1.0), 13.8 * volt}}};

TEST(open_circuit, passes_through_its_knots_and_straight_between_them) {
    const auto table = OpenCircuit::through(knots).value();
    for (const Knot& knot : knots)
        EXPECT_NEAR(table.voltage(knot.fill) / volt, knot.voltage / volt, 1e-13);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.5)) / volt, 12.4, 1e-13);
    EXPECT_NEAR(table.slope(StateOfCharge(0.95)) / volt, 10.0, 1e-12);
}

TEST(open_circuit, the_fill_at_a_voltage_gives_that_voltage_back) {
    const auto table = OpenCircuit::through(knots).value();
    for (double fill = -0.05; fill < 1.06; fill += 0.01)
        EXPECT_NEAR(table.fill_at(table.voltage(StateOfCharge(fill))).value(), fill, 1e-12);
}

TEST(open_circuit, its_integral_is_the_area_by_trapezia) {
    const auto table = OpenCircuit::through(knots).value();
    // 0.1 * 11.5 + 0.8 * 12.4 + 0.1 * 13.3, by hand
    EXPECT_NEAR(table.integral(StateOfCharge(1.0)) / volt, 12.4, 1e-13);
    // 0.1 * 11.5 + 0.4 * 12.2
    EXPECT_NEAR(table.integral(StateOfCharge(0.5)) / volt, 6.03, 1e-13);
}

TEST(open_circuit, two_in_series_have_twice_the_voltage) {
    const auto table = OpenCircuit::through(knots).value().scaled(2.0);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.5)) / volt, 24.8, 1e-13);
    EXPECT_NEAR(table.integral(StateOfCharge(1.0)) / volt, 24.8, 1e-12);
}

TEST(open_circuit, refuses_tables_that_fall_stand_still_or_do_not_span_the_fill) {
    auto falling = knots;
    falling[2].voltage = 11.5 * volt;
    auto flat = knots;
    flat[2].voltage = flat[1].voltage;
    auto short_of_full = knots;
    short_of_full[3].fill = StateOfCharge(0.95);
    auto zero = knots;
    zero[0].voltage = Voltage{};
    for (const auto& table : {falling, flat, short_of_full, zero})
        EXPECT_EQ(OpenCircuit::through(table).error().front().where, "open_circuit");
    EXPECT_FALSE(OpenCircuit::through(std::vector<Knot>(33, knots[0])).has_value());
}

TEST(open_circuit, a_full_pack_stores_its_charge_at_the_mean_voltage) {
    const auto table = OpenCircuit::through(knots).value();
    const Kinetics kinetics{100.0 * ampere_hour, Share(0.35), 1.0 * per_hour};
    EXPECT_NEAR(stored_energy(kinetics, table, Wells{}) / watt_hour, 1240.0, 1e-9);
    const Kinetics one_well{100.0 * ampere_hour, Share(1.0), Frequency{}};
    EXPECT_NEAR(stored_energy(one_well, table, Wells{}) / watt_hour, 1240.0, 1e-9);
}

}  // namespace
