#include "units/size_said.hpp"

#include <cmath>
#include <numbers>

#include "units/said.hpp"

namespace units {

namespace {

// The bare metal of a solid wire of this gauge. [NBS 100], diameters of ASTM B258
Area metal_of(AmericanGauge gauge) {
    const Length across = 0.127e-3 * std::pow(92.0, (36.0 - gauge.number) / 39.0) * metre;
    return std::numbers::pi / 4.0 * across * across;
}

}  // namespace

words::Amount amount(const WireSize& size) {
    if (const auto* metal = std::get_if<Area>(&size)) return amount(*metal);
    words::Amount shown = amount(metal_of(std::get<AmericanGauge>(size)));
    shown.unit = "AWG";
    return shown;
}

}  // namespace units
