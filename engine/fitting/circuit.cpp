#include "fitting/circuit.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "units/text.hpp"
#include "wiring/ampacity.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using units::Current;
using units::Resistance;

scenario::Circuit single(const scenario::Link& link) {
    Circuit circuit;
    circuit.links = {link};
    circuit.joints = Resistance();
    return circuit;
}

// Fills in one link; one overload a kind of part.
struct Describe {
    const Circuit& circuit;
    const Around& around;
    Role role;
    LinkState& state;
    scenario::Assumptions* assumptions;

    void assume(std::string text, std::string source) const {
        if (assumptions != nullptr) {
            assumptions->push_back({.where = "circuit." + circuit.name + " " + state.title,
                                    .text = std::move(text),
                                    .source = std::move(source)});
        }
    }

    void operator()(const scenario::Fuse& fuse) const {
        state.kind = fuse.family == "breaker" ? "breaker" : "fuse";
        state.title = fmt::format("{} {}", amperes(fuse.rating), state.kind);
        state.rating = fuse.rating;
        const double kept = kept_by(fuse, around.inside).hard;
        state.derated = kept * fuse.rating;
        state.why =
            kept < 1.0 ? fmt::format("{:.2f} for {}", kept, units::show(around.inside)) : "";
        state.source = "circuit.links";
        if (!fuse.family) {
            assume("no family: standard sizes, opening times and what it breaks are not known",
                   "fitting method.md");
        } else if (wiring::find_fuse_family(*fuse.family) == nullptr) {
            assume(fmt::format("'{}' is no family known here: opening times and what it breaks "
                               "are not known",
                               *fuse.family),
                   "wiring/fuses.toml");
        }
    }

    void operator()(const scenario::Switch& part) const {
        state.kind = "switch";
        state.title = fmt::format("{} switch", amperes(part.rating));
        state.source = "circuit.links";
        state.rating = part.rating;
        const bool alternating = role == Role::ac;
        if (alternating) {
            if (part.ac_rating) {
                state.rating = part.ac_rating;
            } else if (part.rated_for == "dc") {
                state.rating = std::nullopt;
                state.why = "rated for direct current only";
            }
        } else if (part.rated_for == "ac") {
            state.rating = std::nullopt;
            state.why = "rated for alternating current only, which says nothing of direct current";
        }
        state.derated = state.rating;
        if (!state.rating) state.stamped = part.rating;
    }

    void operator()(const scenario::Wire& wire) const {
        state.kind = "wire";
        const double runs = wire.runs.value_or(1);
        state.title = fmt::format("{}{} {}", runs > 1.0 ? fmt::format("{:.0f} x ", runs) : "",
                                  units::show(wire.size), wire.table == "cord" ? "cord" : "wire");
        const bool alternating = role == Role::ac;
        const auto usual = alternating ? units::celsius(90.0) : units::celsius(105.0);
        const wiring::Surroundings surroundings{
            .around = around.inside,
            .table = alternating ? wiring::AmpacityTable::building : wiring::AmpacityTable::boat,
            .insulation = usual};
        auto looked = wiring::ampacity_of(wire, surroundings);
        // What goes out comes back: a thinner return is worked just as hard.
        bool by_return = false;
        if (wire.return_size && wiring::thicker(wire.size, *wire.return_size)) {
            scenario::Wire back = wire;
            back.size = *wire.return_size;
            back.ampacity.reset();
            const auto returned = wiring::ampacity_of(back, surroundings);
            by_return = looked && (!returned || returned->allowed < looked->allowed);
            looked = by_return ? returned : looked;
        }
        if (!looked) {
            state.why = "the table has no such size or insulation";
            state.source = "wiring/ampacity.toml";
            return;
        }
        state.rating = runs * looked->tabulated;
        state.derated = looked->allowed;
        if (looked->largest_fuse && alternating) {
            state.derated = std::min(*state.derated, *looked->largest_fuse);
        }
        std::vector<std::string> why;
        if (by_return) {
            why.push_back(fmt::format("its return of {}", units::show(*wire.return_size)));
        }
        if (looked->ambient < 1.0) {
            why.push_back(fmt::format("{:.2f} for {} around it", looked->ambient,
                                      units::show(wire.surroundings.value_or(around.inside))));
        }
        if (looked->bundle < 1.0) {
            why.push_back(fmt::format("{:.2f} in its bundle", looked->bundle));
        }
        if (looked->largest_fuse && alternating && *looked->largest_fuse <= looked->allowed) {
            why.push_back(
                fmt::format("at most a {} fuse on this size", amperes(*looked->largest_fuse)));
        }
        if (looked->by_terminals) {
            why.push_back(fmt::format("terminals for {}", units::show(*wire.terminals)));
        }
        state.why = fmt::format("{}", fmt::join(why, ", "));
        const auto words = wiring::words_for(looked->reliability);
        state.source = looked->source + (words.empty() ? "" : "; " + std::string(words));
    }

