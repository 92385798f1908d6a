// The keys of [[panel]] and [charge_controller]. Limits without a source are common practice:
// what no portable unit reaches, so that a slip of the pen is told.
#include "scenario/most.hpp"
#include "scenario/tables.hpp"

namespace scenario {
namespace {

QuantityForm<units::Angle> tilt() {
    return from_to(units::Angle(), 90.0 * units::degree, "45 deg");
}

QuantityForm<units::Angle> azimuth() {
    return from_to(units::Angle(), 360.0 * units::degree, "180 deg");
}

// The point of most power lies inside the two ends of the curve.
void check_panel(Reading& reading, const Spot& spot, const Panel& panel) {
    if (panel.peak_power_voltage && panel.open_circuit_voltage &&
        *panel.peak_power_voltage >= *panel.open_circuit_voltage) {
        reading.refuse(spot.at(*spot.node->find("peak_power_voltage"), "peak_power_voltage"),
                       fmt::format("found {}, which is not below the open-circuit voltage, {}",
                                   units::print(*panel.peak_power_voltage),
                                   units::print(*panel.open_circuit_voltage)),
                       "give both as the panel's label has them");
    }
    if (panel.peak_power_current && panel.short_circuit_current &&
        *panel.peak_power_current >= *panel.short_circuit_current) {
        reading.refuse(spot.at(*spot.node->find("peak_power_current"), "peak_power_current"),
                       fmt::format("found {}, which is not below the short-circuit current, {}",
                                   units::print(*panel.peak_power_current),
                                   units::print(*panel.short_circuit_current)),
                       "give both as the panel's label has them");
    }
    for (std::size_t i = 1; i < panel.aims.size(); ++i) {
        if (panel.aims[i].at <= panel.aims[i - 1].at) {
            reading.refuse(spot.at(*spot.node->find("aims"), "aims"),
                           "found times of day that do not rise",
                           "give the aims in the order of the day");
            return;
        }
    }
}

}  // namespace

template <>
const Description<Aim>& describe<Aim>() {
    static const Description<Aim> description = {
        .silent = "",
        .keys = keys_of(
            key<&Aim::at>({.name = "at", .demand = Demand::required}, TimeOfDayForm()),
            key<&Aim::tilt>({.name = "tilt", .demand = Demand::required}, tilt()),
            key<&Aim::azimuth>({.name = "azimuth", .demand = Demand::required}, azimuth()))};
    return description;
}

template <>
const Description<ShadedHours>& describe<ShadedHours>() {
    static const Description<ShadedHours> description = {
        .silent = "",
        .keys = keys_of(
            key<&ShadedHours::hours>({.name = "hours", .demand = Demand::required}, SpanForm()),
            key<&ShadedHours::shaded>({.name = "shaded", .demand = Demand::required},
                                      from_to(units::Share(), units::Share(1.0), "50 %")))};
    return description;
}

template <>
const Description<Panel>& describe<Panel>() {
    using units::celsius;
    static const Description<Panel> description = {
        .silent = "taken by the solar part, and told there",
        .keys = keys_of(
            key<&Panel::count>({.name = "count", .silent = "one"}, WholeForm{0, most_panels}),
            key<&Panel::power>({.name = "power", .demand = Demand::required},
                               from_to(0.1 * units::watt, 10'000.0 * units::watt, "100 W")),
            key<&Panel::placement>({.name = "placement", .silent = "flat"},
                                   one_of<Placement>({{"flat", Placement::flat},
                                                      {"fixed", Placement::fixed},
                                                      {"aimed", Placement::aimed}})),
            key<&Panel::tilt>({.name = "tilt"}, tilt()),
            key<&Panel::azimuth>({.name = "azimuth"}, azimuth()),
            key<&Panel::aims>({.name = "aims"}, list_of(TableForm<Aim>())),
            key<&Panel::out>({.name = "out", .silent = "outside at all hours"},
                             list_of(SpanForm())),
            key<&Panel::shade>({.name = "shade", .silent = "no shade"},
                               list_of(TableForm<ShadedHours>())),
            key<&Panel::covered_days>({.name = "covered_days", .silent = "none"},
                                      list_of(WholeForm{1, 60}, 60)),
            key<&Panel::brushed_off>({.name = "brushed_off", .silent = "snow lies until it goes"},
                                     TruthForm()),
            key<&Panel::open_circuit_voltage>(
                {.name = "open_circuit_voltage"},
                from_to(0.1 * units::volt, 1000.0 * units::volt, "22 V")),
            key<&Panel::short_circuit_current>(
                {.name = "short_circuit_current"},
                from_to(0.001 * units::ampere, 1000.0 * units::ampere, "6 A")),
            key<&Panel::peak_power_voltage>(
                {.name = "peak_power_voltage"},
                from_to(0.1 * units::volt, 1000.0 * units::volt, "18 V")),
            key<&Panel::peak_power_current>(
                {.name = "peak_power_current"},
                from_to(0.001 * units::ampere, 1000.0 * units::ampere, "5.6 A")),
            key<&Panel::nominal_cell_temperature>(
                {.name = "nominal_cell_temperature"},
                from_to(celsius(20.0), celsius(100.0), "45 degC")),
            key<&Panel::power_lost_per_kelvin>(
                {.name = "power_lost_per_kelvin"},
                from_to(units::Share(), units::Share(0.05), "0.4 %").followed_by("/K")),
            key<&Panel::derating>({.name = "derating"},
                                  from_to(units::Efficiency(0.01), units::Efficiency(1.0), "0.85")),
            key<&Panel::in_series>({.name = "in_series", .silent = "one"}, WholeForm{1, 64}),
            key<&Panel::weight>({.name = "weight"},
                                from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "6 kg")),
            key<&Panel::price>({.name = "price"},
                               from_to(units::Price(), units::Price(1e6), "90"))),
        .check = check_panel};
    return description;
}

template <>
const Description<ChargeController>& describe<ChargeController>() {
    static const Description<ChargeController> description = {
        .silent = "taken by the solar part, and told there",
        .keys = keys_of(
            key<&ChargeController::kind>({.name = "kind", .demand = Demand::required},
                                         one_of<ControllerKind>({{"mppt", ControllerKind::mppt},
                                                                 {"pwm", ControllerKind::pwm}})),
            key<&ChargeController::input_limit>(
                {.name = "input_limit", .silent = "no limit"},
                from_to(0.1 * units::watt, 100'000.0 * units::watt, "520 W")),
            key<&ChargeController::output_limit>(
                {.name = "output_limit", .silent = "no limit"},
                from_to(0.01 * units::ampere, 1000.0 * units::ampere, "40 A")),
            key<&ChargeController::voltage_limit>(
                {.name = "voltage_limit"},
                from_to(1.0 * units::volt, 1000.0 * units::volt, "100 V")),
            key<&ChargeController::efficiency>(
                {.name = "efficiency"},
                from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.97")))};
    return description;
}

}  // namespace scenario
