// The keys of [[panel]] and [charge_controller]. Limits without a source are common practice:
// what no portable unit reaches, so that a slip of the pen is told.
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"

namespace scenario {

using words::said;

namespace {

using units::celsius;

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
        reading.refuse(
            spot.at(*spot.node->find("peak_power_voltage"), "peak_power_voltage"),
            said<"found {peak}, which is not below the open-circuit voltage, {open}">(
                units::print(*panel.peak_power_voltage), units::print(*panel.open_circuit_voltage)),
            said<"give both as the panel's label has them">());
    }
    if (panel.peak_power_current && panel.short_circuit_current &&
        *panel.peak_power_current >= *panel.short_circuit_current) {
        reading.refuse(
            spot.at(*spot.node->find("peak_power_current"), "peak_power_current"),
            said<"found {peak}, which is not below the short-circuit current, {shorted}">(
                units::print(*panel.peak_power_current),
                units::print(*panel.short_circuit_current)),
            said<"give both as the panel's label has them">());
    }
    for (std::size_t i = 1; i < panel.aims.size(); ++i) {
        if (panel.aims[i].at <= panel.aims[i - 1].at) {
            reading.refuse(spot.at(*spot.node->find("aims"), "aims"),
                           said<"found times of day that do not rise">(),
                           said<"give the aims in the order of the day">());
            return;
        }
    }
}

}  // namespace

template <>
const Description<Aim>& describe<Aim>() {
    static const Description<Aim> description = {
        .silent = "",
        .keys =
            keys_of(key<&Aim::at>({.name = "at",
                                   .means = said<"time of day from which it holds">(),
                                   .demand = Demand::required},
                                  TimeOfDayForm()),
                    key<&Aim::tilt>(
                        {.name = "tilt", .means = said<"from level">(), .demand = Demand::required},
                        tilt()),
                    key<&Aim::azimuth>({.name = "azimuth",
                                        .means = said<"direction it faces, from north over east">(),
                                        .demand = Demand::required},
                                       azimuth()))};
    return description;
}

template <>
const Description<ShadedHours>& describe<ShadedHours>() {
    static const Description<ShadedHours> description = {
        .silent = "",
        .keys = keys_of(
            key<&ShadedHours::hours>(
                {.name = "hours", .means = said<"part of the day">(), .demand = Demand::required},
                SpanForm()),
            key<&ShadedHours::shaded>({.name = "shaded",
                                       .means = said<"share of the panels in shade then">(),
                                       .demand = Demand::required},
                                      from_to(units::Share(), units::Share(1.0), "50 %")))};
    return description;
}