    void operator()(const scenario::Connector& part) const {
        state.kind = "connector";
        const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
        state.title = fmt::format("{} connector", part.part ? *part.part : amperes(part.rating));
        if (part.part && row == nullptr) {
            assume("no connector of this name is known here: its stated rating is taken",
                   "wiring/connectors.toml");
        }
        const auto rating = wiring::rating_of(part, row);
        const auto hottest = part.hottest.value_or(
            row != nullptr && row->hottest ? *row->hottest : units::celsius(105.0));
        const double kept = wiring::contact_factor(hottest, around.inside);
        state.rating = rating.rating;
        state.derated = kept * rating.rating;
        state.why = fmt::format(
            "{} {}{}", amperes(rating.rating), rating.by,
            kept < 1.0 ? fmt::format(", {:.2f} for {}", kept, units::show(around.inside)) : "");
        state.source = rating.source;
    }

    void operator()(const scenario::SocketOutlet& part) const {
        state.kind = "outlet";
        state.title = fmt::format("{} outlet", amperes(part.rating));
        state.rating = part.rating;
        state.derated = part.rating;
        state.source = "circuit.links";
    }
};

std::optional<std::size_t> weakest_among(const CircuitState& state,
                                         const std::vector<std::size_t>& links) {
    std::optional<std::size_t> weakest;
    for (const std::size_t i : links) {
        const auto most = state.links[i].carries_at_most();
        if (most && (!weakest || *most < *state.links[*weakest].carries_at_most())) {
            weakest = i;
        }
    }
    return weakest;
}

void add_fuses(const Circuit& circuit, CircuitState& state) {
    for (std::size_t i = 0; i < circuit.links.size(); ++i) {
        const auto* fuse = std::get_if<scenario::Fuse>(&circuit.links[i]);
        if (fuse == nullptr) {
            continue;
        }
        FuseState guarded{.link = i};
        guarded.asked = {.continuous = state.continuous / state.runs,
                         .further = state.further / state.runs,
                         .surge = state.surge / state.runs,
                         .surge_lasts = state.surge_lasts,
                         .full_duty = fuse->full_duty.value_or(false),
                         .hot = *state.links[i].derated / fuse->rating};
        const auto guarded_links = protected_by(circuit, state.role, i);
        guarded.weakest = weakest_among(state, guarded_links);
        std::optional<Current> most;
        for (const std::size_t link : guarded_links) {
            if (const auto derated = state.links[link].carries_at_most()) {
                // A run's fuse guards its own run; parts all runs share see the sum of the fuses.
                const Current share = *derated / state.runs;
                most = most ? std::min(*most, share) : share;
            }
        }
        const auto* family = fuse->family ? wiring::find_fuse_family(*fuse->family) : nullptr;
        // A breaker that a surge trips is closed again by hand: no reason for a larger one.
        wiring::Asked lasting = guarded.asked;
        if (fuse->family == "breaker") lasting.surge = Current();
        guarded.window = wiring::fuse_window(lasting, most, family);
        state.fuses.push_back(std::move(guarded));
    }
}

}  // namespace

std::string amperes(Current current) {
    return units::show(current, 4);
}

std::string title_of(const scenario::Link& link) {
    const auto title = [](const auto& part) {
        using Part = std::decay_t<decltype(part)>;
        if constexpr (std::is_same_v<Part, scenario::Wire>) {
            return units::show(part.size) + " wire";
        } else if constexpr (std::is_same_v<Part, scenario::Fuse>) {
            return amperes(part.rating) + " fuse";
        } else if constexpr (std::is_same_v<Part, scenario::Switch>) {
            return amperes(part.rating) + " switch";
        } else if constexpr (std::is_same_v<Part, scenario::Connector>) {
            return amperes(part.rating) + " connector";
        } else {
            return amperes(part.rating) + " outlet";
        }
    };
    return std::visit(title, link);
}

