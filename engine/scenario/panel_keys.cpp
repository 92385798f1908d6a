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
            key<&Aim::at>({.name = "at",
                           .means = "time of day from which it holds",
                           .demand = Demand::required},
                          TimeOfDayForm()),
            key<&Aim::tilt>({.name = "tilt", .means = "from level", .demand = Demand::required},
                            tilt()),
            key<&Aim::azimuth>({.name = "azimuth",
                                .means = "direction it faces, from north over east",
                                .demand = Demand::required},
                               azimuth()))};
    return description;
}

template <>
const Description<ShadedHours>& describe<ShadedHours>() {
    static const Description<ShadedHours> description = {
        .silent = "",
        .keys =
            keys_of(key<&ShadedHours::hours>(
                        {.name = "hours", .means = "part of the day", .demand = Demand::required},
                        SpanForm()),
                    key<&ShadedHours::shaded>({.name = "shaded",
                                               .means = "share of the panels in shade then",
                                               .demand = Demand::required},
                                              from_to(units::Share(), units::Share(1.0), "50 %")))};
    return description;
}

template <>
const Description<Panel>& describe<Panel>() {
    using units::celsius;
    static const Description<Panel> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&Panel::count>({.name = "count",
                                .means = "how many there are of this kind",
                                .silent = "one",
                                .on_screen = {.label = on_screen("How many"), .silent = "1"}},
                               WholeForm{0, most_panels}),
            key<&Panel::power>({.name = "power",
                                .means = "rated power of one, by its label",
                                .demand = Demand::required,
                                .on_screen = {.label = on_screen("Power, each"), .units = {"W"}}},
                               from_to(0.1 * units::watt, 10'000.0 * units::watt, "100 W")),
            key<&Panel::placement>(
                {.name = "placement",
                 .means = "how they stand",
                 .silent = "flat",
                 .on_screen = {.label = on_screen("How they stand"), .silent = "flat"}},
                one_of<Placement>({{"flat", Placement::flat, on_screen("flat on the ground")},
                                   {"fixed", Placement::fixed, on_screen("propped up")},
                                   {"aimed", Placement::aimed, on_screen("turned by hand")}})),
            key<&Panel::tilt>({.name = "tilt",
                               .means = "from level",
                               .on_screen = {.label = on_screen("Tilt from level"),
                                             .units = {"deg"},
                                             .silent = on_screen("as assumed")}},
                              tilt()),
            key<&Panel::azimuth>({.name = "azimuth",
                                  .means = "direction they face, from north over east",
                                  .on_screen = {.label = on_screen("Faces, from north by east"),
                                                .units = {"deg"},
                                                .silent = on_screen("towards the sun at noon")}},
                                 azimuth()),
            key<&Panel::aims>(
                {.name = "aims",
                 .means = "how they are turned in the course of a day, where placement is aimed"},
                list_of(TableForm<Aim>())),
            key<&Panel::out>(
                {.name = "out",
                 .means = "parts of the day in which they stand outside",
                 .silent = "outside at all hours",
                 .on_screen = {.label = on_screen("Hours outside"), .silent = on_screen("always")}},
                list_of(SpanForm())),
            key<&Panel::shade>({.name = "shade",
                                .means = "parts of the day in which something shades them",
                                .silent = "no shade"},
                               list_of(TableForm<ShadedHours>())),
            key<&Panel::covered_days>(
                {.name = "covered_days",
                 .means = "days of the outage on which snow or a tarp covers them, 1 is the first",
                 .silent = "none"},
                list_of(WholeForm{1, most_days}, most_days)),
            key<&Panel::brushed_off>(
                {.name = "brushed_off",
                 .means = "whether somebody takes the snow off after each fall",
                 .silent = "snow lies until it goes"},
                TruthForm()),
            key<&Panel::open_circuit_voltage>(
                {.name = "open_circuit_voltage",
                 .means = "voltage with nothing joined, by the label",
                 .on_screen = {.label = on_screen("Open-circuit voltage"),
                               .units = {"V"},
                               .silent = on_screen("as usual")}},
                from_to(0.1 * units::volt, 1000.0 * units::volt, "22 V")),
            key<&Panel::short_circuit_current>(
                {.name = "short_circuit_current",
                 .means = "current when shorted, by the label",
                 .on_screen = {.label = on_screen("Short-circuit current"),
                               .units = {"A"},
                               .silent = on_screen("as usual")}},
                from_to(0.001 * units::ampere, 1000.0 * units::ampere, "6 A")),
            key<&Panel::peak_power_voltage>(
                {.name = "peak_power_voltage", .means = "voltage at its rated power, by the label"},
                from_to(0.1 * units::volt, 1000.0 * units::volt, "18 V")),
            key<&Panel::peak_power_current>(
                {.name = "peak_power_current", .means = "current at its rated power, by the label"},
                from_to(0.001 * units::ampere, 1000.0 * units::ampere, "5.6 A")),
            key<&Panel::nominal_cell_temperature>(
                {.name = "nominal_cell_temperature",
                 .means = "cell temperature in sunshine of 800 W/m2, by the sheet"},
                from_to(celsius(20.0), celsius(100.0), "45 degC")),
            key<&Panel::power_lost_per_kelvin>(
                {.name = "power_lost_per_kelvin",
                 .means = "power that it loses for each kelvin of warmth, by the sheet"},
                from_to(units::Share(), units::Share(0.05), "0.4 %").followed_by("/K")),
            key<&Panel::derating>(
                {.name = "derating", .means = "what dirt, wiring and tolerance leave of the power"},
                from_to(units::Efficiency(0.01), units::Efficiency(1.0), "0.85")),
            key<&Panel::in_series>(
                {.name = "in_series",
                 .means = "how many are joined one behind the other",
                 .silent = "one",
                 .on_screen = {.label = on_screen("Joined one behind the other"), .silent = "1"}},
                WholeForm{1, most_panels}),
            key<&Panel::weight>({.name = "weight",
                                 .means = "of one panel",
                                 .on_screen = {.label = on_screen("Weight, each"),
                                               .units = {"kg", "lb"},
                                               .silent = on_screen("not told")}},
                                from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "6 kg")),
            key<&Panel::price>(
                {.name = "price",
                 .means = "of one panel, in the same money as the packs",
                 .on_screen = {.label = on_screen("Price, each"), .silent = on_screen("not told")}},
                from_to(units::Price(), units::Price(1e6), "90"))),
        .check = check_panel};
    return description;
}