namespace {

// How many there are, and of what power.
Keys<Panel> which_panels() {
    return keys_of(
        key<&Panel::count>({.name = "count",
                            .means = said<"how many there are of this kind">(),
                            .silent = said<"{n}">(words::in_words(1)),
                            .on_screen = {.label = said<"How many">(), .silent = "1"}},
                           WholeForm{0, most_panels}),
        key<&Panel::power>({.name = "power",
                            .means = said<"rated power of one, by its label">(),
                            .demand = Demand::required,
                            .on_screen = {.label = said<"Power, each">(), .units = {"W"}}},
                           from_to(0.1 * units::watt, 10'000.0 * units::watt, "100 W")));
}

// How they stand.
Keys<Panel> how_they_stand() {
    return keys_of(
        key<&Panel::placement>(
            {.name = "placement",
             .means = said<"how they stand">(),
             .silent = "flat",
             .on_screen = {.label = said<"How they stand">(), .silent = "flat"}},
            one_of<Placement>({{"flat", Placement::flat, said<"flat on the ground">()},
                               {"fixed", Placement::fixed, said<"propped up">()},
                               {"aimed", Placement::aimed, said<"turned by hand">()}})),
        key<&Panel::tilt>({.name = "tilt",
                           .means = said<"from level">(),
                           .on_screen = {.label = said<"Tilt from level">(),
                                         .units = {"deg"},
                                         .silent = said<"as assumed">()}},
                          tilt()),
        key<&Panel::azimuth>({.name = "azimuth",
                              .means = said<"direction they face, from north over east">(),
                              .on_screen = {.label = said<"Faces, from north by east">(),
                                            .units = {"deg"},
                                            .silent = said<"towards the sun at noon">()}},
                             azimuth()),
        key<&Panel::aims>(
            {.name = "aims",
             .means =
                 said<"how they are turned in the course of a day, where placement is aimed">()},
            list_of(TableForm<Aim>())));
}

// When they see the sun.
Keys<Panel> when_they_see_the_sun() {
    return keys_of(
        key<&Panel::out>(
            {.name = "out",
             .means = said<"parts of the day in which they are outside">(),
             .silent = said<"outside at all hours">(),
             .on_screen = {.label = said<"Hours outside">(), .silent = said<"always">()}},
            list_of(SpanForm())),
        key<&Panel::shade>({.name = "shade",
                            .means = said<"parts of the day in which something shades them">(),
                            .silent = said<"no shade">()},
                           list_of(TableForm<ShadedHours>())),
        key<&Panel::covered_days>(
            {.name = "covered_days",
             .means =
                 said<"days of the outage on which snow or a tarp covers them, 1 is the first">(),
             .silent = said<"none">()},
            list_of(WholeForm{1, most_days}, most_days)),
        key<&Panel::brushed_off>(
            {.name = "brushed_off",
             .means = said<"whether somebody takes the snow off after each fall">(),
             .silent = said<"snow lies until it goes">()},
            TruthForm()));
}

// What the label says of voltage and current.
Keys<Panel> electric_label() {
    return keys_of(key<&Panel::open_circuit_voltage>(
                       {.name = "open_circuit_voltage",
                        .means = said<"voltage with nothing joined, by the label">(),
                        .on_screen = {.label = said<"Open-circuit voltage">(),
                                      .units = {"V"},
                                      .silent = said<"as usual">()}},
                       from_to(0.1 * units::volt, 1000.0 * units::volt, "22 V")),
                   key<&Panel::short_circuit_current>(
                       {.name = "short_circuit_current",
                        .means = said<"current when shorted, by the label">(),
                        .on_screen = {.label = said<"Short-circuit current">(),
                                      .units = {"A"},
                                      .silent = said<"as usual">()}},
                       from_to(0.001 * units::ampere, 1000.0 * units::ampere, "6 A")),
                   key<&Panel::peak_power_voltage>(
                       {.name = "peak_power_voltage",
                        .means = said<"voltage at its rated power, by the label">()},
                       from_to(0.1 * units::volt, 1000.0 * units::volt, "18 V")),
                   key<&Panel::peak_power_current>(
                       {.name = "peak_power_current",
                        .means = said<"current at its rated power, by the label">()},
                       from_to(0.001 * units::ampere, 1000.0 * units::ampere, "5.6 A")));
}

// What warmth, dirt and wiring take.
Keys<Panel> losses() {
    return keys_of(
        key<&Panel::nominal_cell_temperature>(
            {.name = "nominal_cell_temperature",
             .means = said<"cell temperature in sunshine of 800 W/m2, by the sheet">()},
            from_to(celsius(20.0), celsius(100.0), "45 degC")),
        key<&Panel::power_lost_per_kelvin>(
            {.name = "power_lost_per_kelvin",
             .means = said<"power that it loses for each kelvin of warmth, by the sheet">()},
            from_to(units::Share(), units::Share(0.05), "0.4 %").followed_by("/K")),
        key<&Panel::derating>(
            {.name = "derating",
             .means = said<"what dirt, wiring and tolerance leave of the power">()},
            from_to(units::Efficiency(0.01), units::Efficiency(1.0), "0.85")));
}

// How they are joined, and what one more costs.
Keys<Panel> joining_and_burden() {
    return keys_of(
        key<&Panel::in_series>(
            {.name = "in_series",
             .means = said<"how many are joined one behind the other">(),
             .silent = said<"{n}">(words::in_words(1)),
             .on_screen = {.label = said<"Joined one behind the other">(), .silent = "1"}},
            WholeForm{1, most_panels}),
        key<&Panel::weight>({.name = "weight",
                             .means = said<"of one panel">(),
                             .on_screen = {.label = said<"Weight, each">(),
                                           .units = {"kg", "lb"},
                                           .silent = said<"not given">()}},
                            from_to(0.001 * units::kilogram, 1000.0 * units::kilogram, "6 kg")),
        key<&Panel::price>(
            {.name = "price",
             .means = said<"of one panel, in the same money as the packs">(),
             .on_screen = {.label = said<"Price, each">(), .silent = said<"not given">()}},
            from_to(units::Price(), units::Price(1e6), "90")));
}

}  // namespace

template <>
const Description<Panel>& describe<Panel>() {
    static const Description<Panel> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(which_panels(), how_they_stand(), when_they_see_the_sun(), electric_label(),
                       losses(), joining_and_burden()),
        .check = check_panel};
    return description;
}

namespace {

// What it does.
Keys<ChargeController> controller_kind() {
    return keys_of(key<&ChargeController::kind>(
        {.name = "kind",
         .means = said<
             "whether it seeks the best voltage (mppt) or switches the panels through (pwm)">(),
         .demand = Demand::required,
         .on_screen = {.label = said<"Kind">()}},
        one_of<ControllerKind>(
            {{"mppt", ControllerKind::mppt, said<"finds the best voltage (MPPT)">()},
             {"pwm", ControllerKind::pwm, said<"switches the panels through (PWM)">()}})));
}

// Most it takes and gives.
Keys<ChargeController> controller_limits() {
    return keys_of(key<&ChargeController::input_limit>(
                       {.name = "input_limit",
                        .means = said<"most it takes from the panels">(),
                        .silent = said<"no limit">(),
                        .on_screen = {.label = said<"Takes from the panels at most">(),
                                      .units = {"W"},
                                      .silent = said<"no limit">()}},
                       from_to(0.1 * units::watt, 100'000.0 * units::watt, "520 W")),
                   key<&ChargeController::output_limit>(
                       {.name = "output_limit",
                        .means = said<"most it gives to the packs">(),
                        .silent = said<"no limit">(),
                        .on_screen = {.label = said<"Gives to the packs at most">(),
                                      .units = {"A"},
                                      .silent = said<"no limit">()}},
                       from_to(0.01 * units::ampere, 1000.0 * units::ampere, "40 A")),
                   key<&ChargeController::voltage_limit>(
                       {.name = "voltage_limit",
                        .means = said<"highest open-circuit voltage it withstands">(),
                        .on_screen = {.label = said<"Withstands from the panels at most">(),
                                      .units = {"V"},
                                      .silent = said<"as assumed">()}},
                       from_to(1.0 * units::volt, 1000.0 * units::volt, "100 V")));
}

// What it passes on.
Keys<ChargeController> controller_losses() {
    return keys_of(key<&ChargeController::efficiency>(
        {.name = "efficiency",
         .means = said<"share of the power that it passes on">(),
         .on_screen = {.label = said<"Efficiency">(),
                       .units = {"%"},
                       .silent = said<"as assumed">()}},
        from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.97")));
}

}  // namespace

template <>
const Description<ChargeController>& describe<ChargeController>() {
    static const Description<ChargeController> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(controller_kind(), controller_limits(), controller_losses())};
    return description;
}

}  // namespace scenario
