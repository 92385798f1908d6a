// The checks that look at one circuit alone; method.md, "The checks".
#include <algorithm>

#include <fmt/format.h>

#include "fitting/circuit.hpp"
#include "units/text.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using units::Current;

constexpr const char* fuse_rule =
    "fitting method.md (1): a fuse no larger than the weakest part behind it";
constexpr const char* continuous_rule = "[NEC] 210.20(A), 215.3: 125 % of what runs for 3 h";
constexpr units::Length unfused_bare = 7.0 * 0.0254 * units::metre;       // [33 CFR 183.455]
constexpr units::Length unfused_sheathed = 40.0 * 0.0254 * units::metre;  // [33 CFR 183.455]

std::string volts(units::Voltage voltage) {
    return units::show(voltage, 4);
}

struct Checker {
    const Circuit& circuit;
    const CircuitState& state;
    const Around& around;
    std::vector<Check> checks = {};

    void add(std::string id, std::string about, Verdict verdict, std::string text, std::string mend,
             std::string source) {
        checks.push_back({.id = std::move(id),
                          .circuit = circuit.name,
                          .about = std::move(about),
                          .verdict = verdict,
                          .text = std::move(text),
                          .mend = std::move(mend),
                          .source = std::move(source)});
    }
    const LinkState& link(std::size_t i) const { return state.links[i]; }
    bool alternating() const { return state.role == Role::ac; }
    units::Voltage highest() const { return alternating() ? around.output : around.top; }
};

std::string each_run(const CircuitState& state) {
    return state.runs > 1.0 ? " in each run" : "";
}

// ---- C1: no fuse above the weakest part behind it; nothing without a fuse.

void check_fuse_against_links(Checker& checker, const FuseState& fuse) {
    const LinkState& own = checker.link(fuse.link);
    const auto& state = checker.state;
    for (const std::size_t i : protected_by(checker.circuit, checker.state.role, fuse.link)) {
        if (!checker.link(i).derated) {
            checker.add(
                "C1", checker.link(i).title, Verdict::fails,
                fmt::format("How much the {} carries here is not known: {}.", checker.link(i).title,
                            checker.link(i).why),
                "Give a part that is rated for this use, or its rating from the data sheet.",
                fuse_rule);
        }
    }
    if (!fuse.weakest || !fuse.window.most) {
        return;
    }
    const LinkState& weakest = checker.link(*fuse.weakest);
    const Current rating = *own.rating;
    const bool holds = rating <= (1.0 + 1e-12) * *fuse.window.most;
    const std::string limit = fmt::format("the {}{} carries {}{}", weakest.title, each_run(state),
                                          amperes(*fuse.window.most),
                                          weakest.why.empty() ? "" : " (" + weakest.why + ")");
    checker.add("C1", own.title, holds ? Verdict::fits : Verdict::fails,
                holds ? fmt::format("The {} stands guard: {}.", own.title, limit)
                      : fmt::format("The {} is larger than what stands behind it: {}. It would let "
                                    "that part burn before it opens.",
                                    own.title, limit),
                holds || !fuse.window.largest
                    ? ""
                    : fmt::format("Fit a {} fuse, or a {} that carries {}.",
                                  amperes(*fuse.window.largest), weakest.kind, amperes(rating)),
                fuse_rule);
}

