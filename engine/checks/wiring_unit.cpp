#include "checks/wiring_unit.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "units/text.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"
#include "wiring/heat.hpp"

namespace checks {

namespace {

using scenario::Assumptions;
using scenario::Circuit;
using scenario::Scenario;
using units::Resistance;
using units::Temperature;

constexpr double milliohm = 1e-3;
constexpr Resistance of_a_lug = 0.05 * milliohm * units::ohm;  // common practice, no source
constexpr double lugs_a_wire = 4.0;                            // two ends, two conductors
constexpr double open_rise = 10.0;  // K above the air with the lid open; common practice, no source
// Packs are looked at half full, or as empty as the file says; common practice, no source.
constexpr units::StateOfCharge half_full = units::StateOfCharge(0.5);
constexpr double warmest_reckoned = 60.0;  // degC; beyond it the case is refused as a whole

Resistance of_part(const scenario::Fuse& fuse) {
    if (fuse.resistance) {
        return *fuse.resistance;
    }
    const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
    // Drop at the rating: blade 0.08 V, bolted 0.06 V; from memory, and the larger where unknown.
    const auto drop = family != nullptr && family->drop ? *family->drop : 0.08 * units::volt;
    return drop / fuse.rating;
}
Resistance of_part(const scenario::Switch& part) {
    // 300 A class 0.1 mohm, so 30 mV at its rating; common practice, no source.
    return part.resistance.value_or(0.03 * units::volt / part.rating);
}
Resistance of_part(const scenario::Connector& part) {
    const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
    // Two poles. 10 mV a contact at its rating where nothing is known; common practice, no source.
    const auto contact =
        row != nullptr && row->contact ? *row->contact : 0.01 * units::volt / part.rating;
    return 2.0 * part.resistance.value_or(contact);
}
Resistance of_part(const scenario::SocketOutlet& part) {
    return 2.0 * (0.01 * units::volt / part.rating);  // common practice, no source
}

Resistance link_resistance(const scenario::Link& link, Temperature inside) {
    if (const auto* wire = std::get_if<scenario::Wire>(&link)) {
        return wiring::resistance_of(*wire, conductor_temperature(inside));
    }
    return std::visit(
        [](const auto& part) {
            if constexpr (std::is_same_v<std::decay_t<decltype(part)>, scenario::Wire>) {
                return Resistance();
            } else {
                return of_part(part);
            }
        },
        link);
}

bool feeds(const Circuit& circuit, std::string_view name) {
    return std::ranges::find(circuit.feeds, name) != circuit.feeds.end();
}

// ---- Heat.

std::optional<units::Area> surface_of(const scenario::Case& enclosure) {
    if (enclosure.surface) {
        return enclosure.surface;
    }
    if (enclosure.length && enclosure.width && enclosure.height) {
        return 2.0 * (*enclosure.length * *enclosure.width + *enclosure.length * *enclosure.height +
                      *enclosure.width * *enclosure.height);
    }
    return std::nullopt;
}

// Heat that stays inside at the inverter's full output: its own loss and that of the main path.
units::Power heat_inside(const BuildUnit& unit) {
    if (!unit.inverter) {
        return {};
    }
    const auto drawn = direct_power(*unit.inverter, unit.inverter->continuous);
    const auto state = wiring::fed(feed_of(unit, drawn, {}));
    return drawn - unit.inverter->continuous + state.main * (state.bus - state.at_load);
}

void take_paths(BuildUnit& unit, const Scenario& scenario) {
    for (PackKind& kind : unit.packs) {
        if (kind.lead != nullptr) {
            kind.path = resistance_of(*kind.lead, unit.inside);
        }
    }
    const Circuit* main = circuit_feeding(scenario, "inverter");
    if (main != nullptr) {
        unit.main_path = resistance_of(*main, unit.inside);
    }
}

// Losses warm the case, warmth raises the losses: a few turns settle to a thousandth of a kelvin.
void settle_shut_case(BuildUnit& unit, const Scenario& scenario, Temperature air,
                      units::Area surface, wiring::HeatTransfer transfer) {
    unit.shed = wiring::shed_within(20.0 * units::kelvin, surface, transfer);
    Temperature inside = air;
    for (int turn = 0; turn < 20; ++turn) {
        unit.inside = std::min(inside, units::celsius(150.0));
        take_paths(unit, scenario);
        const Temperature next = air + wiring::rise_in_case(heat_inside(unit), surface, transfer);
        const bool settled = std::abs((next - inside) / units::kelvin) < 1e-3;
        inside = next;
        if (settled) {
            break;
        }
    }
    unit.shut = inside;
}

void take_warmth(BuildUnit& unit, const Scenario& scenario, Assumptions& assumptions) {
    const scenario::Case enclosure = scenario.enclosure.value_or(scenario::Case{});
    if (enclosure.inside) {
        unit.inside = *enclosure.inside;
        take_paths(unit, scenario);
        return;
    }
    const Temperature air = enclosure.air.value_or(units::celsius(30.0));
    if (!enclosure.air) {
        assumptions.push_back({.where = "case.air",
                               .text = "30 degC around the unit, which ampacity tables are for",
                               .source = "[NEC] 310.16 heading"});
    }
    const auto surface = surface_of(enclosure);
    const bool shut = enclosure.lid == "closed";
    if (surface) {
        settle_shut_case(unit, scenario, air, *surface,
                         wiring::heat_transfer_of(enclosure.material == "steel"));
        if (!enclosure.material) {
            assumptions.push_back({.where = "case.material",
                                   .text = "plastic, which sheds 3.5 W/(m2 K)",
                                   .source = "common enclosure tables, from memory"});
        }
    }
    if (shut && unit.shut) {
        unit.inside = std::min(*unit.shut, units::celsius(warmest_reckoned));
        if (*unit.shut > unit.inside) {
            assumptions.push_back(
                {.where = "case",
                 .text = "parts are reckoned at 60 degC inside; shut at full power it is hotter",
                 .source = "checks wiring_method.md, \"Heat\""});
        }
    } else {
        unit.inside = air + open_rise * units::kelvin;
        assumptions.push_back(
            {.where = "case.inside",
             .text = fmt::format("{} inside, 10 K above the air, with the lid open while the "
                                 "inverter works",
                                 units::show(unit.inside)),
             .source = "common practice, no source"});
    }
    take_paths(unit, scenario);
}

// ---- Packs and inverter.

void take_packs(BuildUnit& unit, const Scenario& scenario, Assumptions& assumptions,
                units::Errors& errors) {
    const Temperature temperature =
        scenario.outage.battery_temperature.value_or(units::celsius(20.0));
    for (std::size_t i = 0; i < scenario.packs.size(); ++i) {
        const scenario::Pack& pack = scenario.packs[i];
        Assumptions of_this;
        auto model = battery::pack_model(pack, fmt::format("pack[{}]", i), temperature, of_this);
        if (!model) {
            errors.insert(errors.end(), model.error().begin(), model.error().end());
            continue;
        }
        if (pack.count == 0) {
            continue;
        }
        if (unit.packs.empty()) {
            assumptions.insert(assumptions.end(), of_this.begin(), of_this.end());
        }
        PackKind kind{.index = i, .count = pack.count, .model = std::move(*model)};
        kind.emf =
            kind.model.open_circuit.voltage(std::min(pack.charge.value_or(half_full), half_full));
        kind.full = kind.model.open_circuit.voltage(units::StateOfCharge(1.0));
        kind.stated = pack.resistance;
        kind.lead = circuit_feeding(scenario, pack.name);
        kind.path = kind.model.lead;
        kind.fuse = pack.fuse;
        unit.count += pack.count;
        unit.top = std::max(
            {unit.top, kind.full, kind.model.charging.absorption.value_or(units::Voltage())});
        unit.packs.push_back(std::move(kind));
    }
    assumptions.push_back({.where = "pack.charge",
                           .text = "packs half full where the file has them fuller, for currents "
                                   "and drops; full ones for shorts",
                           .source = "common practice, no source"});
    if (unit.packs.empty() && errors.empty()) {
        errors.push_back({.where = "pack.count",
                          .found = "there is no pack: every count is 0",
                          .remedy = "give at least one [[pack]] a count of 1"});
    }
}

}  // namespace

units::Power direct_power(const inverter::Model& inverter, units::Power real) {
    return inverter::dc_power(inverter, real, units::ApparentPower(real));
}

Temperature conductor_temperature(Temperature inside) {
    return std::max(units::celsius(75.0), inside);  // as [NEC] ch. 9 table 8 is printed
}

Resistance joints_of(const Circuit& circuit) {
    if (circuit.joints) {
        return *circuit.joints;
    }
    const auto wires = std::ranges::count_if(circuit.links, [](const scenario::Link& link) {
        return std::holds_alternative<scenario::Wire>(link);
    });
    return static_cast<double>(wires) * lugs_a_wire * of_a_lug;
}

double runs_of(const Circuit& circuit) {
    double runs = 1.0;
    for (const scenario::Link& link : circuit.links) {
        if (const auto* wire = std::get_if<scenario::Wire>(&link)) {
            runs = std::max(runs, static_cast<double>(wire->runs.value_or(1)));
        }
    }
    return runs;
}

Resistance resistance_of(const Circuit& circuit, Temperature inside) {
    Resistance all = joints_of(circuit);
    for (const scenario::Link& link : circuit.links) {
        const double alike = std::holds_alternative<scenario::Fuse>(link) ? runs_of(circuit) : 1.0;
        all += link_resistance(link, inside) / alike;
    }
    return all;
}

const Circuit* circuit_feeding(const Scenario& scenario, std::string_view name) {
    const auto found = std::ranges::find_if(
        scenario.circuits, [name](const Circuit& circuit) { return feeds(circuit, name); });
    return found == scenario.circuits.end() ? nullptr : &*found;
}

Role role_of(const Scenario& scenario, const Circuit& circuit) {
    const auto any_named = [&circuit](const auto& tables, auto test) {
        return std::ranges::any_of(
            tables, [&](const auto& table) { return test(table) && feeds(circuit, table.name); });
    };
    const auto always = [](const auto&) { return true; };
    if (circuit.from == "inverter") {
        return Role::ac;
    }
    if (feeds(circuit, "inverter")) {
        return Role::main;
    }
    if (any_named(scenario.packs, always)) {
        return Role::pack_lead;
    }
    if (any_named(scenario.chargers, always) || feeds(circuit, "charge_controller") ||
        feeds(circuit, "charge controller") || feeds(circuit, "panels") ||
        feeds(circuit, "panel")) {
        return Role::charging;
    }
    if (circuit.from && circuit.from != "bus") {
        const auto before = std::ranges::find(scenario.circuits, *circuit.from, &Circuit::name);
        if (before != scenario.circuits.end() && before->from != circuit.name) {
            return role_of(scenario, *before) == Role::ac ? Role::ac : Role::branch;
        }
    }
    const auto by_wall = [](const auto& load) { return load.from == scenario::Outlet::ac; };
    const auto by_bus = [](const auto& load) { return load.from != scenario::Outlet::ac; };
    return any_named(scenario.loads, by_wall) && !any_named(scenario.loads, by_bus) ? Role::ac
                                                                                    : Role::branch;
}

wiring::Feed feed_of(const BuildUnit& unit, units::Power drawn, units::Current branches) {
    wiring::Feed feed{.sources = {}, .main = unit.main_path, .drawn = drawn, .branches = branches};
    for (const PackKind& kind : unit.packs) {
        for (int i = 0; i < kind.count; ++i) {
            feed.sources.push_back({.emf = kind.emf, .resistance = kind.model.inner + kind.path});
        }
    }
    return feed;
}

units::Result<BuildUnit> build_unit(const Scenario& scenario, Assumptions& assumptions) {
    BuildUnit unit;
    units::Errors errors;
    take_packs(unit, scenario, assumptions, errors);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    unit.nominal = unit.packs.front().model.nominal;
    if (scenario.inverter) {
        Assumptions of_inverter;
        auto model = inverter::model_of(*scenario.inverter, unit.nominal, of_inverter);
        if (!model) {
            return units::fail(std::move(model.error()));
        }
        const bool has_main = circuit_feeding(scenario, "inverter") != nullptr;
        for (auto& assumption : of_inverter) {
            // The links of the main circuit say what its cable is.
            if (!has_main || assumption.where != "inverter.cable_resistance") {
                assumptions.push_back(std::move(assumption));
            }
        }
        unit.main_path = model->cable_resistance;
        unit.inverter = std::move(*model);
    }
    take_warmth(unit, scenario, assumptions);
    return unit;
}

}  // namespace checks
