#include "motor/supply_voltage.hpp"

#include <cmath>
#include <utility>
#include <variant>

#include "units/said.hpp"

namespace motor {

using units::Voltage;

namespace {

constexpr double tolerance = 0.10;
constexpr Voltage highest_of_adaptors = 60.0 * units::volt;

std::optional<Voltage> of_the_appliance(const scenario::Load& load) {
    const auto* plate = load.draw ? std::get_if<scenario::Nameplate>(&*load.draw) : nullptr;
    if (plate == nullptr || plate->voltage < highest_of_adaptors) return std::nullopt;
    return plate->voltage;
}

}  // namespace

bool runs_from(Voltage rated, Voltage supply) {
    constexpr double rounding = 1e-9;
    return std::abs(supply / rated - 1.0) <= tolerance + rounding;
}

std::optional<Voltage> plate_voltage(const scenario::Load& load) {
    if (load.motor && load.motor->voltage) return load.motor->voltage;
    return of_the_appliance(load);
}

units::Error voltage_refusal(std::string where, Refused what, Voltage rated, Voltage supply) {
    using words::said;
    const words::Amount own = units::amount_in(rated, "V", 0);
    const words::Amount given = units::amount_in(supply, "V", 0);
    if (what == Refused::motor) {
        return {
            .where = std::move(where),
            .found =
                said<"a {voltage} motor cannot be run from {supply}, however strong the inverter">(
                    own, given),
            .remedy = said<"use a motor for {supply}">(given)};
    }
    return {.where = std::move(where),
            .found = said<"a {voltage} appliance cannot be run from {supply}, however strong the "
                          "inverter">(own, given),
            .remedy = said<"use an appliance for {supply}">(given)};
}

std::optional<units::Error> refused_by_voltage(const scenario::Load& load, const std::string& where,
                                               Voltage supply) {
    if (load.from != scenario::Outlet::ac) return std::nullopt;
    const auto rated = plate_voltage(load);
    if (!rated || runs_from(*rated, supply)) return std::nullopt;
    return voltage_refusal(
        where + (load.motor && load.motor->voltage ? ".motor.voltage" : ".nameplate"),
        load.motor ? Refused::motor : Refused::appliance, *rated, supply);
}

}  // namespace motor
