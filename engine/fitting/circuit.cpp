#include "fitting/circuit.hpp"

#include <algorithm>

#include "units/said.hpp"
#include "units/size_said.hpp"
#include "units/text.hpp"
#include "wiring/ampacity.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using units::Current;
using units::Resistance;
using words::Said;
using words::said;

scenario::Circuit single(const scenario::Link& link) {
    Circuit circuit;
    circuit.links = {link};
    circuit.joints = Resistance();
    return circuit;
}

// What a wire carries there and back.
//   looked        nothing where the table has no such size or insulation
//   by_return     a thinner return is what limits it
//   largest_fuse  that the code allows on its size, at the inverter's side
struct Carried {
    std::optional<wiring::Ampacity> looked;
    bool by_return = false;
    std::optional<Current> largest_fuse = {};
};

Carried carried_by(const scenario::Wire& wire, const Around& around, bool alternating) {
    const wiring::Surroundings surroundings{
        .around = around.inside,
        .table = alternating ? wiring::AmpacityTable::building : wiring::AmpacityTable::boat,
        .insulation = alternating ? units::celsius(90.0) : units::celsius(105.0)};
    Carried carried{.looked = wiring::ampacity_of(wire, surroundings)};
    // What goes out comes back: a thinner return is worked just as hard.
    if (wire.return_size && wiring::thicker(wire.size, *wire.return_size)) {
        scenario::Wire back = wire;
        back.size = *wire.return_size;
        back.ampacity.reset();
        const auto returned = wiring::ampacity_of(back, surroundings);
        carried.by_return =
            carried.looked && (!returned || returned->allowed < carried.looked->allowed);
        if (carried.by_return) carried.looked = returned;
    }
    if (carried.looked && alternating) carried.largest_fuse = carried.looked->largest_fuse;
    return carried;
}

// "0.91 for 35 degC"; nothing where all of it is kept.
Said derated_for(double kept, units::Temperature inside) {
    return kept < 1.0 ? said<"{factor} for {temperature}">(words::with_decimals(kept, 2), inside)
                      : Said();
}

// Each thing that takes some of what the table gives.
std::vector<Said> why_less(const scenario::Wire& wire, const Carried& carried,
                           const Around& around) {
    const wiring::Ampacity& looked = *carried.looked;
    std::vector<Said> why;
    if (carried.by_return) {
        why.push_back(said<"its return of {size}">(units::amount(*wire.return_size)));
    }
    if (looked.ambient < 1.0) {
        why.push_back(said<"{factor} for {temperature} around it">(
            words::with_decimals(looked.ambient, 2), wire.surroundings.value_or(around.inside)));
    }
    if (looked.bundle < 1.0) {
        why.push_back(said<"{factor} in its bundle">(words::with_decimals(looked.bundle, 2)));
    }
    if (carried.largest_fuse && *carried.largest_fuse <= looked.allowed) {
        why.push_back(said<"at most a {fuse} fuse on this size">(amperes(*carried.largest_fuse)));
    }
    if (looked.by_terminals) {
        why.push_back(said<"terminals for {temperature}">(*wire.terminals));
    }
    return why;
}

// Fills in one link; one overload a kind of part.
struct Describe {
    const Circuit& circuit;
    const Around& around;
    Role role;
    LinkState& state;
    scenario::Assumptions* assumptions;

    void assume(Said text, Said source) const {
        if (assumptions != nullptr) {
            assumptions->push_back(
                {.where = "circuit." + circuit.name,
                 .text = std::move(text),
                 .source = std::move(source),
                 .named = said<"circuit {circuit}, {part}">(circuit.name, state.title)});
        }
    }

