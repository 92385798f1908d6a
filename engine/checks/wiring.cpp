#include "checks/wiring.hpp"

#include <algorithm>

#include "checks/wiring_circuit.hpp"
#include "checks/wiring_unit.hpp"
#include "checks/wiring_whole.hpp"

namespace checks {

namespace {

using scenario::Circuit;
using scenario::Scenario;
using units::Current;
using units::Power;

// Everything that one fit works on.
struct Fitting {
    const Scenario& scenario;
    const Draws& draws;
    const BuildUnit& unit;
    Fit& fit;
};

Around around_of(const Fitting& fitting, const Circuit& circuit) {
    Around around{.inside = fitting.unit.inside, .top = fitting.unit.top};
    if (fitting.unit.inverter) {
        around.output = fitting.unit.inverter->output_voltage;
        around.inverter_power = fitting.unit.inverter->continuous;
    }
    for (const PackKind& kind : fitting.unit.packs) {
        if (kind.lead == &circuit) {
            around.pack_fuse = kind.fuse;
        }
    }
    return around;
}

// Of this circuit and of all that hang on it.
CircuitDraw draw_with_followers(const Fitting& fitting, std::size_t index) {
    CircuitDraw sum = fitting.draws.circuits[index];
    const std::string& name = fitting.scenario.circuits[index].name;
    for (std::size_t i = 0; i < fitting.scenario.circuits.size(); ++i) {
        if (i != index && fitting.scenario.circuits[i].from == name) {
            const CircuitDraw after = draw_with_followers(fitting, i);
            sum.at_bus.continuous += after.at_bus.continuous;
            sum.at_bus.further += after.at_bus.further;
            sum.at_outlet.continuous += after.at_outlet.continuous;
            sum.at_outlet.further += after.at_outlet.further;
            sum.critical = sum.critical || after.critical;
            sum.starts_motors = sum.starts_motors || after.starts_motors;
        }
    }
    return sum;
}

// The lowest voltage the bus works at: the inverter's cut-off, or 10.5 V for each 12 V.
units::Voltage design_voltage(const BuildUnit& unit) {
    return unit.inverter ? unit.inverter->cutoff_voltage
                         : 0.875 * (unit.nominal / (12.8 * units::volt)) * 12.0 * units::volt;
}

Burden main_burden(const Fitting& fitting, Burden burden) {
    const BuildUnit& unit = fitting.unit;
    if (!unit.inverter) {
        return burden;
    }
    const auto drawn = direct_power(*unit.inverter, unit.inverter->continuous);
    burden.continuous = drawn / burden.design;
    burden.for_drop = fitting.fit.continuous->state.main;
    if (fitting.fit.surge) {
        const auto& surge = *fitting.fit.surge;
        const bool reaches =
            surge.state.how == wiring::Feeding::carries && surge.state.at_load >= burden.design;
        burden.surge = reaches ? surge.state.main : surge.feed.drawn / burden.design;
        burden.surge_lasts = fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
    }
    return burden;
}

Burden lead_burden(const Fitting& fitting, const Circuit& circuit, Burden burden) {
    const BuildUnit& unit = fitting.unit;
    for (std::size_t k = 0; k < unit.packs.size(); ++k) {
        if (unit.packs[k].lead != &circuit) {
            continue;
        }
        burden.alike = std::max(burden.alike, unit.packs[k].count);
        if (fitting.fit.continuous) {
            // At the low voltage at which fuses and wires are reckoned.
            const auto worst = worst_share(unit, fitting.fit.continuous->feed, k);
            const auto& state = fitting.fit.continuous->state;
            const double lower = std::max(
                1.0, state.bus > units::Voltage() ? double(state.bus / burden.design) : 1.0);
            burden.continuous = std::max(burden.continuous, lower * worst.current);
            burden.for_drop = std::max(burden.for_drop, worst.current);
        }
        if (fitting.fit.surge) {
            const auto worst = worst_share(unit, fitting.fit.surge->feed, k);
            burden.surge = std::max(burden.surge, worst.current);
            burden.surge_lasts =
                fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
        }
    }
    return burden;
}

Burden charging_burden(const Fitting& fitting, const Circuit& circuit, Burden burden) {
    Current most{};
    for (const scenario::Charger& charger : fitting.scenario.chargers) {
        if (std::ranges::find(circuit.feeds, charger.name) != circuit.feeds.end()) {
            most += charger.current;
        }
    }
    if (most <= Current()) {
        // The panels at the voltage of the bus, within what the controller takes.
        Power panels{};
        for (const scenario::Panel& panel : fitting.scenario.panels) {
            panels += static_cast<double>(panel.count) * panel.power;
        }
        const auto& controller = fitting.scenario.controller;
        if (controller && controller->input_limit) {
            panels = std::min(panels, *controller->input_limit);
        }
        most = panels / fitting.unit.nominal;
        if (controller && controller->output_limit) {
            most = std::min(most, *controller->output_limit);
        }
    }
    burden.continuous = most;
    burden.for_drop = most;
    return burden;
}

Burden burden_of(const Fitting& fitting, std::size_t index) {
    const Circuit& circuit = fitting.scenario.circuits[index];
    const CircuitDraw draw = draw_with_followers(fitting, index);
    Burden burden{.role = role_of(fitting.scenario, circuit),
                  .nominal = fitting.unit.nominal,
                  .design = design_voltage(fitting.unit),
                  .critical = draw.critical};
    switch (burden.role) {
        case Role::main:
            return main_burden(fitting, burden);
        case Role::pack_lead:
            return lead_burden(fitting, circuit, burden);
        case Role::charging:
            return charging_burden(fitting, circuit, burden);
        case Role::branch:
            burden.continuous = draw.at_bus.continuous / burden.design;
            burden.further = draw.at_bus.further / burden.design;
            burden.for_drop = (draw.at_bus.continuous + draw.at_bus.further) / burden.nominal;
            return burden;
        case Role::ac:
            break;
    }
    if (fitting.unit.inverter) {
        burden.nominal = fitting.unit.inverter->output_voltage;
        burden.design = burden.nominal;
    } else {
        burden.nominal = burden.design = 120.0 * units::volt;
    }
    burden.continuous = draw.at_outlet.continuous / burden.design;
    burden.further = draw.at_outlet.further / burden.design;
    burden.for_drop = burden.continuous + burden.further;
    if (draw.starts_motors && fitting.scenario.inverter && fitting.scenario.inverter->surge) {
        burden.surge = *fitting.scenario.inverter->surge / burden.design;
        burden.surge_lasts = fitting.scenario.inverter->surge_lasts.value_or(1.0 * units::second);
    }
    return burden;
}

void solve(const Fitting& fitting) {
    const BuildUnit& unit = fitting.unit;
    if (!unit.inverter) {
        return;
    }
    const auto direct = fitting.draws.direct;
    const Current branches = (direct.continuous + direct.further) / unit.nominal;
    const auto operating = [&](Power output) {
        Operating at{.feed = feed_of(unit, direct_power(*unit.inverter, output), branches)};
        at.state = wiring::fed(at.feed);
        return at;
    };
    fitting.fit.cutoff = unit.inverter->cutoff_voltage;
    fitting.fit.continuous = operating(unit.inverter->continuous);
    if (fitting.scenario.inverter->surge) {
        fitting.fit.surge = operating(*fitting.scenario.inverter->surge);
    }
}

void sort_by_number(std::vector<Check>& checks) {
    std::ranges::stable_sort(checks, {},
                             [](const Check& check) { return std::stoi(check.id.substr(1)); });
}

}  // namespace

units::Result<Fit> fit(const Scenario& scenario, const Draws& draws) {
    Fit result;
    const auto unit = build_unit(scenario, result.assumptions);
    if (!unit) {
        return units::fail(unit.error());
    }
    result.inside = unit->inside;
    result.shut = unit->shut;
    result.shed = unit->shed;
    result.nominal = unit->nominal;
    result.top = unit->top;
    result.packs = unit->count;
    const Fitting fitting{scenario, draws, *unit, result};
    solve(fitting);
    if (result.surge && !scenario.inverter->surge_lasts) {
        result.assumptions.push_back({.where = "inverter.surge_lasts",
                                      .text = "a surge lasts 1 s",
                                      .source = "common practice, no source"});
    }
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i) {
        const Circuit& circuit = scenario.circuits[i];
        const Around around = around_of(fitting, circuit);
        CircuitState state =
            circuit_state(circuit, burden_of(fitting, i), around, &result.assumptions);
        state.index = i;
        auto checks = circuit_checks(circuit, state, around);
        result.checks.insert(result.checks.end(), std::make_move_iterator(checks.begin()),
                             std::make_move_iterator(checks.end()));
        result.circuits.push_back(std::move(state));
    }
    check_guards_from_before(scenario, result);
    check_faults(scenario, *unit, result);
    check_inverter_voltage(scenario, result);
    check_packs(scenario, *unit, result);
    check_case(scenario, *unit, result);
    check_rest(scenario, draws, result);
    for (const scenario::Finding& differs : unit->differs) {
        result.checks.push_back({.id = "C1",
                                 .circuit = "",
                                 .about = differs.where + ", told twice",
                                 .verdict = Verdict::may_not,
                                 .text = "Told twice: " + differs.text + ".",
                                 .mend = differs.mend,
                                 .source = differs.source});
    }
    sort_by_number(result.checks);
    return result;
}