void check_unfused(Checker& checker) {
    const auto& links = checker.circuit.links;
    const bool lead = checker.state.role == Role::pack_lead;
    if (checker.alternating()) {
        return;  // C11 looks at the inverter's side
    }
    units::Length bare{};
    bool sheathed = true;
    const auto count = [&](std::size_t i) {
        if (const auto* wire = std::get_if<scenario::Wire>(&links[i])) {
            bare += wiring::run_of(*wire).supply;
            sheathed = sheathed && wire->sheathed.value_or(false);
        }
        return std::holds_alternative<scenario::Fuse>(links[i]);
    };
    bool found = false;
    if (lead) {
        for (std::size_t i = links.size(); i-- > 0 && !found;) {
            found = count(i);
        }
    } else {
        for (std::size_t i = 0; i < links.size() && !found; ++i) {
            found = count(i);
        }
    }
    found = found || (lead && checker.around.pack_fuse);
    const units::Length allowed = sheathed ? unfused_sheathed : unfused_bare;
    const std::string from = lead ? "the pack" : "the bus";
    // A circuit that begins at another one is guarded by that one's fuse; compared there.
    if (!found) {
        if (checker.circuit.from && checker.circuit.from != "bus") {
            return;
        }
        checker.add("C1", "", Verdict::fails,
                    fmt::format("No fuse stands between {} and this circuit.", from),
                    fmt::format("Fit a fuse at {}, before anything else.", from),
                    "[33 CFR 183.455]");
    } else if (bare > allowed && !(lead && checker.around.pack_fuse)) {
        checker.add(
            "C1", "", Verdict::fails,
            fmt::format("{} of wire lies between {} and its fuse; a short there meets none.",
                        units::show(bare, 2), from),
            fmt::format("Put the fuse within {} of {}.", units::show(allowed, 2), from),
            "[33 CFR 183.455] 7 in, or 40 in of sheathed wire");
    }
}

// A source at the far end, such as the battery of a vehicle, feeds a short on the wire just as the
// packs do: it needs a fuse at its own end.
void check_far_source(Checker& checker) {
    const std::string& source = checker.around.far_source;
    if (source.empty()) {
        return;
    }
    const auto& links = checker.circuit.links;
    units::Length bare{};
    bool sheathed = true;
    bool found = false;
    for (std::size_t i = links.size(); i-- > 0 && !found;) {
        if (const auto* wire = std::get_if<scenario::Wire>(&links[i])) {
            bare += wiring::run_of(*wire).supply;
            sheathed = sheathed && wire->sheathed.value_or(false);
        }
        found = std::holds_alternative<scenario::Fuse>(links[i]);
    }
    const units::Length allowed = sheathed ? unfused_sheathed : unfused_bare;
    const bool holds = found && bare <= allowed;
    checker.add(
        "C1", "far end", holds ? Verdict::fits : Verdict::fails,
        holds ? fmt::format("A fuse guards the wire at {} too.", source)
              : fmt::format("{} of wire lies between {} and the first fuse; a short there "
                            "is fed from that end and meets none.",
                            units::show(bare, 2), source),
        holds ? ""
              : fmt::format("Fit a second fuse within {} of {}.", units::show(allowed, 2), source),
        "[33 CFR 183.455] 7 in, or 40 in of sheathed wire");
}

// ---- C2: the fuse carries what is drawn.

void check_fuse_against_load(Checker& checker, const FuseState& fuse) {
    const LinkState& own = checker.link(fuse.link);
    const Current least = wiring::least_rating(fuse.asked);
    if (least <= Current()) {
        return;
    }
    const bool holds = *own.rating >= (1.0 - 1e-12) * least;
    const std::string drawn = fmt::format(
        "{}{}",
        fuse.asked.continuous > Current()
            ? fmt::format("{} for hours{}", amperes(fuse.asked.continuous),
                          checker.state.charging > Current() ? " while charging" : "")
            : "",
        fuse.asked.further > Current()
            ? fmt::format("{}{} for shorter", fuse.asked.continuous > Current() ? " and " : "",
                          amperes(fuse.asked.further))
            : "");
    checker.add("C2", own.title, holds ? Verdict::fits : Verdict::fails,
                fmt::format("{}{}, which asks for at least {}{}; the {} {}.", drawn,
                            each_run(checker.state), amperes(least),
                            fuse.asked.hot < 1.0 ? " in this heat" : "", own.title,
                            holds ? "carries it" : "would open or age"),
                holds || !fuse.window.smallest || fuse.window.empty()
                    ? ""
                    : fmt::format("Fit a {} fuse; the parts behind it allow up to {}.",
                                  amperes(*fuse.window.smallest),
                                  fuse.window.largest ? amperes(*fuse.window.largest) : "any"),
                continuous_rule);
}