template <>
const Description<ChargeController>& describe<ChargeController>() {
    static const Description<ChargeController> description = {
        .silent = "assumed; the answers tell the figure they take",
        .keys = keys_of(
            key<&ChargeController::kind>(
                {.name = "kind",
                 .means = "whether it seeks the best voltage (mppt) or "
                          "switches the panels through (pwm)",
                 .demand = Demand::required,
                 .on_screen = {.label = on_screen("Kind")}},
                one_of<ControllerKind>(
                    {{"mppt", ControllerKind::mppt, on_screen("finds the best voltage (MPPT)")},
                     {"pwm", ControllerKind::pwm,
                      on_screen("switches the panels through (PWM)")}})),
            key<&ChargeController::input_limit>(
                {.name = "input_limit",
                 .means = "most it takes from the panels",
                 .silent = "no limit",
                 .on_screen = {.label = on_screen("Takes from the panels at most"),
                               .units = {"W"},
                               .silent = on_screen("no limit")}},
                from_to(0.1 * units::watt, 100'000.0 * units::watt, "520 W")),
            key<&ChargeController::output_limit>(
                {.name = "output_limit",
                 .means = "most it gives to the packs",
                 .silent = "no limit",
                 .on_screen = {.label = on_screen("Gives to the packs at most"),
                               .units = {"A"},
                               .silent = on_screen("no limit")}},
                from_to(0.01 * units::ampere, 1000.0 * units::ampere, "40 A")),
            key<&ChargeController::voltage_limit>(
                {.name = "voltage_limit",
                 .means = "highest open-circuit voltage it stands",
                 .on_screen = {.label = on_screen("Stands from the panels at most"),
                               .units = {"V"},
                               .silent = on_screen("as assumed")}},
                from_to(1.0 * units::volt, 1000.0 * units::volt, "100 V")),
            key<&ChargeController::efficiency>(
                {.name = "efficiency",
                 .means = "share of the power that it passes on",
                 .on_screen = {.label = on_screen("Efficiency"),
                               .units = {"%"},
                               .silent = on_screen("as assumed")}},
                from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.97")))};
    return description;
}

}  // namespace scenario
