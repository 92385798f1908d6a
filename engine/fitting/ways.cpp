#include "fitting/ways.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <set>

#include "fitting/circuit.hpp"
#include "units/said.hpp"
#include "units/size_said.hpp"
#include "units/text.hpp"
#include "wiring/conductor.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using scenario::Scenario;
using units::Current;
using words::Said;
using words::said;
using Joint = words::List::Joint;

// Checks that a change of parts can mend.
constexpr std::array<std::string_view, 7> mendable{"C1", "C2", "C3", "C6", "C7", "C11", "C14"};

bool is_mendable(const Check& check) {
    return std::ranges::find(mendable, check.id) != mendable.end();
}

bool fails(const Fit& fit, const std::string& circuit) {
    return std::ranges::any_of(fit.checks, [&](const Check& check) {
        return check.circuit == circuit && check.verdict == Verdict::fails && is_mendable(check);
    });
}

// The worst verdict of each check of each circuit.
std::map<std::pair<std::string, std::string>, int> ranks_of(const Fit& fit) {
    std::map<std::pair<std::string, std::string>, int> ranks;
    for (const Check& check : fit.checks) {
        int& rank = ranks[{check.circuit, check.id}];
        rank = std::max(rank, rank_of(check.verdict));
    }
    return ranks;
}

// Checks of a circuit that fail and that no change tried here mends.
Said left_over(const Fit& fit, const std::string& circuit) {
    const std::set<std::string> ids = [&] {
        std::set<std::string> failing;
        for (const Check& check : fit.checks) {
            if (check.circuit == circuit && check.verdict == Verdict::fails) {
                failing.insert(check.id);
            }
        }
        return failing;
    }();
    if (ids.empty()) return {};
    return said<"{checks} is still to be mended">(
        words::joined({ids.begin(), ids.end()}, Joint::comma));
}

// Gives every fuse so many sizes more than the smallest of its window; false where one has none.
bool choose_fuses(Circuit& circuit, const CircuitState& asked, std::size_t larger) {
    for (const FuseState& fuse : asked.fuses) {
        if (fuse.window.empty()) {
            return false;
        }
        auto& part = std::get<scenario::Fuse>(circuit.links[fuse.link]);
        const auto* family = part.family ? wiring::find_fuse_family(*part.family) : nullptr;
        const auto& sizes = family == nullptr ? wiring::standard_sizes() : family->sizes;
        const auto smallest = std::ranges::find(sizes, *fuse.window.smallest);
        const auto room = static_cast<std::size_t>(sizes.end() - smallest);
        if (larger >= room ||
            smallest[static_cast<std::ptrdiff_t>(larger)] > *fuse.window.largest) {
            return false;
        }
        part.rating = smallest[static_cast<std::ptrdiff_t>(larger)];
    }
    return true;
}

struct Trial {
    const Scenario& scenario;
    const Draws& draws;
    const Fit& fit;
    std::size_t index;
    std::vector<WayOut> found = {};

    const CircuitState& state() const { return fit.circuits[index]; }
    const std::string& name() const { return scenario.circuits[index].name; }

    // Whether nothing that a change can mend fails any more in this circuit, its drop keeps its
    // limit, and no check of any circuit is worse than before.
    bool passes(const Fit& tried) const {
        if (fails(tried, name())) {
            return false;
        }
        const auto before = ranks_of(fit);
        for (const auto& [place, rank] : ranks_of(tried)) {
            const auto old = before.find(place);
            if (rank > (old == before.end() ? 0 : old->second)) {
                return false;
            }
        }
        return std::ranges::none_of(tried.checks, [this](const Check& check) {
            return check.circuit == name() && check.id == "C8" && check.about == about_drop() &&
                   rank_of(check.verdict) > 0;
        });
    }

    std::optional<Fit> passing(const Scenario& changed) const {
        auto tried =
            fitting::fit_if(changed, draws, [this](const Fit& then) { return passes(then); });
        return tried ? std::move(*tried) : std::nullopt;
    }