    void operator()(const scenario::Fuse& fuse) const {
        state.kind = fuse.family == "breaker" ? "breaker" : "fuse";
        state.title = state.kind == "breaker" ? said<"{current} breaker">(amperes(fuse.rating))
                                              : said<"{current} fuse">(amperes(fuse.rating));
        state.rating = fuse.rating;
        const double kept = kept_by(fuse, around.inside).hard;
        state.derated = kept * fuse.rating;
        state.why = derated_for(kept, around.inside);
        state.source = "circuit.links";
        if (!fuse.family) {
            assume(
                said<"no family: standard sizes, opening times and what it breaks are not known">(),
                said<"fitting method.md">());
        } else if (wiring::find_fuse_family(*fuse.family) == nullptr) {
            assume(said<"'{family}' is no family known here: opening times and what it breaks are "
                        "not known">(*fuse.family),
                   "wiring/fuses.toml");
        }
    }

    void operator()(const scenario::Switch& part) const {
        state.kind = "switch";
        state.title = said<"{current} switch">(amperes(part.rating));
        state.source = "circuit.links";
        state.rating = part.rating;
        const bool alternating = role == Role::ac;
        if (alternating) {
            if (part.ac_rating) {
                state.rating = part.ac_rating;
            } else if (part.rated_for == "dc") {
                state.rating = std::nullopt;
                state.why = said<"rated for direct current only">();
            }
        } else if (part.rated_for == "ac") {
            state.rating = std::nullopt;
            state.why =
                said<"rated for alternating current only, which says nothing of direct current">();
        }
        state.derated = state.rating;
        if (!state.rating) state.stamped = part.rating;
    }

    void operator()(const scenario::Wire& wire) const {
        state.kind = "wire";
        const double runs = wire.runs.value_or(1);
        const Said one = wire.table == "cord" ? said<"{size} cord">(units::amount(wire.size))
                                              : said<"{size} wire">(units::amount(wire.size));
        state.title = runs > 1.0 ? said<"{n} x {wire}">(words::with_decimals(runs, 0), one) : one;
        const auto carried = carried_by(wire, around, role == Role::ac);
        if (!carried.looked) {
            state.why = said<"the table has no such size or insulation">();
            state.source = "wiring/ampacity.toml";
            return;
        }
        const wiring::Ampacity& looked = *carried.looked;
        state.rating = runs * looked.tabulated;
        state.derated =
            carried.largest_fuse ? std::min(looked.allowed, *carried.largest_fuse) : looked.allowed;
        state.why = words::joined(why_less(wire, carried, around), words::List::Joint::comma);
        state.source = words::joined({looked.source, wiring::words_for(looked.reliability)},
                                     words::List::Joint::semicolon);
    }

    void operator()(const scenario::Connector& part) const {
        state.kind = "connector";
        const auto* row = part.part ? wiring::find_connector(*part.part) : nullptr;
        state.title = part.part ? said<"{name} connector">(*part.part)
                                : said<"{current} connector">(amperes(part.rating));
        if (part.part && row == nullptr) {
            assume(said<"no connector of this name is known here: its stated rating is taken">(),
                   "wiring/connectors.toml");
        }
        const auto rating = wiring::rating_of(part, row);
        const auto hottest = part.hottest.value_or(
            row != nullptr && row->hottest ? *row->hottest : units::celsius(105.0));
        const double kept = wiring::contact_factor(hottest, around.inside);
        state.rating = rating.rating;
        state.derated = kept * rating.rating;
        state.why = words::joined({said<"{current} {by}">(amperes(rating.rating), rating.by),
                                   derated_for(kept, around.inside)},
                                  words::List::Joint::comma);
        state.source = rating.source;
    }