scenario::Severity severity_of(Verdict verdict) {
    switch (verdict) {
        case Verdict::fails:
            return scenario::Severity::stop;
        case Verdict::may_not:
        case Verdict::unknown:
            return scenario::Severity::caution;
        case Verdict::fits:
        case Verdict::asked:
        case Verdict::deferred:
            break;
    }
    return scenario::Severity::note;
}

std::string_view word_for(Verdict verdict) {
    switch (verdict) {
        case Verdict::fits:
            return "fits";
        case Verdict::may_not:
            return "doubtful";
        case Verdict::fails:
            return "fails";
        case Verdict::unknown:
            return "unknown";
        case Verdict::asked:
            return "ask";
        case Verdict::deferred:
            return "deferred";
    }
    return "unknown";
}

Verdict worst_of(const Fit& fit, std::string_view circuit) {
    const auto weight = [](Verdict verdict) {
        switch (verdict) {
            case Verdict::fails:
                return 3;
            case Verdict::may_not:
                return 2;
            case Verdict::unknown:
                return 1;
            default:
                return 0;
        }
    };
    Verdict worst = Verdict::fits;
    for (const Check& check : fit.checks) {
        if (check.circuit == circuit && weight(check.verdict) > weight(worst)) {
            worst = check.verdict;
        }
    }
    return worst;
}

}  // namespace checks
