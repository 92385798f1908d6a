#include "battery/rest.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "battery/cell/chemistry.hpp"

namespace battery {

using namespace units;

namespace {

// [AGM charge]: 0.06 V above the level after 2 h at 56 % and after 5 h at 8 %.
constexpr Voltage comes_back_by = 0.06 * volt;
constexpr Duration comes_back_in = 10.0 * minute;

// Of a pack of so many cells.
Voltage risen(const OpenCircuit& rested, Duration rested_for) {
    assert(rested_for >= Duration{});
    const StateOfCharge full(1.0);
    const double series =
        rested.voltage(full) / open_circuit_of(scenario::Chemistry::agm).voltage(full);
    return series * -std::expm1(-rested_for / comes_back_in) * comes_back_by;
}

}  // namespace

bool comes_back(const OpenCircuit& drawn, const OpenCircuit& rested) {
    const StateOfCharge full(1.0);
    const StateOfCharge empty(0.0);
    return drawn.voltage(full) < rested.voltage(full) ||
           drawn.voltage(empty) < rested.voltage(empty);
}

Voltage voltage_after_rest(const OpenCircuit& drawn, const OpenCircuit& rested,
                           StateOfCharge available, Duration rested_for) {
    const Voltage level = drawn.voltage(available);
    const Voltage most = std::max(level, rested.voltage(available));
    return std::min<Voltage>(most, level + risen(rested, rested_for));
}

StateOfCharge fill_after_rest(const OpenCircuit& drawn, const OpenCircuit& rested, Voltage voltage,
                              Duration rested_for) {
    return std::max(rested.fill_at(voltage), drawn.fill_at(voltage - risen(rested, rested_for)));
}

}  // namespace battery
