#include "unit/surroundings.hpp"

#include <algorithm>
#include <cmath>

#include "units/said.hpp"
#include "wiring/heat.hpp"

namespace unit {

namespace {

using scenario::Scenario;
using units::Temperature;
using words::said;

constexpr double open_rise = 10.0;  // K above the air with the lid open; common practice, no source
constexpr double warmest_reckoned = 60.0;  // degC; beyond it the case is refused as a whole

std::optional<units::Area> surface_of(const scenario::Case& enclosure) {
    if (enclosure.surface) return enclosure.surface;
    if (enclosure.length && enclosure.width && enclosure.height)
        return 2.0 * (*enclosure.length * *enclosure.width + *enclosure.length * *enclosure.height +
                      *enclosure.width * *enclosure.height);
    return std::nullopt;
}

// Heat that stays inside at the inverter's full output: its own loss and that of the main path.
units::Power heat_inside(const Unit& unit) {
    if (!unit.inverter || unit.packs.empty()) return {};
    const auto drawn = direct_power(*unit.inverter, unit.inverter->continuous);
    const auto feed = feed_of(unit, drawn, {});
    if (feed.sources.empty()) return {};
    const auto state = wiring::fed(feed);
    return drawn - unit.inverter->continuous + state.main * (state.bus - state.at_load);
}

// The paths with wires this warm.
void warm_paths(Unit& unit, const Scenario& scenario, Temperature inside) {
    const auto warm = [&](Path& path) {
        if (path.circuit && path.resistance.origin == Origin::circuit)
            path.resistance.value =
                resistance_of_way(scenario, *path.circuit, conductor_temperature(inside));
    };
    for (Packs& packs : unit.packs)
        warm(packs.lead);
    warm(unit.main);
}

// Losses warm the case, warmth raises the losses: a few turns settle to a thousandth of a kelvin.
Temperature settled_shut(Unit unit, const Scenario& scenario, Temperature air, units::Area surface,
                         wiring::HeatTransfer transfer) {
    Temperature inside = air;
    for (int turn = 0; turn < 20; ++turn) {
        warm_paths(unit, scenario, std::min(inside, units::celsius(150.0)));
        const Temperature next = air + wiring::rise_in_case(heat_inside(unit), surface, transfer);
        const bool settled = std::abs((next - inside) / units::kelvin) < 1e-3;
        inside = next;
        if (settled) break;
    }
    return inside;
}

}  // namespace

Temperature inside_to_begin_with(const Scenario& scenario) {
    const scenario::Case enclosure = scenario.enclosure.value_or(scenario::Case{});
    if (enclosure.inside) return *enclosure.inside;
    return enclosure.air.value_or(units::celsius(30.0)) + open_rise * units::kelvin;
}

Surroundings surroundings_of(const Scenario& scenario, const Unit& unit) {
    Surroundings around{.inside = inside_to_begin_with(scenario)};
    const scenario::Case enclosure = scenario.enclosure.value_or(scenario::Case{});
    if (enclosure.inside) return around;
    const Temperature air = enclosure.air.value_or(units::celsius(30.0));
    if (!enclosure.air)
        around.assumptions.push_back(
            {.where = "case.air",
             .text = said<"{temperature} around the unit, which ampacity tables are for">(air),
             .source = said<"[NEC] 310.16 heading">()});
    const auto surface = surface_of(enclosure);
    if (surface) {
        const auto transfer = wiring::heat_transfer_of(enclosure.material == "steel");
        around.shed = wiring::shed_within(20.0 * units::kelvin, *surface, transfer);
        around.shut = settled_shut(unit, scenario, air, *surface, transfer);
        if (!enclosure.material)
            around.assumptions.push_back({.where = "case.material",
                                          .text = said<"plastic, which sheds 3.5 W/(m2 K)">(),
                                          .source = said<"from memory; [Enclosure sheets] make it "
                                                         "4.6">()});
    }
    if (enclosure.lid == "closed" && around.shut) {
        around.inside = std::min(*around.shut, units::celsius(warmest_reckoned));
        if (*around.shut > around.inside)
            around.assumptions.push_back(
                {.where = "case",
                 .text = said<"parts are reckoned at {temperature} inside; shut at full power it "
                              "is hotter">(around.inside),
                 .source = said<"fitting method.md, \"Heat\"">()});
    } else {
        around.assumptions.push_back(
            {.where = "case.inside",
             .text = said<"{temperature} inside, {rise} above the air, with the lid open while the "
                          "inverter works">(around.inside, open_rise * units::kelvin),
             .source = said<"common practice, no source">()});
    }
    return around;
}

}  // namespace unit