// The window has no size in it: no fuse is right for this circuit as it is.
void check_window(Checker& checker, const FuseState& fuse) {
    const auto& window = fuse.window;
    if (!window.empty() || !window.most || window.least <= Current()) {
        return;
    }
    const std::string weakest =
        fuse.weakest ? checker.link(*fuse.weakest).title : std::string("weakest part");
    checker.add("C1", "window", Verdict::fails,
                fmt::format("No fuse fits{}: the load asks for at least {}{}, the {} allows {} at "
                            "most. No standard size lies between.",
                            each_run(checker.state),
                            window.smallest ? amperes(*window.smallest) : amperes(window.least),
                            window.surge_sets_least ? " (its surge does)" : "", weakest,
                            window.largest ? amperes(*window.largest) : amperes(*window.most)),
                "", "fitting method.md (1), (2)");
}

// ---- C3: a surge on the fuse.

void check_surge(Checker& checker, const FuseState& fuse) {
    const auto* part = std::get_if<scenario::Fuse>(&checker.circuit.links[fuse.link]);
    if (fuse.asked.surge <= Current() || part == nullptr) {
        return;
    }
    const auto* family = part->family ? wiring::find_fuse_family(*part->family) : nullptr;
    const auto envelope = wiring::envelope_of(*part, family);
    const auto answer =
        wiring::stands(envelope, part->rating, fuse.asked.surge, fuse.asked.surge_lasts);
    const LinkState& own = checker.link(fuse.link);
    const std::string surge =
        fmt::format("{} for {} is {:.0f} % of the {}", amperes(fuse.asked.surge),
                    units::show(fuse.asked.surge_lasts, 2),
                    100.0 * (fuse.asked.surge / part->rating), own.title);
    const std::string source =
        family != nullptr ? family->source : "fitting method.md, opening times unknown";
    // A breaker is closed again by hand; a fuse leaves all dark until another is found.
    const Verdict opened = own.kind == "breaker" ? Verdict::may_not : Verdict::fails;
    switch (answer) {
        case wiring::Surge::holds:
            checker.add("C3", own.title, Verdict::fits, surge + ", which it holds.", "", source);
            break;
        case wiring::Surge::may_open:
            checker.add("C3", own.title, opened,
                        fmt::format("{}: it may open{}.", surge,
                                    envelope.empty() ? ", its opening times are not known" : ""),
                        "Ask the maker for its time-current curve, or give it as opens = [...].",
                        source);
            checker.checks.back().best = Verdict::fits;
            break;
        case wiring::Surge::opens:
            checker.add("C3", own.title, opened, surge + ": it opens.",
                        "Start such loads one by one, or fit a slower family where the parts "
                        "behind it allow.",
                        source);
            break;
    }
}

// ---- C5: rated voltages.

void check_voltage(Checker& checker, std::size_t i) {
    const units::Voltage highest = checker.highest();
    const auto tell = [&](std::optional<units::Voltage> rated, const std::string& source) {
        if (!rated) {
            // Below the lowest rating in common use nothing needs asking; common practice.
            if (!checker.alternating() && highest > 30.0 * units::volt) {
                checker.add("C5", checker.link(i).title, Verdict::unknown,
                            fmt::format("Its direct-voltage rating is not known; the bus reaches "
                                        "{} while charging.",
                                        volts(highest)),
                            "Read its data sheet and give voltage.", "fitting method.md");
            }
            return;
        }
        const bool holds = *rated >= highest;
        checker.add("C5", checker.link(i).title, holds ? Verdict::fits : Verdict::fails,
                    fmt::format("Rated {}; up to {} stands at it.", volts(*rated), volts(highest)),
                    holds ? "" : "Fit a part rated for that voltage.", source);
    };
    const scenario::Link& link = checker.circuit.links[i];
    if (const auto* fuse = std::get_if<scenario::Fuse>(&link)) {
        const auto* family = fuse->family ? wiring::find_fuse_family(*fuse->family) : nullptr;
        std::optional<units::Voltage> rated = fuse->voltage;
        if (!rated && family != nullptr && !family->breaks.empty() && !checker.alternating()) {
            rated = family->breaks.back().voltage;
        }
        tell(rated, family != nullptr ? family->source : "circuit.links");
    } else if (const auto* part = std::get_if<scenario::Switch>(&link)) {
        tell(part->voltage, "circuit.links");
    } else if (const auto* connector = std::get_if<scenario::Connector>(&link)) {
        const auto* row = connector->part ? wiring::find_connector(*connector->part) : nullptr;
        tell(connector->voltage ? connector->voltage
                                : (row != nullptr ? row->voltage : std::nullopt),
             row != nullptr ? row->source : "circuit.links");
    } else if (const auto* outlet = std::get_if<scenario::SocketOutlet>(&link)) {
        tell(outlet->voltage, "circuit.links");
    }
}

