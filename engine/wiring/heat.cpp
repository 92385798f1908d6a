#include "wiring/heat.hpp"

namespace wiring {

namespace {

constexpr double air_density = 1.2;           // kg/m3 at 20 degC
constexpr double air_specific_heat = 1005.0;  // J/(kg K)

}  // namespace

HeatTransfer heat_transfer_of(bool steel) {
    return (steel ? 5.5 : 3.5) * watt_per_square_metre_kelvin;
}

units::Power loss_of(units::Power output, units::Efficiency efficiency) {
    return output * (1.0 / efficiency.value() - 1.0);
}

units::TemperatureDifference rise_in_case(units::Power loss, units::Area surface,
                                          HeatTransfer transfer) {
    return loss / (transfer * surface);
}

units::Power shed_within(units::TemperatureDifference rise, units::Area surface,
                         HeatTransfer transfer) {
    return transfer * surface * rise;
}

VolumeFlow air_for(units::Power loss, units::TemperatureDifference rise) {
    return VolumeFlow::from_value((loss / units::watt) /
                                  (air_density * air_specific_heat * (rise / units::kelvin)));
}

std::optional<HydrogenVent> hydrogen_vent(scenario::Chemistry chemistry, int cells,
                                          units::Charge capacity) {
    if (chemistry == scenario::Chemistry::lifepo4) {
        return std::nullopt;
    }
    // Boost charge, mA per Ah: vented 20, valve-regulated 8 [IEC 62485-2] as restated.
    const double gassing = chemistry == scenario::Chemistry::flooded ? 20.0 : 8.0;
    const auto air =
        0.05 * cells * gassing * (capacity / units::ampere_hour) * 1e-3 * cubic_metre_per_hour;
    return HydrogenVent{.air = air,
                        .opening = 28.0 * (air / cubic_metre_per_hour) * 1e-4 * units::square_metre,
                        .milliamperes_per_ah = gassing};
}

}  // namespace wiring
