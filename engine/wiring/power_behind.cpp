#include "wiring/power_behind.hpp"

#include <algorithm>
#include <cmath>

namespace wiring {

using namespace units;

Current current_into(Power drawn, Resistance through, Voltage from) {
    const double v = from / volt;
    const double r = through / ohm;
    const double p = drawn / watt;
    if (!(v > 0.0)) return {};
    const double under_root = v * v - 4.0 * r * p;
    if (!(under_root >= 0.0)) return v / (2.0 * r) * ampere;
    // The stable form of (v - root) / (2 r).
    return 2.0 * p / (v + std::sqrt(under_root)) * ampere;
}

Voltage needed_before(Resistance through, Power drawn, Voltage least) {
    const double rp = (through / ohm) * (drawn / watt);
    if (!(rp > 0.0)) return least;
    // At a lower voltage than the root the power no longer comes at any.
    const double at_end = std::max<double>(least / volt, std::sqrt(rp));
    return (at_end + rp / at_end) * volt;
}

}  // namespace wiring