// ---- C6, C7: each part against what flows, fuse or no fuse.

void check_part(Checker& checker, std::size_t i) {
    const LinkState& part = checker.link(i);
    const Current carries = checker.state.carries();
    if (part.kind == "fuse" || part.kind == "breaker" || !part.derated || carries <= Current()) {
        return;
    }
    const bool holds = *part.derated >= (1.0 - 1e-12) * carries;
    const std::string id = part.kind == "wire" ? "C6" : "C7";
    const auto* wire = std::get_if<scenario::Wire>(&checker.circuit.links[i]);
    const auto thicker = wire != nullptr ? wiring::next_thicker(wire->size) : std::nullopt;
    checker.add(id, part.title, holds ? Verdict::fits : Verdict::fails,
                *part.derated <= Current()
                    ? fmt::format("The {} is not usable here: {}.", part.title, part.why)
                    : fmt::format("The {} may carry {} here{}; {} flows{}.", part.title,
                                  amperes(*part.derated),
                                  part.why.empty() ? "" : " (" + part.why + ")", amperes(carries),
                                  checker.state.charging > Current() ? " while charging" : ""),
                holds ? ""
                : wire == nullptr
                    ? fmt::format("Fit a {} rated for {} or more.", part.kind, amperes(carries))
                : thicker
                    ? fmt::format("Fit a thicker wire: {} is the next.", units::show(*thicker))
                    : "Lay two runs in parallel, each with its own fuse.",
                part.source);
}

// A part that says nothing of this kind of current.
void check_unrated(Checker& checker, std::size_t i) {
    const LinkState& part = checker.link(i);
    const bool fuse = part.kind == "fuse" || part.kind == "breaker";
    if (fuse || part.derated) {
        return;
    }
    checker.add(part.kind == "wire" ? "C6" : "C7", part.title, Verdict::fails,
                fmt::format("How much the {} carries here is not known: {}.", part.title, part.why),
                "Give a part that is rated for this use, or its rating from the data sheet.",
                fuse_rule);
}

// Wires in parallel share a current only as well as their ends do; thin ones are not made so.
void check_parallel(Checker& checker, std::size_t i) {
    const auto* wire = std::get_if<scenario::Wire>(&checker.circuit.links[i]);
    constexpr units::AmericanGauge thinnest_in_parallel{0};  // 1/0 AWG
    if (wire == nullptr || wire->runs.value_or(1) < 2) {
        return;
    }
    const bool holds = !wiring::thicker(thinnest_in_parallel, wire->size);
    checker.add("C6", checker.link(i).title + ", parallel",
                holds                   ? Verdict::fits
                : checker.alternating() ? Verdict::fails
                                        : Verdict::may_not,
                holds ? "Wires of this size may lie in parallel."
                      : fmt::format("{} wires in parallel: when one end loosens the others carry "
                                    "its part. Building wire is laid so from 1/0 AWG on only.",
                                    units::show(wire->size)),
                holds ? "" : "Lay one thicker wire, or feed two circuits.", "[NEC] 310.10(G)");
}

