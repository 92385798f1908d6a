#include "battery/cell/surface_charge.hpp"

#include <cassert>
#include <cmath>

namespace battery {

using namespace units;

namespace {

// [LiFePO4 bank]: its author's fit, five 100 Ah packs at 20 degC.
constexpr Voltage in_the_end = 13.304 * volt;
constexpr Voltage quick = 0.170 * volt;
constexpr Duration quick_time = 2.16 * hour;
constexpr Voltage slow = 0.611 * volt;
constexpr Duration slow_time = 75.0 * hour;

// Of the rated charge: 0.0026 to 0.0033 took it down to an e-th there.
constexpr double takes_an_eth = 0.003;

}  // namespace

Voltage full_lithium_after(Duration rested_for) {
    assert(rested_for >= Duration{});
    return in_the_end + quick * std::exp(-rested_for / quick_time) +
           slow * std::exp(-rested_for / slow_time);
}

Voltage surface_left(Voltage surface, Charge drawn, Charge rated) {
    assert(drawn >= Charge{} && rated > Charge{});
    return surface * std::exp(-drawn / (takes_an_eth * rated));
}

Current joining_current(Voltage rested, Voltage surface, Resistance path, Charge rated,
                        Duration after) {
    assert(rested > Voltage{} && path > Resistance{} && rated > Charge{});
    if (!(surface > Voltage{})) return rested / path;
    const double times = after * rested / (path * (takes_an_eth * rated));
    const Voltage left = rested / ((1.0 + rested / surface) * std::exp(times) - 1.0);
    return (rested + left) / path;
}

}  // namespace battery