    // The fit after a change; fuses of the circuit are chosen anew where `choose` says so: the
    // smallest made that passes.
    std::optional<Fit> passing(Scenario changed, bool choose) const {
        if (!choose) {
            return passing(changed);
        }
        const auto asked = fitting::first_fit(changed, draws);
        if (!asked) {
            return std::nullopt;
        }
        constexpr std::size_t sizes_tried = 4;
        for (std::size_t larger = 0; larger < sizes_tried; ++larger) {
            if (!choose_fuses(changed.circuits[index], asked->circuits[index], larger)) {
                return std::nullopt;
            }
            if (auto tried = passing(changed)) {
                return tried;
            }
        }
        return std::nullopt;
    }

    Said result_of(const Fit& then) const {
        const CircuitState& circuit = then.circuits[index];
        std::vector<Said> fuses;
        for (const FuseState& fuse : circuit.fuses) {
            const Said& title = circuit.links[fuse.link].title;
            fuses.push_back(circuit.runs > 1.0 ? said<"{fuse} in each run">(title) : title);
        }
        const Said fits =
            fuses.empty()
                ? said<"then it passes">()
                : said<"then {fuses} fits">(words::joined(std::move(fuses), Joint::comma));
        const Said weakest =
            circuit.weakest ? said<"the weakest part, the {part}, carries {current} of {most}">(
                                  circuit.links[*circuit.weakest].title, amperes(circuit.carries()),
                                  amperes(*circuit.links[*circuit.weakest].derated))
                            : Said();
        const bool one = circuit.fuses.size() == 1 && circuit.role == Role::branch;
        const Said held = one ? said<"at most {current} of it for hours">(amperes(
                                    0.8 * *circuit.links[circuit.fuses.front().link].derated))
                              : Said();
        return words::joined({fits, weakest, held, left_over(then, name())}, Joint::semicolon);
    }

    bool keep(Said change, const std::optional<Fit>& then) {
        if (then) {
            found.push_back(
                {.circuit = name(), .change = std::move(change), .result = result_of(*then)});
        }
        return then.has_value();
    }
};

bool is_wire(const scenario::Link& link) {
    return std::holds_alternative<scenario::Wire>(link);
}

// ---- Another fuse alone.

void try_fuses(Trial& trial) {
    Scenario changed = trial.scenario;
    std::vector<Said> others;
    for (const FuseState& fuse : trial.state().fuses) {
        auto& part = std::get<scenario::Fuse>(changed.circuits[trial.index].links[fuse.link]);
        if (fuse.window.empty()) {
            return;
        }
        const Current chosen = std::clamp(part.rating, *fuse.window.smallest, *fuse.window.largest);
        if (chosen != part.rating) {
            others.push_back(
                said<"a {fuse} fuse instead of {given}">(amperes(chosen), amperes(part.rating)));
            part.rating = chosen;
        }
    }
    if (!others.empty()) {
        trial.keep(words::joined(std::move(others), Joint::comma), trial.passing(changed, false));
    }
}

// ---- A stronger switch, connector or outlet.

void raise(scenario::Link& link, Current least) {
    std::visit(
        [least](auto& part) {
            using Part = std::decay_t<decltype(part)>;
            if constexpr (!std::is_same_v<Part, scenario::Wire> &&
                          !std::is_same_v<Part, scenario::Fuse>) {
                part.rating = least;
            }
            if constexpr (std::is_same_v<Part, scenario::Connector>) {
                part.part.reset();  // another one than this
            }
            if constexpr (std::is_same_v<Part, scenario::Switch>) {
                part.ac_rating.reset();
                part.rated_for = "both";
            }
        },
        link);
}

// Every such part that carries less than the smallest fuse, replaced; told in words.
Said raise_all(const CircuitState& state, Circuit& circuit) {
    Current least{};
    for (const FuseState& fuse : state.fuses) {
        least = std::max(least, state.runs * fuse.window.smallest.value_or(fuse.window.least));
    }
    std::vector<Said> stronger;
    for (std::size_t i = 0; i < state.links.size(); ++i) {
        const LinkState& link = state.links[i];
        const bool replaceable =
            link.kind == "switch" || link.kind == "connector" || link.kind == "outlet";
        if (!replaceable || (link.derated && *link.derated >= least)) {
            continue;
        }
        // A tenth more, for what warmth takes of a contact.
        const auto rating = std::ranges::find_if(
            wiring::standard_sizes(), [&](const Current& size) { return size >= 1.1 * least; });
        if (rating == wiring::standard_sizes().end()) {
            return {};
        }
        raise(circuit.links[i], *rating);
        stronger.push_back(said<"a {part} rated {current}">(kind_of(link), amperes(*rating)));
    }
    return words::joined(std::move(stronger), Joint::all);
}

