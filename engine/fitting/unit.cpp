#include "fitting/unit.hpp"

#include <algorithm>
#include <cmath>

#include "battery/cell/chemistry.hpp"

namespace fitting {

namespace {

using scenario::Assumptions;
using scenario::Scenario;
using words::said;

// Packs are looked at half full, or as empty as the file says; common practice, no source.
constexpr units::StateOfCharge half_full = units::StateOfCharge(0.5);

PackKind kind_of(const Scenario& scenario, const unit::Packs& packs) {
    const scenario::Pack& pack = scenario.packs[packs.index];
    PackKind kind{
        .index = packs.index,
        .count = packs.count,
        .model = *packs.model,
        .emf = packs.rested_at_most(half_full),
        .full = packs.rested_full(),
        .bare = pack.resistance.value_or(std::min(usual_inside(pack), packs.model->inner)),
        .path = packs.lead.resistance.value,
        .flow = packs.path(),
        .fuse = pack.fuse,
        .gives = unit::limits_of(packs, unit::Flow::out_of_pack),
        .takes = unit::limits_of(packs, unit::Flow::into_pack)};
    if (packs.lead.circuit) kind.lead = &scenario.circuits[*packs.lead.circuit];
    return kind;
}

BuildUnit view_of(const Scenario& scenario, const unit::Unit& built) {
    BuildUnit view{.count = built.count(),
                   .inverter = built.inverter,
                   .nominal = built.nominal(),
                   .main_path = built.main.resistance.value,
                   .inside = built.surroundings.inside,
                   .shut = built.surroundings.shut,
                   .shed = built.surroundings.shed,
                   .differs = built.findings};
    for (const unit::Packs& packs : built.packs) {
        if (packs.count == 0) {
            continue;
        }
        view.packs.push_back(kind_of(scenario, packs));
        view.top = std::max({view.top, packs.rested_full(),
                             packs.model->charging.absorption.value_or(units::Voltage())});
    }
    return view;
}

void tell_assumptions(const unit::Unit& built, Assumptions& assumptions) {
    const auto append = [&assumptions](const Assumptions& more) {
        assumptions.insert(assumptions.end(), more.begin(), more.end());
    };
    append(unit::assumptions_of(built));
    assumptions.push_back(
        {.where = "pack.charge",
         .text = said<"packs half full where the file has them fuller, for currents "
                      "and drops; full ones for shorts">(),
         .source = said<"common practice, no source">()});
    append(built.of_inverter);
    append(built.surroundings.assumptions);
}

}  // namespace

units::Resistance usual_inside(const scenario::Pack& pack) {
    const auto& usual = battery::defaults_of(pack.chemistry);
    const double series =
        std::max(1.0, std::round(pack.voltage.value_or(usual.nominal) / usual.nominal));
    return series * (100.0 * units::ampere_hour / pack.capacity) *
           usual.resistance_of_100_ampere_hours.value;
}

units::Resistance resistance_of(const scenario::Circuit& circuit, units::Temperature inside) {
    return unit::resistance_of(circuit, conductor_temperature(inside));
}

wiring::Feed feed_of(const BuildUnit& unit, units::Power drawn, units::Current branches) {
    wiring::Feed feed{.sources = {}, .main = unit.main_path, .drawn = drawn, .branches = branches};
    for (const PackKind& kind : unit.packs) {
        for (int i = 0; i < kind.count; ++i) {
            feed.sources.push_back({.emf = kind.emf, .resistance = kind.flow});
        }
    }
    return feed;
}

units::Result<BuildUnit> build_unit(const Scenario& scenario, Assumptions& assumptions) {
    const auto built = unit::built(scenario, unit::usual_warmth(scenario));
    if (!built) {
        return units::fail(built.error());
    }
    if (!built->inverter_refused.empty()) {
        return units::fail(built->inverter_refused);
    }
    BuildUnit view = view_of(scenario, *built);
    if (view.packs.empty()) {
        return units::fail({.where = "pack.count",
                            .found = said<"there is no pack: every count is 0">(),
                            .remedy = said<"give at least one [[pack]] a count of 1">()});
    }
    tell_assumptions(*built, assumptions);
    return view;
}

}  // namespace fitting
