#include "battery/cell/gassing.hpp"

#include <algorithm>
#include <cmath>

#include "battery/cell/efficiency_pieces.hpp"

namespace battery {

using namespace units;

Current gassing_current(Charge rated, Voltage of_cell, Temperature temperature) {
    constexpr Frequency at_rest = 0.010 / (100.0 * hour);  // 10 mA of 100 Ah at 2.23 V and 25 degC
    constexpr double a_volt = 11.0;
    constexpr double a_degree = 0.06;
    return rated * at_rest *
           std::exp(a_volt * (of_cell / volt - 2.23) + a_degree * (in_celsius(temperature) - 25.0));
}

Efficiency sealed_efficiency(const Kinetics& kinetics, Charge rated, Efficiency far_from_full,
                             Current gassing, StateOfCharge charge) {
    // While charging has not come to that voltage next to nothing gasses.
    if (charge < efficiency_pieces::edges[0]) return far_from_full;
    const Current stored = efficiency_pieces::still_taken(kinetics, rated, charge);
    const Current at_terminals = stored / far_from_full.value() + gassing;
    if (!(at_terminals > Current{})) return far_from_full;
    return Efficiency(std::clamp<double>(stored / at_terminals, efficiency_pieces::least.value(),
                                         far_from_full.value()));
}

ChargeEfficiency sealed_efficiency(const Kinetics& kinetics, Charge rated, Efficiency far_from_full,
                                   Current gassing) {
    return efficiency_pieces::in_pieces(kinetics, rated, far_from_full, [&](StateOfCharge charge) {
        return sealed_efficiency(kinetics, rated, far_from_full, gassing, charge);
    });
}

}  // namespace battery
