#include "checks/wiring_whole.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "units/text.hpp"
#include "wiring/heat.hpp"

namespace checks {

namespace {

using scenario::Scenario;
using units::Current;

// Where the short-circuit current is not known or beyond 10 kA; [ABYC E-11] as quoted.
constexpr Current asked_of_the_unknown = 20'000.0 * units::ampere;

std::string kiloamperes(Current current) {
    return units::show(current, 3);
}

void add(Fit& fit, std::string id, std::string circuit, std::string about, Verdict verdict,
         std::string text, std::string mend, std::string source) {
    fit.checks.push_back({.id = std::move(id),
                          .circuit = std::move(circuit),
                          .about = std::move(about),
                          .verdict = verdict,
                          .text = std::move(text),
                          .mend = std::move(mend),
                          .source = std::move(source)});
}

// What all packs but `left_out` of the first kind push into a short; nothing where one of the
// resistances is not stated.
std::optional<Current> fault_of(const BuildUnit& unit, const PackKind* without) {
    Current sum{};
    for (const PackKind& kind : unit.packs) {
        const int packs = kind.count - (&kind == without ? 1 : 0);
        if (packs == 0) {
            continue;
        }
        if (!kind.stated) {
            return std::nullopt;
        }
        sum += wiring::prospective_current(kind.full, *kind.stated, packs);
    }
    return sum;
}

struct Breaking {
    std::optional<Current> breaks;
    std::string source;
};

Breaking breaking_of(const scenario::Fuse& fuse, units::Voltage top) {
    if (fuse.interrupts) {
        return {fuse.interrupts, "circuit.links.interrupts"};
    }
    const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
    if (family == nullptr) {
        return {std::nullopt, "checks wiring_method.md"};
    }
    return {wiring::breaks_at(*family, top), family->source};
}

void check_fault(Fit& fit, const std::string& circuit, const std::string& title,
                 const Breaking& breaking, std::optional<Current> prospective,
                 std::string_view from) {
    constexpr const char* mend =
        "Fit a fuse that breaks it: class T breaks 20 kA at 125 V. Or feed small branches through "
        "one.";
    if (!prospective && breaking.breaks && *breaking.breaks >= asked_of_the_unknown) {
        add(fit, "C4", circuit, title, Verdict::fits,
            fmt::format(
                "What a short draws from {} is not known; the fuse breaks {}, which is what "
                "is asked of a bank nobody has measured.",
                from, kiloamperes(*breaking.breaks)),
            "", "[ABYC E-11] as quoted; " + breaking.source);
        return;
    }
    if (!prospective) {
        add(fit, "C4", circuit, title, Verdict::unknown,
            fmt::format("What a short draws from {} is not known, for the packs' resistance is not "
                        "stated{}.",
                        from,
                        breaking.breaks
                            ? fmt::format("; this fuse breaks {}", kiloamperes(*breaking.breaks))
                            : ""),
            "Give pack.resistance of the bare cells, or fit a class T fuse.",
            "[ABYC E-11] as quoted; the protection of a pack is no limit");
        return;
    }
    if (!breaking.breaks) {
        add(fit, "C4", circuit, title, Verdict::unknown,
            fmt::format("A short draws {} from {} here; what this fuse breaks at {} is not known.",
                        kiloamperes(*prospective), from, units::show(fit.top)),
            mend, breaking.source);
        return;
    }
    const bool holds = *breaking.breaks >= *prospective;
    add(fit, "C4", circuit, title, holds ? Verdict::fits : Verdict::fails,
        fmt::format("A short draws {} from {} here; the fuse breaks {}.", kiloamperes(*prospective),
                    from, kiloamperes(*breaking.breaks)),
        holds ? "" : mend, breaking.source);
}

}  // namespace

void check_faults(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    fit.prospective = fault_of(unit, nullptr);
    for (CircuitState& state : fit.circuits) {
        if (state.role == Role::ac) {
            continue;
        }
        const auto& circuit = scenario.circuits[state.index];
        const auto kind = std::ranges::find_if(
            unit.packs, [&](const PackKind& candidate) { return candidate.lead == &circuit; });
        for (FuseState& fuse : state.fuses) {
            const bool at_pack = is_at_pack(circuit, state.role, fuse.link);
            std::optional<Current> prospective = fit.prospective;
            std::string from = unit.count == 1 ? "the pack" : "all packs together";
            if (at_pack && kind != unit.packs.end() && unit.count > 1) {
                // Its own pack feeds a short on the bus side, the others one at the pack.
                const auto others = fault_of(unit, &*kind);
                const auto own =
                    kind->stated
                        ? std::optional(wiring::prospective_current(kind->full, *kind->stated, 1))
                        : std::nullopt;
                prospective = others && own ? std::optional(std::max(*others, *own)) : std::nullopt;
                from = "the other packs";
            }
            fuse.prospective = prospective;
            check_fault(fit, state.name, state.links[fuse.link].title,
                        breaking_of(std::get<scenario::Fuse>(circuit.links[fuse.link]), fit.top),
                        prospective, from);
        }
    }
    for (const PackKind& kind : unit.packs) {
        const bool in_circuit =
            kind.lead != nullptr &&
            std::ranges::any_of(kind.lead->links, [](const scenario::Link& link) {
                return std::holds_alternative<scenario::Fuse>(link);
            });
        if (kind.fuse && !in_circuit) {
            add(fit, "C4", "", "pack " + scenario.packs[kind.index].name + " fuse",
                Verdict::unknown,
                "Its family is not told by the pack's key, so what it breaks is not known.",
                "Describe the pack's lead as a [[circuit]] that feeds it.",
                "checks wiring_method.md");
        }
    }
}

void check_inverter_voltage(const Scenario& scenario, Fit& fit) {
    if (!fit.continuous) {
        return;
    }
    const auto main = std::ranges::find(fit.circuits, Role::main, &CircuitState::role);
    const std::string where = main == fit.circuits.end() ? "" : main->name;
    const auto tell = [&](const Operating& at, units::Power output, const std::string& when,
                          Verdict failing) {
        const auto& state = at.state;
        if (state.how != wiring::Feeding::carries) {
            add(fit, "C8", where, "inverter, " + when, failing,
                fmt::format("{} at the outlets asks {} of the packs; the voltage collapses beyond "
                            "{}.",
                            units::show(output, 4), units::show(at.feed.drawn, 4),
                            units::show(state.largest, 4)),
                "Add a pack in parallel, thicken or shorten the main cable, or draw less.",
                "wiring method.md (17)");
            return;
        }
        const bool holds = state.at_load >= fit.cutoff;
        const auto usable = wiring::power_at_voltage(at.feed, fit.cutoff);
        add(fit, "C8", where, "inverter, " + when, holds ? Verdict::fits : failing,
            fmt::format("At {} the inverter sees {} and draws {}; it switches off below {}{}.",
                        units::show(output, 4), units::show(state.at_load, 4), amperes(state.main),
                        units::show(fit.cutoff, 4),
                        holds ? ""
                              : fmt::format(", so at most {} can be drawn from the packs",
                                            units::show(usable, 3))),
            holds ? "" : "Add a pack in parallel, thicken or shorten the main cable, or draw less.",
            "wiring method.md (16)");
    };
    tell(*fit.continuous, scenario.inverter->continuous, "at its rating", Verdict::fails);
    if (fit.surge) {
        tell(*fit.surge, scenario.inverter->surge.value_or(scenario.inverter->continuous),
             "at its surge", Verdict::may_not);
    }
}

WorstShare worst_share(const BuildUnit& unit, const wiring::Feed& feed, std::size_t kind) {
    // Where the kinds begin in the list of sources.
    std::size_t first = 0;
    for (std::size_t i = 0; i < kind; ++i) {
        first += static_cast<std::size_t>(unit.packs[i].count);
    }
    WorstShare worst;
    const auto look = [&](const wiring::Feed& asked, std::size_t at, bool missing) {
        const Current share = wiring::fed(asked).shares[at];
        if (share > worst.current) {
            worst.current = share;
            worst.one_missing = missing;
        }
    };
    look(feed, first, false);
    std::size_t at = 0;
    for (std::size_t other = 0; other < unit.packs.size(); ++other) {
        const std::size_t out = at;  // the first of each kind stands for its kind
        at += static_cast<std::size_t>(unit.packs[other].count);
        if (other == kind && unit.packs[other].count == 1) {
            continue;
        }
        if (feed.sources.size() < 2) {
            break;
        }
        wiring::Feed less = feed;
        less.sources.erase(less.sources.begin() + static_cast<std::ptrdiff_t>(out));
        look(less, out < first ? first - 1 : first, true);
    }
    return worst;
}

void check_packs(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    if (!fit.continuous) {
        return;
    }
    for (std::size_t k = 0; k < unit.packs.size(); ++k) {
        const PackKind& kind = unit.packs[k];
        const scenario::Pack& pack = scenario.packs[kind.index];
        const WorstShare worst = worst_share(unit, fit.continuous->feed, k);
        const std::string lead = kind.lead == nullptr ? "" : kind.lead->name;
        const std::string about = "pack " + pack.name;
        if (kind.model.current_limit) {
            const bool holds = worst.current <= *kind.model.current_limit;
            add(fit, "C9", lead, about, holds ? Verdict::fits : Verdict::fails,
                fmt::format("At the inverter's rating a pack gives {}{}; its limit is {}.",
                            amperes(worst.current),
                            worst.one_missing ? " with one pack missing" : "",
                            amperes(*kind.model.current_limit)),
                holds ? ""
                      : "Add packs in parallel, or hold the loads below what the packs give: when "
                        "one opens the others follow.",
                "wiring method.md (18)");
        }
        if (kind.fuse) {
            const Current least = wiring::least_rating({.continuous = worst.current});
            const bool holds = *kind.fuse >= least;
            add(fit, "C9", lead, about + " fuse", holds ? Verdict::fits : Verdict::fails,
                fmt::format("At the inverter's rating a pack gives {}{}, which asks for a fuse of "
                            "at least {}; the pack has {}.",
                            amperes(worst.current),
                            worst.one_missing ? " with one pack missing" : "", amperes(least),
                            amperes(*kind.fuse)),
                holds ? ""
                      : "Add packs in parallel or hold the loads lower, before any larger "
                        "fuse: its cable and connector must carry that too.",
                "[NEC] 210.20(A), from memory; wiring method.md (18)");
            if (kind.model.current_limit && *kind.fuse > *kind.model.current_limit) {
                add(fit, "C1", lead, about + " fuse", Verdict::may_not,
                    fmt::format("The pack's fuse, {}, is above what the pack may give, {}.",
                                amperes(*kind.fuse), amperes(*kind.model.current_limit)),
                    "Take the pack's limit as the largest fuse.", "checks wiring_method.md (1)");
            }
        }
    }
    // With each pack's own protection: once one opens, the others carry its part too.
    wiring::Feed limited = fit.continuous->feed;
    std::size_t at = 0;
    for (const PackKind& kind : unit.packs) {
        for (int i = 0; i < kind.count; ++i, ++at) {
            limited.sources[at].limit = kind.model.current_limit;
        }
    }
    const wiring::Fed cascade = wiring::fed(limited);
    if (cascade.opened.size() > 1) {
        add(fit, "C9", "", "cascade", Verdict::fails,
            fmt::format("At the inverter's rating {} of {} packs open one after another{}.",
                        cascade.opened.size(), unit.count,
                        cascade.how == wiring::Feeding::nobody_left ? ", and all goes dark" : ""),
            "Hold the loads below what the packs give together, or add packs.",
            "wiring method.md (18)");
    }
    // A lead is fed from its own pack and, over the bus, from all others.
    for (const PackKind& kind : unit.packs) {
        if (kind.lead == nullptr || unit.count < 2) {
            continue;
        }
        const auto state = std::ranges::find(fit.circuits, kind.lead->name, &CircuitState::name);
        Current others{};
        bool told = true;
        for (const PackKind& other : unit.packs) {
            const int count = other.count - (&other == &kind ? 1 : 0);
            std::optional<Current> fuse = other.fuse;
            for (const scenario::Link& link :
                 other.lead == nullptr ? std::vector<scenario::Link>{} : other.lead->links) {
                if (const auto* part = std::get_if<scenario::Fuse>(&link)) {
                    fuse = fuse ? std::min(*fuse, part->rating) : part->rating;
                }
            }
            told = told && (count == 0 || fuse.has_value());
            if (count > 0 && fuse) {
                others += static_cast<double>(count) * *fuse;
            }
        }
        if (!state->weakest) {
            continue;
        }
        const LinkState& weakest = state->links[*state->weakest];
        const bool bus_end = std::ranges::any_of(state->fuses, [&](const FuseState& fuse) {
            return !is_at_pack(*kind.lead, Role::pack_lead, fuse.link);
        });
        const bool covered = bus_end || (told && others <= *weakest.derated);
        add(fit, "C10", kind.lead->name, "both ends",
            covered ? Verdict::fits : (told ? Verdict::fails : Verdict::unknown),
            bus_end ? "A fuse at the bus end guards the lead from the other packs."
            : told  ? fmt::format("A short at this pack is fed by the others through {} of fuses; "
                                   "the {} carries {}.",
                                  amperes(others), weakest.title, amperes(*weakest.derated))
                   : "The other packs' fuses are not told, so what may flow back into this lead is "
                     "not known.",
            covered ? "" : "Fit a second fuse where the lead meets the bus.",
            "wiring method.md, \"Leads with two ends\"");
    }
}

void check_guards_from_before(const Scenario& scenario, Fit& fit) {
    for (const CircuitState& state : fit.circuits) {
        const auto& circuit = scenario.circuits[state.index];
        if (!state.fuses.empty() || !circuit.from || !state.weakest) {
            continue;
        }
        const auto before = std::ranges::find(fit.circuits, *circuit.from, &CircuitState::name);
        if (before == fit.circuits.end() || before->fuses.empty()) {
            continue;
        }
        const LinkState& guard = before->links[before->fuses.back().link];
        const LinkState& weakest = state.links[*state.weakest];
        const bool holds = *guard.rating <= *weakest.derated;
        add(fit, "C1", state.name, guard.title + " of " + before->name,
            holds ? Verdict::fits : Verdict::fails,
            fmt::format("Without a fuse of its own it hangs on the {} of {}; the {} carries {}.",
                        guard.title, before->name, weakest.title, amperes(*weakest.derated)),
            holds ? "" : "Fit a fuse where this circuit begins.", "checks wiring_method.md (1)");
    }
}

void check_case(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    const scenario::Case enclosure = scenario.enclosure.value_or(scenario::Case{});
    const bool shut = enclosure.lid == "closed";
    if (unit.shut && unit.inverter) {
        const auto loss =
            direct_power(*unit.inverter, unit.inverter->continuous) - unit.inverter->continuous;
        const auto air = wiring::air_for(loss, 20.0 * units::kelvin);
        // 60 degC: as warm as common terminals and cells may become; common practice, no source.
        const bool holds = *unit.shut <= units::celsius(60.0);
        add(fit, "C12", "", "heat",
            holds ? Verdict::fits : (shut ? Verdict::fails : Verdict::may_not),
            fmt::format(
                "Shut, at the inverter's rating, {} of heat would bring the inside to {}; a "
                "shut case sheds {} within 20 K.",
                units::show(loss), units::show(*unit.shut), units::show(*unit.shed)),
            holds
                ? ""
                : fmt::format("Open the lid while the inverter works hard, or move {:.0f} m³/h of "
                              "air through it with a fan.",
                              air / wiring::cubic_metre_per_hour),
            "wiring method.md (12), (13); an estimate");
    } else if (unit.inverter && !scenario.enclosure) {
        add(fit, "C12", "", "heat", Verdict::unknown,
            fmt::format("The case is not described, so its heat is not reckoned; parts are taken "
                        "to lie at {}.",
                        units::show(unit.inside)),
            "Give [case] its length, width, height, material and lid.", "wiring method.md (12)");
    }
    for (const PackKind& kind : unit.packs) {
        const scenario::Pack& pack = scenario.packs[kind.index];
        // Cells of 2 V each.
        const int cells =
            static_cast<int>(std::max(1.0, 0.5 * double(kind.model.nominal / units::volt)));
        const auto vent = wiring::hydrogen_vent(pack.chemistry, cells, pack.capacity);
        if (!vent) {
            continue;
        }
        const auto openings = static_cast<double>(kind.count) * vent->opening;
        const bool vented = enclosure.vent && *enclosure.vent >= openings;
        const std::string needs = fmt::format(
            "{} lead-acid {} {:.2g} m³/h of air while charging, through {:.1f} cm² in and the same "
            "out",
            kind.count, kind.count == 1 ? "pack needs" : "packs need",
            kind.count * (vent->air / wiring::cubic_metre_per_hour),
            openings / units::square_metre * 1e4);
        const bool closed = shut && !vented;
        add(fit, "C13", "", "hydrogen, pack " + pack.name,
            vented ? Verdict::fits : (closed ? Verdict::fails : Verdict::may_not),
            fmt::format("{}{}.", needs,
                        closed ? "; the case is shut: hydrogen gathers and one spark sets it off"
                        : enclosure.vent && !vented
                            ? fmt::format("; the case has {:.1f} cm²",
                                          *enclosure.vent / units::square_metre * 1e4)
                            : ""),
            vented ? ""
                   : "Keep lead-acid packs outside the case, or vent it to the open air, high "
                     "and low.",
            "[IEC 62485-2] as restated; wiring method.md (14)");
    }
    if (enclosure.rating && enclosure.lid == "open") {
        add(fit, "C13", "", "water", Verdict::may_not,
            fmt::format("{} holds for the case shut; used open it keeps no water out.",
                        *enclosure.rating),
            "Keep it under a roof while it is open.", "[IEC 60529] as restated");
    }
}

void check_rest(const Scenario& scenario, const Draws& draws, Fit& fit) {
    const auto none_of = [&fit](Role role) {
        return std::ranges::none_of(
            fit.circuits, [role](const CircuitState& state) { return state.role == role; });
    };
    const auto missing = [&fit](std::string about, std::string text, std::string mend) {
        add(fit, "C1", "", "not described: " + about, Verdict::unknown, std::move(text),
            std::move(mend), "checks wiring_method.md");
    };
    if (scenario.inverter && none_of(Role::main)) {
        missing("main path",
                "The file names no circuit that feeds the inverter, so main fuse, switch and cable "
                "cannot be checked.",
                "Add a [[circuit]] with feeds = [\"inverter\"] and its fuse, switch and wire.");
    }
    if (none_of(Role::pack_lead)) {
        missing("pack leads",
                "The file names no circuit that feeds a pack, so pack fuses, leads and connectors "
                "cannot be checked.",
                "Add a [[circuit]] with feeds = [\"" + scenario.packs.front().name +
                    "\"] and its connector, wire and fuse.");
    }
    if (!draws.without_circuit.empty()) {
        missing("loads",
                fmt::format("No circuit feeds {}.", fmt::join(draws.without_circuit, ", ")),
                "Add a [[circuit]] that feeds them.");
    }
    if (draws.ac.continuous + draws.ac.further > units::Power() && none_of(Role::ac)) {
        missing("outlets", "The file names no circuit behind the inverter.",
                "Add a [[circuit]] with from = \"inverter\" and its breaker, wire and outlet.");
    }
    add(fit, "C15", "", "workmanship", Verdict::asked,
        "Arithmetic cannot see crimps, torque, strain relief, polarity or labels.",
        "Pull each crimp, tighten each stud as its sheet says, check polarity before the last "
        "connection, and label every fuse with its rating.",
        "common practice, no source");
    add(fit, "C16", "", "acceptance", Verdict::deferred,
        "Whether it may be used where you are is for local codes, insurers and the authority.",
        "Leave any tie to house wiring, bonding and earthing to a licensed electrician.",
        "common practice, no source");
}

}  // namespace checks
