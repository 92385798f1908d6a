// What LiFePO4 shows after a full charge, against a bank that was measured for 41 days and values
// worked out apart from this program.
#include "battery/cell/surface_charge.hpp"

#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;

// [LiFePO4 bank]: five 100 Ah packs in parallel, 20 to 21 degC, one full charge.
TEST(surface_charge, forty_one_days_after_a_full_charge) {
    struct Row {
        double hours, volts;
    };
    for (const Row& row : {Row{0.6, 14.011},
                           {1.5, 13.961},
                           {3.5, 13.925},
                           {6.5, 13.876},
                           {24.0, 13.729},
                           {64.0, 13.570},
                           {112.0, 13.448},
                           {184.0, 13.349},
                           {280.0, 13.317},
                           {980.0, 13.300}})
        EXPECT_NEAR(full_lithium_after(row.hours * hour) / volt, row.volts, 0.060)
            << row.hours << " h";
}

// The same bank: 3.1 Ah of the 397 that it once gave took the last 0.135 V away, to the meter's
// hundredth.
TEST(surface_charge, a_hundredth_drawn_takes_it_away) {
    EXPECT_LT(surface_left(0.135 * volt, 3.1 * ampere_hour, 397.0 * ampere_hour), 0.0125 * volt);
}

// Worked by hand: 13.50 V on 13.196 V over 24 mohm, 0.892 V of surface charge, 100 Ah.
TEST(surface_charge, full_onto_half_full) {
    const auto current = [](double surface, double seconds) {
        return joining_current(0.304 * volt, surface * volt, 0.024 * ohm, 100.0 * ampere_hour,
                               seconds * second) /
               ampere;
    };
    EXPECT_NEAR(current(0.0, 0.0), 12.67, 0.01);
    EXPECT_NEAR(current(0.892, 0.0), 49.8, 0.05);
    EXPECT_NEAR(current(0.892, 20.0), 30.9, 0.05);
    EXPECT_NEAR(current(0.892, 60.0), 20.1, 0.05);
    EXPECT_NEAR(current(0.892, 1e5), 12.67, 0.01);
}

TEST(surface_charge, a_full_pack_rests_where_makers_say) {
    const OpenCircuit& table = open_circuit_of(scenario::Chemistry::lifepo4);
    const StateOfCharge full(1.0);
    EXPECT_NEAR(table.voltage(full) / volt, 13.50, 1e-9);
    // at C/32 the cell of [Sunil 2025] stood at 3.5981 V when full
    EXPECT_NEAR(table.charging_voltage(full) / volt, 4.0 * 3.5981, 0.001);
    EXPECT_NEAR(table.charging_voltage(StateOfCharge(0.995)) / volt, 13.672, 0.001);
    EXPECT_EQ(table.charging_voltage(StateOfCharge(0.98)), table.voltage(StateOfCharge(0.98)));
}

}  // namespace