void check_connector_life(Checker& checker, std::size_t i) {
    const auto* part = std::get_if<scenario::Connector>(&checker.circuit.links[i]);
    if (part == nullptr) {
        return;
    }
    const auto* row = part->part ? wiring::find_connector(*part->part) : nullptr;
    if (row == nullptr) {
        return;
    }
    if (row->hot_plug && checker.state.carries() > *row->hot_plug) {
        checker.add("C7", checker.link(i).title + ", parted live", Verdict::may_not,
                    fmt::format("{} can flow here; parted under current it is made for {}, {} "
                                "times.",
                                amperes(checker.state.carries()), amperes(*row->hot_plug),
                                row->hot_cycles.value_or(0)),
                    "Switch the loads off before plugging or unplugging.", row->source);
    }
    if (part->cycles_used && row->cycles && *part->cycles_used >= *row->cycles) {
        checker.add("C7", checker.link(i).title + ", worn", Verdict::fails,
                    fmt::format("It has been mated {} times; it is made for {}.",
                                *part->cycles_used, *row->cycles),
                    "Replace both halves.", row->source);
    }
}

// ---- C8: drop.

void check_drop(Checker& checker) {
    const auto& state = checker.state;
    if (state.drop <= units::Voltage() || !state.worst_drop) {
        return;
    }
    const double share = state.drop / state.nominal;
    const bool holds = share <= state.drop_limit;
    const LinkState& worst = checker.link(*state.worst_drop);
    checker.add(
        "C8", "drop", holds ? Verdict::fits : Verdict::may_not,
        fmt::format("{} of {} is lost on the way ({:.1f} %, {}); the {} takes most of it, {}.",
                    volts(state.drop), volts(state.nominal), 100.0 * share, units::show(state.loss),
                    worst.title, volts(worst.drop)),
        holds
            ? ""
            : fmt::format("Shorten the way or fit thicker wire: {:.0f} % is the usual limit here.",
                          100.0 * state.drop_limit),
        "[ABYC E-11] as quoted: 3 % for feeders and critical loads, 10 % else; [NEC] 210.19");
}

// ---- C11: the inverter's side.

void check_outlets(Checker& checker) {
    if (!checker.alternating()) {
        return;
    }
    const auto& around = checker.around;
    std::optional<Current> breaker;
    std::optional<std::size_t> outlet;
    bool guarded = false;
    for (std::size_t i = 0; i < checker.circuit.links.size(); ++i) {
        if (const auto* fuse = std::get_if<scenario::Fuse>(&checker.circuit.links[i])) {
            breaker = breaker ? std::min(*breaker, fuse->rating) : fuse->rating;
        }
        if (const auto* socket = std::get_if<scenario::SocketOutlet>(&checker.circuit.links[i])) {
            outlet = i;
            guarded = guarded || socket->ground_fault.value_or(false);
        }
    }
    // What the parts are made for; that heat takes some of it is for C1 and C6 to say.
    Around cool = around;
    cool.inside = units::celsius(30.0);
    const CircuitState made_for =
        circuit_state(checker.circuit, {.role = Role::ac, .nominal = around.output}, cool);
    if (around.inverter_power && made_for.weakest) {
        const Current whole = *around.inverter_power / around.output;
        const LinkState& weakest = made_for.links[*made_for.weakest];
        const Current limit =
            breaker ? std::min(*breaker, *weakest.carries_at_most()) : *weakest.carries_at_most();
        const bool open_to_all = !breaker || *breaker > *weakest.carries_at_most();
        if (whole > limit) {
            checker.add(
                "C11", "inverter", open_to_all ? Verdict::fails : Verdict::may_not,
                fmt::format("The inverter can give {} ({}); this circuit passes {}: {}, {} for "
                            "hours.{}",
                            amperes(whole), units::show(*around.inverter_power, 4), amperes(limit),
                            units::show(limit * around.output, 4),
                            units::show(0.8 * limit * around.output, 4),
                            breaker ? "" : " No breaker keeps it within that."),
                open_to_all ? fmt::format("Fit a breaker of at most {}.",
                                          amperes(*weakest.carries_at_most()))
                            : "Spread the loads over several circuits, each with its own breaker.",
                "[NEC] 240.4(D), 210.20(A)");
        } else {
            checker.add("C11", "inverter", Verdict::fits,
                        fmt::format("The inverter gives at most {}; this circuit passes {}.",
                                    amperes(whole), amperes(limit)),
                        "", "[NEC] 240.4(D)");
        }
    }
    if (outlet && !guarded) {
        checker.add("C11", "ground fault", Verdict::unknown, "No ground-fault outlet is named.",
                    "Use one where it is damp or outdoors; it must be one the inverter's maker "
                    "names, for it needs the neutral bonded in exactly one place.",
                    "[NEC] 210.8; [Inverter manuals] grounding pages");
    }
    if (outlet && guarded && (!checker.circuit.neutral || *checker.circuit.neutral == "unknown")) {
        checker.add(
            "C11", "neutral", Verdict::may_not,
            "Whether the inverter bonds its neutral is not told; without one bond a "
            "ground-fault outlet does not open on a first fault, and its test button does "
            "not prove otherwise.",
            "Read the inverter's grounding page and give neutral. Never add a bond by hand: "
            "on a split output it destroys the inverter.",
            "[UL 943]; [Inverter manuals] grounding pages");
        checker.checks.back().best = Verdict::fits;
    }
    if (checker.circuit.neutral == "split" && guarded) {
        checker.add("C11", "neutral", Verdict::may_not,
                    "Both legs of the output are live against the case: a ground-fault outlet does "
                    "not find its one bonded neutral, so whether it opens on a first fault is for "
                    "the inverter's maker to say.",
                    "Use only an outlet that the inverter's maker names for a split output. Never "
                    "add a bond: it shorts a leg and destroys the inverter.",
                    "[UL 943]; [Inverter manuals] grounding pages");
    }
    if (checker.circuit.neutral == "floating" && guarded) {
        checker.add("C11", "neutral", Verdict::may_not,
                    "The neutral floats: a ground-fault outlet does not open on a first fault.",
                    "Leave the bonding to the inverter's maker and to whoever is licensed for it.",
                    "[UL 943]");
    }
}

