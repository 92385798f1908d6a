#include "battery/prepared.hpp"

#include "battery/chemistry.hpp"

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