// ---- Thicker wire, one size after another, in so many runs.

// No wire thinner than this, each in at least so many runs.
void lay(Circuit& circuit, const units::WireSize& size, int runs) {
    for (auto& link : circuit.links) {
        if (auto* wire = std::get_if<scenario::Wire>(&link)) {
            if (wiring::thicker(size, wire->size)) {
                wire->size = size;
                wire->return_size.reset();
            }
            wire->runs = std::max(runs, wire->runs.value_or(1));
        }
    }
}

// "two runs of 4 AWG wire in parallel, each with its own fuse and a switch rated 10 A"; empty where
// nothing is another than it was.
//   in_runs   more of them than there were
Said laid_in_words(const units::WireSize& size, const units::WireSize& given, int runs,
                   bool in_runs, const Said& stronger) {
    if (!in_runs && !wiring::thicker(size, given)) {
        return stronger;
    }
    const Said laid =
        in_runs ? said<"{n} runs of {size} wire in parallel, each with its own fuse">(
                      words::in_words(runs), units::amount(size))
                : said<"{size} wire instead of {given}">(units::amount(size), units::amount(given));
    return words::joined({laid, stronger}, Joint::all);
}

void try_wires(Trial& trial, int runs, bool with_stronger_parts) {
    Scenario changed = trial.scenario;
    Circuit& circuit = changed.circuits[trial.index];
    const Said stronger = with_stronger_parts ? raise_all(trial.state(), circuit) : Said();
    const auto first = std::ranges::find_if(circuit.links, is_wire);
    if (first == circuit.links.end()) {
        return;
    }
    const units::WireSize given = std::get<scenario::Wire>(*first).size;
    const bool in_runs = runs > std::get<scenario::Wire>(*first).runs.value_or(1);
    constexpr int sizes_tried = 16;
    std::optional<units::WireSize> size = given;
    for (int step = 0; step < sizes_tried && size; ++step) {
        lay(circuit, *size, runs);
        // Thinner ones are not laid in parallel; [NEC] 310.10(G).
        const bool laid_so = runs < 2 || !wiring::thicker(units::AmericanGauge{0}, *size);
        const Said laid = laid_in_words(*size, given, runs, in_runs, stronger);
        if (laid_so && !laid.empty() && trial.keep(laid, trial.passing(changed, true))) {
            return;
        }
        size = wiring::next_thicker(*size);
    }
}

void try_stronger_part(Trial& trial) {
    const CircuitState& state = trial.state();
    for (std::size_t i = 0; i < state.links.size(); ++i) {
        const LinkState& link = state.links[i];
        const bool replaceable =
            link.kind == "switch" || link.kind == "connector" || link.kind == "outlet";
        if (!replaceable || (state.weakest && i != *state.weakest && link.derated)) {
            continue;
        }
        for (const Current& rating : wiring::standard_sizes()) {
            if (link.rating && rating <= *link.rating) {
                continue;
            }
            Scenario changed = trial.scenario;
            raise(changed.circuits[trial.index].links[i], rating);
            // With the fuse that is there, else with the one that then fits.
            auto then = trial.passing(changed, false);
            then = then ? std::move(then) : trial.passing(changed, true);
            const Said change = link.rating
                                    ? said<"a {part} rated {current} instead of {given}">(
                                          kind_of(link), amperes(rating), amperes(*link.rating))
                                    : said<"a {part} rated {current} for this kind of current">(
                                          kind_of(link), amperes(rating));
            if (trial.keep(change, then)) {
                return;
            }
        }
    }
}

// ---- Twice the voltage, and less power: the main path and what feeds it.