// ---- C14: does the wire go into its terminals?

std::optional<units::WireSize> takes(const scenario::Link& link) {
    if (const auto* part = std::get_if<scenario::Connector>(&link)) {
        const auto* row = part->part ? wiring::find_connector(*part->part) : nullptr;
        return part->takes ? part->takes : (row != nullptr ? row->takes : std::nullopt);
    }
    if (const auto* part = std::get_if<scenario::Switch>(&link)) {
        return part->takes;
    }
    if (const auto* part = std::get_if<scenario::SocketOutlet>(&link)) {
        return part->takes;
    }
    return std::nullopt;
}

void check_terminals(Checker& checker) {
    const auto& links = checker.circuit.links;
    for (std::size_t i = 0; i < links.size(); ++i) {
        const auto* wire = std::get_if<scenario::Wire>(&links[i]);
        for (const std::size_t other : {i - 1, i + 1}) {
            if (wire == nullptr || other >= links.size()) {
                continue;
            }
            const auto thickest = takes(links[other]);
            if (!thickest) {
                continue;
            }
            const bool holds = !wiring::thicker(wire->size, *thickest);
            checker.add("C14", checker.link(other).title, holds ? Verdict::fits : Verdict::fails,
                        fmt::format("The {} takes wire up to {}; {} comes to it.",
                                    checker.link(other).title, units::show(*thickest),
                                    units::show(wire->size)),
                        holds ? "" : "Fit a part that takes this wire; never cut strands off.",
                        "circuit.links.takes or wiring/connectors.toml");
        }
    }
}

}  // namespace

std::vector<Check> circuit_checks(const Circuit& circuit, const CircuitState& state,
                                  const Around& around) {
    Checker checker{circuit, state, around};
    for (const FuseState& fuse : state.fuses) {
        check_fuse_against_links(checker, fuse);
    }
    check_unfused(checker);
    check_far_source(checker);
    for (const FuseState& fuse : state.fuses) {
        check_fuse_against_load(checker, fuse);
        check_window(checker, fuse);
        check_surge(checker, fuse);
    }
    for (std::size_t i = 0; i < circuit.links.size(); ++i) {
        check_voltage(checker, i);
    }
    for (std::size_t i = 0; i < circuit.links.size(); ++i) {
        check_part(checker, i);
        check_unrated(checker, i);
        check_parallel(checker, i);
        check_connector_life(checker, i);
    }
    check_drop(checker);
    check_outlets(checker);
    check_terminals(checker);
    return std::move(checker.checks);
}

}  // namespace fitting
