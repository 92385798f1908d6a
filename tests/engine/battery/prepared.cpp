#include "battery/prepared.hpp"

#include "battery/cell/chemistry.hpp"
#include "battery/substep.hpp"

namespace {

using namespace battery;
using namespace units;

TEST(prepared, silent_limits_never_bind) {
    const Prepared pack = prepare({.kinetics = {100.0 * ampere_hour, Share(0.5), 1.0 * per_hour},
                                   .open_circuit = &open_circuit_of(scenario::Chemistry::agm),
                                   .inner = 0.01 * ohm});
    EXPECT_TRUE(std::isinf(pack.absorption));
    EXPECT_TRUE(std::isinf(pack.charge_floor));
    EXPECT_EQ(pack.cut_off, 0.0);
    EXPECT_DOUBLE_EQ(pack.empty_voltage, 11.70);
}

TEST(prepared, the_efficiency_of_charging_is_told_by_the_charge_removed) {
    Arrangement arrangement{.kinetics = {100.0 * ampere_hour, Share(0.5), 1.0 * per_hour},
                            .open_circuit = &open_circuit_of(scenario::Chemistry::agm),
                            .charging = {.coulombic = Efficiency(0.9)}};
    const Prepared one = prepare(arrangement);
    for (const double removed : {-1.0, 0.0, 1e9})
        EXPECT_EQ(coulombic(one, state_of(one, removed, 0.0)), 0.9);
    arrangement.charging.coulombic =
        ChargeEfficiency(std::array{StateOfCharge(0.75), StateOfCharge(0.875)},
                         std::array{Efficiency(0.9), Efficiency(0.8), Efficiency(0.6)});
    const Prepared falls = prepare(arrangement);
    const auto at = [&](double ampere_hours) {
        return coulombic(falls, state_of(falls, 3600.0 * ampere_hours, 0.0));
    };
    EXPECT_EQ(at(100.0), 0.9);
    EXPECT_EQ(at(25.01), 0.9);
    EXPECT_EQ(at(25.0), 0.8);  // at an edge charging goes on with the next
    EXPECT_EQ(at(12.51), 0.8);
    EXPECT_EQ(at(12.5), 0.6);
    EXPECT_EQ(at(0.0), 0.6);
}

TEST(prepared, both_resistances_add_and_forbidden_charging_has_no_current) {
    Arrangement arrangement{.kinetics = {100.0 * ampere_hour, Share(0.5), 1.0 * per_hour},
                            .open_circuit = &open_circuit_of(scenario::Chemistry::agm),
                            .inner = 0.01 * ohm,
                            .path = 0.002 * ohm};
    arrangement.charging.allowed = false;
    arrangement.charging.largest = 20.0 * ampere;
    EXPECT_DOUBLE_EQ(prepare(arrangement).resistance, 0.012);
    EXPECT_EQ(prepare(arrangement).charge_floor, 0.0);
}

}  // namespace