void try_twice_the_voltage(Trial& trial) {
    Scenario changed = trial.scenario;
    if (!changed.inverter || trial.fit.nominal > 20.0 * units::volt) {
        return;
    }
    for (scenario::Pack& pack : changed.packs) {
        pack.voltage = 2.0 * trial.fit.nominal;
        const auto twice = [](auto& value) {
            if (value) {
                value = 2.0 * *value;
            }
        };
        twice(pack.absorption_voltage);
        twice(pack.cutoff_voltage);
        twice(pack.resistance);
    }
    changed.inverter->cutoff_voltage = 2.0 * trial.fit.cutoff;
    changed.inverter->restart_voltage.reset();
    trial.keep(
        said<"{voltage} instead of {given}: half the current, but every 12 V load then needs a "
             "converter">(2.0 * trial.fit.nominal, trial.fit.nominal),
        trial.passing(changed, true));
}

void try_less_power(Trial& trial) {
    if (!trial.scenario.inverter) {
        return;
    }
    const auto whole = trial.scenario.inverter->continuous;
    const auto step = 100.0 * units::watt;
    for (auto power = std::floor((whole / step) * 0.999) * step; power >= step; power -= step) {
        Scenario changed = trial.scenario;
        // The inverter stays as it is, but no more is drawn from it.
        changed.inverter->continuous = power;
        changed.inverter->continuous_apparent.reset();
        changed.inverter->efficiency.clear();
        for (const scenario::EfficiencyPoint& point : trial.scenario.inverter->efficiency) {
            const units::Share at(point.at.value() * (whole / power));
            if (at.value() <= 1.0) {
                changed.inverter->efficiency.push_back({at, point.is});
            }
        }
        if (changed.inverter->surge && *changed.inverter->surge < power) {
            changed.inverter->surge = power;
        }
        const auto then = trial.passing(changed, true);
        if (then) {
            trial.keep(said<"no more than {power} drawn for hours, held by the inverter's own "
                            "limit or by a smaller inverter">(units::amount(power, 4)),
                       then);
            return;
        }
    }
}

void try_less_load(Trial& trial) {
    const CircuitState& state = trial.state();
    std::optional<Current> most;
    for (const FuseState& fuse : state.fuses) {
        if (fuse.window.largest) {
            most = most ? std::min(*most, *fuse.window.largest) : fuse.window.largest;
        }
    }
    const bool too_much = std::ranges::any_of(state.fuses, [](const FuseState& fuse) {
        return fuse.window.largest && fuse.window.least > *fuse.window.largest;
    });
    if (!most || !too_much) {
        return;
    }
    // Within the drop as well.
    Current held = 0.8 * *most;
    if (state.resistance > units::Resistance()) {
        held = std::min(held, state.drop_limit * state.nominal / state.resistance);
    }
    trial.found.push_back(
        {.circuit = state.name,
         .change = said<
             "a load of at most {current} ({power} at {voltage}) for hours, behind a {fuse} fuse">(
             amperes(held), held * state.design, state.design, amperes(*most)),
         .result =
             said<"125 % of {current} is {fuse}, and {percent} % of the drop's {limit} % are used">(
                 amperes(held), amperes(1.25 * held),
                 words::with_decimals(100.0 * (held * state.resistance / state.nominal), 1),
                 words::with_decimals(100.0 * state.drop_limit, 0))});
}

}  // namespace

std::vector<WayOut> ways_out(const Scenario& scenario, const Draws& draws, const Fit& fit) {
    std::vector<WayOut> ways;
    for (std::size_t i = 0; i < scenario.circuits.size(); ++i) {
        if (!fails(fit, scenario.circuits[i].name)) {
            continue;
        }
        Trial trial{scenario, draws, fit, i};
        const Role role = fit.circuits[i].role;
        try_fuses(trial);
        if (trial.found.empty()) {
            try_wires(trial, 1, false);
        }
        if (trial.found.empty()) {
            try_stronger_part(trial);
        }
        if (trial.found.empty()) {
            try_wires(trial, 1, true);
        }
        if (role == Role::main || role == Role::pack_lead) {
            if (trial.found.empty()) {
                try_wires(trial, 2, true);
                try_twice_the_voltage(trial);
                try_less_power(trial);
            }
        } else {
            try_less_load(trial);
        }
        ways.insert(ways.end(), trial.found.begin(), trial.found.end());
    }
    return ways;
}

}  // namespace fitting
