#include "wiring/conductor.hpp"

#include <algorithm>
#include <cmath>

#include "wiring/tables.hpp"

namespace wiring {

namespace {

using units::AmericanGauge;
using units::Area;
using units::Temperature;
using units::WireSize;

constexpr double copper_resistivity = 1.7241e-8;  // ohm m at 20 degC; [IEC 60028]
constexpr double copper_coefficient = 0.00393;    // per K at 20 degC; [IEC 60028]
constexpr double stranding = 1.0215;              // longer by its lay; method.md (4)
constexpr double square_metre_per_circular_mil = 5.0671e-10;

Temperature at_75() {
    return units::celsius(75.0);
}
Temperature at_20() {
    return units::celsius(20.0);
}

const GaugeRow* row_of(AmericanGauge gauge) {
    const auto row = std::ranges::find(gauge_rows(), gauge, &GaugeRow::size);
    return row == gauge_rows().end() ? nullptr : &*row;
}

ResistancePerLength of_gauge(AmericanGauge gauge, BuiltTo built_to, bool tinned, Temperature at) {
    const GaugeRow* row = row_of(gauge);
    if (row == nullptr) {
        return stranding * resistance_of_area(area_of(gauge), at);
    }
    // No coated figure is printed for 3, 1 and 3/0: the largest excess of the rows that have one.
    auto known = tinned ? row->coated.value_or(1.064 * row->stranded) : row->stranded;
    if (built_to == BuiltTo::sae) {
        // Where the make has no such size, its thinnest known share of the metal: 12 AWG, 0.893.
        const double metal =
            row->boat_circular_mils ? *row->boat_circular_mils / row->circular_mils : 0.893;
        known = known / metal;
    }
    return at_temperature(known, at_75(), at);
}

// The table's largest resistance; between its sizes that of the next thinner one, less by the
// metal there is more of.
ResistancePerLength of_area(Area area, bool tinned, Temperature at) {
    const MetricRow* chosen = nullptr;
    for (const MetricRow& row : metric_rows()) {
        if (row.size <= 1.000001 * area) {
            chosen = &row;
        }
    }
    if (chosen == nullptr) {
        // As the thinnest rows exceed their metal, and tin its copper.
        return (tinned ? 1.03 : 1.0) * 1.15 * resistance_of_area(area, at);
    }
    const auto known = tinned ? chosen->tinned : chosen->plain;
    return at_temperature(known * std::min(1.0, double(chosen->size / area)), at_20(), at);
}

}  // namespace

units::Length diameter_of(AmericanGauge gauge) {
    return 0.127e-3 * std::pow(92.0, (36.0 - gauge.number) / 39.0) * units::metre;
}

Area area_of(AmericanGauge gauge) {
    const auto diameter = diameter_of(gauge);
    return 0.25 * 3.14159265358979323846 * diameter * diameter;
}

Area area_of(const WireSize& size) {
    const auto* gauge = std::get_if<AmericanGauge>(&size);
    return gauge != nullptr ? area_of(*gauge) : std::get<Area>(size);
}

double copper_coefficient_at(Temperature reference) {
    return copper_coefficient /
           (1.0 + copper_coefficient * ((reference - at_20()) / units::kelvin));
}

ResistancePerLength at_temperature(ResistancePerLength known, Temperature at, Temperature wanted) {
    return known * (1.0 + copper_coefficient_at(at) * ((wanted - at) / units::kelvin));
}

ResistancePerLength resistance_of_area(Area area, Temperature at) {
    const auto cold =
        ResistancePerLength::from_value(copper_resistivity / (area / units::square_metre));
    return at_temperature(cold, at_20(), at);
}

ResistancePerLength resistance_of(const ConductorKind& kind, Temperature at) {
    const auto* gauge = std::get_if<AmericanGauge>(&kind.size);
    return gauge != nullptr ? of_gauge(*gauge, kind.built_to, kind.tinned, at)
                            : of_area(std::get<Area>(kind.size), kind.tinned, at);
}

Run run_of(const scenario::Wire& wire) {
    const auto one_way = wire.round_trip ? 0.5 * *wire.round_trip : wire.length;
    return {.supply = one_way, .back = wire.return_length.value_or(one_way)};
}

units::Resistance resistance_of(const scenario::Wire& wire, Temperature at) {
    const BuiltTo built_to = wire.built_to == "sae" ? BuiltTo::sae : BuiltTo::nec;
    const bool tinned = wire.tinned.value_or(false);
    const Run run = run_of(wire);
    const auto supply = resistance_of({wire.size, built_to, tinned}, at) * run.supply;
    const auto back =
        resistance_of({wire.return_size.value_or(wire.size), built_to, tinned}, at) * run.back;
    return (supply + back) / static_cast<double>(wire.runs.value_or(1));
}

bool thicker(const WireSize& a, const WireSize& b) {
    return area_of(a) > 1.000001 * area_of(b);
}

std::optional<WireSize> next_thicker(const WireSize& size) {
    if (const auto* gauge = std::get_if<AmericanGauge>(&size)) {
        for (const GaugeRow& row : gauge_rows()) {
            if (row.size.number < gauge->number) {
                return row.size;
            }
        }
        return std::nullopt;
    }
    for (const MetricRow& row : metric_rows()) {
        if (row.size > 1.000001 * std::get<Area>(size)) {
            return row.size;
        }
    }
    return std::nullopt;
}

}  // namespace wiring