bool is_at_pack(const Circuit& circuit, Role role, std::size_t fuse) {
    if (role != Role::pack_lead) {
        return false;
    }
    for (std::size_t i = fuse + 1; i < circuit.links.size(); ++i) {
        if (std::holds_alternative<scenario::Fuse>(circuit.links[i])) {
            return false;  // a later one stands nearer the pack
        }
    }
    // A single fuse with the lead's wire beyond it stands at the bus.
    return std::ranges::any_of(
        circuit.links.begin(), circuit.links.begin() + static_cast<std::ptrdiff_t>(fuse),
        [](const scenario::Link& link) { return std::holds_alternative<scenario::Wire>(link); });
}

std::vector<std::size_t> protected_by(const Circuit& circuit, Role role, std::size_t fuse) {
    std::vector<std::size_t> links;
    const auto is_fuse = [&circuit](std::size_t i) {
        return std::holds_alternative<scenario::Fuse>(circuit.links[i]);
    };
    if (is_at_pack(circuit, role, fuse)) {
        for (std::size_t i = fuse; i-- > 0 && !is_fuse(i);) {
            links.push_back(i);
        }
        for (std::size_t i = fuse + 1; i < circuit.links.size(); ++i) {
            links.push_back(i);
        }
        std::ranges::sort(links);
        return links;
    }
    for (std::size_t i = fuse + 1; i < circuit.links.size() && !is_fuse(i); ++i) {
        links.push_back(i);
    }
    return links;
}

CircuitState circuit_state(const Circuit& circuit, const Burden& burden, const Around& around,
                           scenario::Assumptions* assumptions) {
    CircuitState state{.name = circuit.name,
                       .role = burden.role,
                       .alike = burden.alike,
                       .runs = runs_of(circuit),
                       .nominal = burden.nominal,
                       .design = burden.design,
                       .continuous = burden.continuous,
                       .further = burden.further,
                       .surge = burden.surge,
                       .surge_lasts = burden.surge_lasts,
                       .charging = burden.charging,
                       .joints = joints_of(circuit)};
    std::vector<std::size_t> parts;
    for (std::size_t i = 0; i < circuit.links.size(); ++i) {
        const scenario::Link& link = circuit.links[i];
        LinkState part;
        std::visit(Describe{circuit, around, burden.role, part, assumptions}, link);
        part.resistance = resistance_of(single(link), around.inside);
        if (std::holds_alternative<scenario::Fuse>(link)) {
            part.resistance = part.resistance / state.runs;
        }
        if (burden.role == Role::pack_lead && std::holds_alternative<scenario::Fuse>(link)) {
            part.title += is_at_pack(circuit, burden.role, i) ? " at the pack" : " at the bus";
        }
        part.carries = state.carries();
        part.drop = burden.for_drop * part.resistance;
        part.loss = part.drop * burden.for_drop;
        if (part.kind != "fuse" && part.kind != "breaker") {
            parts.push_back(i);
        }
        state.links.push_back(std::move(part));
    }
    state.weakest = weakest_among(state, parts);
    for (std::size_t i = 0; i < state.links.size(); ++i) {
        if (!state.worst_drop || state.links[i].drop > state.links[*state.worst_drop].drop) {
            state.worst_drop = i;
        }
    }
    state.drop = burden.for_drop * state.joints;
    state.loss = burden.for_drop * burden.for_drop * state.joints;
    for (const LinkState& link : state.links) {
        state.drop += link.drop;
        state.loss += link.loss;
    }
    state.resistance = state.joints;
    for (const LinkState& link : state.links) {
        state.resistance += link.resistance;
    }
    // [ABYC E-11] as quoted: 3 % for main feeders and critical loads, 10 % for others; 3 % of
    // branches at the outlets as [NEC] 210.19 informs.
    const bool strict = burden.critical || burden.role == Role::main ||
                        burden.role == Role::pack_lead || burden.role == Role::ac ||
                        burden.role == Role::charging;
    state.drop_limit = circuit.drop_limit ? circuit.drop_limit->value() : (strict ? 0.03 : 0.10);
    add_fuses(circuit, state);
    return state;
}

}  // namespace fitting
