#include "battery/cell/open_circuit.hpp"

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

// By hand: charge -0.25 is fill 0, so a charge of 0.1 is a fill of 0.35/1.25 = 0.28.
TEST(open_circuit, over_the_charge_left_it_is_told_over_the_fill_of_a_well) {
    const auto table = OpenCircuit::through(knots).value().from_lowest(StateOfCharge(-0.25));
    EXPECT_NEAR(table.voltage(StateOfCharge(0.0)) / volt, 11.0 - 0.25 * 10.0, 1e-12);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.2)) / volt, 11.0, 1e-12);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.28)) / volt, 12.0, 1e-12);
    EXPECT_NEAR(table.voltage(StateOfCharge(1.0)) / volt, 13.8, 1e-12);
    EXPECT_EQ(table.pieces(), 3);
}

TEST(open_circuit, a_steep_end_goes_on_to_no_less_than_half_its_voltage) {
    auto steep = knots;
    steep[1] = {StateOfCharge(0.01), 12.0 * volt};
    const auto table = OpenCircuit::through(steep).value().from_lowest(StateOfCharge(-1.0));
    EXPECT_NEAR(table.voltage(StateOfCharge(0.0)) / volt, 5.5, 1e-12);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.5)) / volt, 11.0, 1e-12);
    EXPECT_NEAR(table.voltage(StateOfCharge(0.505)) / volt, 12.0, 1e-12);
}

TEST(open_circuit, above_nothing_left_it_is_cut) {
    const auto table = OpenCircuit::through(knots).value().from_lowest(StateOfCharge(0.1));
    EXPECT_NEAR(table.voltage(StateOfCharge(0.0)) / volt, 12.0, 1e-12);
    EXPECT_EQ(table.pieces(), 2);
    const auto same = OpenCircuit::through(knots).value().from_lowest(StateOfCharge(0.0));
    EXPECT_EQ(same.voltage(StateOfCharge(0.05)),
              OpenCircuit::through(knots).value().voltage(StateOfCharge(0.05)));
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