    void operator()(const scenario::SocketOutlet& part) const {
        state.kind = "outlet";
        state.title = said<"{current} outlet">(amperes(part.rating));
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

//   of   the circuit, with what it carries and its runs
LinkState link_state(const Circuit& circuit, std::size_t i, const Burden& burden,
                     const Around& around, const CircuitState& of,
                     scenario::Assumptions* assumptions) {
    const scenario::Link& link = circuit.links[i];
    LinkState part;
    std::visit(Describe{circuit, around, burden.role, part, assumptions}, link);
    part.resistance = resistance_of(single(link), around.inside);
    if (std::holds_alternative<scenario::Fuse>(link)) {
        part.resistance = part.resistance / of.runs;
        if (burden.role == Role::pack_lead) {
            part.title = is_at_pack(circuit, burden.role, i)
                             ? said<"{fuse} at the pack">(part.title)
                             : said<"{fuse} at the bus">(part.title);
        }
    }
    part.carries = of.carries();
    part.drop = burden.for_drop * part.resistance;
    part.loss = part.drop * burden.for_drop;
    return part;
}

std::vector<std::size_t> all_but_fuses(const CircuitState& state) {
    std::vector<std::size_t> parts;
    for (std::size_t i = 0; i < state.links.size(); ++i) {
        if (state.links[i].kind != "fuse" && state.links[i].kind != "breaker") {
            parts.push_back(i);
        }
    }
    return parts;
}

std::optional<std::size_t> worst_drop_of(const CircuitState& state) {
    std::optional<std::size_t> worst;
    for (std::size_t i = 0; i < state.links.size(); ++i) {
        if (!worst || state.links[i].drop > state.links[*worst].drop) {
            worst = i;
        }
    }
    return worst;
}

// Drop, loss and resistance of the joints and all links.
void sum_up(CircuitState& state, Current for_drop) {
    state.drop = for_drop * state.joints;
    state.loss = for_drop * for_drop * state.joints;
    state.resistance = state.joints;
    for (const LinkState& link : state.links) {
        state.drop += link.drop;
        state.loss += link.loss;
        state.resistance += link.resistance;
    }
}

// [ABYC E-11] as quoted: 3 % for main feeders and critical loads, 10 % for others; 3 % of branches
// at the outlets as [NEC] 210.19 informs.
double drop_limit_of(const Circuit& circuit, const Burden& burden) {
    const bool strict = burden.critical || burden.role == Role::main ||
                        burden.role == Role::pack_lead || burden.role == Role::ac ||
                        burden.role == Role::charging;
    return circuit.drop_limit ? circuit.drop_limit->value() : (strict ? 0.03 : 0.10);
}

}  // namespace

words::Amount amperes(Current current) {
    return units::amount(current, 4);
}

Said kind_of(const LinkState& link) {
    if (link.kind == "fuse") return said<"fuse">();
    if (link.kind == "breaker") return said<"breaker">();
    if (link.kind == "switch") return said<"switch">();
    if (link.kind == "wire") return said<"wire">();
    if (link.kind == "connector") return said<"connector">();
    return said<"outlet">();
}

Said about_window() {
    return said<"window">();
}

Said about_drop() {
    return said<"drop">();
}

Said title_of(const scenario::Link& link) {
    const auto title = [](const auto& part) {
        using Part = std::decay_t<decltype(part)>;
        if constexpr (std::is_same_v<Part, scenario::Wire>) {
            return said<"{size} wire">(units::amount(part.size));
        } else if constexpr (std::is_same_v<Part, scenario::Fuse>) {
            return said<"{current} fuse">(amperes(part.rating));
        } else if constexpr (std::is_same_v<Part, scenario::Switch>) {
            return said<"{current} switch">(amperes(part.rating));
        } else if constexpr (std::is_same_v<Part, scenario::Connector>) {
            return said<"{current} connector">(amperes(part.rating));
        } else {
            return said<"{current} outlet">(amperes(part.rating));
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
    for (std::size_t i = 0; i < circuit.links.size(); ++i) {
        state.links.push_back(link_state(circuit, i, burden, around, state, assumptions));
    }
    state.weakest = weakest_among(state, all_but_fuses(state));
    state.worst_drop = worst_drop_of(state);
    sum_up(state, burden.for_drop);
    state.drop_limit = drop_limit_of(circuit, burden);
    add_fuses(circuit, state);
    return state;
}

}  // namespace fitting
