#include "fitting/whole.hpp"

#include <algorithm>
#include <cmath>

#include "motor/supply_voltage.hpp"
#include "units/said.hpp"
#include "units/text.hpp"
#include "wiring/heat.hpp"

namespace fitting {

namespace {

using scenario::Scenario;
using units::Current;
using words::Said;
using words::said;
using words::said_of;

void add(Fit& fit, std::string id, std::string circuit, Said about, Verdict verdict, Said text,
         Said mend, Said source) {
    fit.checks.push_back({.id = std::move(id),
                          .circuit = std::move(circuit),
                          .about = std::move(about),
                          .verdict = verdict,
                          .text = std::move(text),
                          .mend = std::move(mend),
                          .source = std::move(source)});
}

// What all packs but one of the kind left out push into a short.
Current fault_of(const BuildUnit& unit, const PackKind* without) {
    Current sum{};
    for (const PackKind& kind : unit.packs) {
        const int packs = kind.count - (&kind == without ? 1 : 0);
        if (packs > 0) {
            sum += wiring::prospective_current(kind.full, kind.bare, packs);
        }
    }
    return sum;
}

struct Breaking {
    std::optional<Current> breaks;
    Said source;
};

Breaking breaking_of(const scenario::Fuse& fuse, units::Voltage top) {
    if (fuse.interrupts) {
        return {fuse.interrupts, "circuit.links.interrupts"};
    }
    const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
    if (family == nullptr) {
        return {std::nullopt, "fitting method.md"};
    }
    return {wiring::breaks_at(*family, top), family->source};
}

// The last fuse of the circuit that this one begins at the end of; null where there is none.
const scenario::Fuse* fuse_before(const Scenario& scenario, const Fit& fit,
                                  const scenario::Circuit& circuit) {
    if (!circuit.from) {
        return nullptr;
    }
    const auto before = std::ranges::find(fit.circuits, *circuit.from, &CircuitState::name);
    if (before == fit.circuits.end() || before->fuses.empty()) {
        return nullptr;
    }
    return &std::get<scenario::Fuse>(
        scenario.circuits[before->index].links[before->fuses.back().link]);
}

struct Fault {
    Current prospective{};
    Said from;  // "all packs together"
};

// What a short behind this fuse draws at most, and out of what.
Fault fault_at(const BuildUnit& unit, const CircuitState& state, const scenario::Circuit& circuit,
               std::size_t fuse) {
    const auto kind = std::ranges::find_if(
        unit.packs, [&](const PackKind& candidate) { return candidate.lead == &circuit; });
    if (is_at_pack(circuit, state.role, fuse) && kind != unit.packs.end() && unit.count > 1) {
        // Its own pack feeds a short on the bus side, the others one at the pack.
        return {std::max(fault_of(unit, &*kind),
                         wiring::prospective_current(kind->full, kind->bare, 1)),
                said<"the other packs">()};
    }
    return {fault_of(unit, nullptr),
            unit.count == 1 ? said<"the pack">() : said<"all packs together">()};
}

void check_fault(Fit& fit, const std::string& circuit, const Said& title, const Breaking& breaking,
                 const Breaking& before, const Fault& fault) {
    const Said mend = said<
        "Fit a fuse that breaks it, such as class T, which breaks 20 kA at 125 V; or let the "
        "circuit begin behind one.">();
    const bool holds = breaking.breaks && *breaking.breaks >= fault.prospective;
    // A fuse in front that breaks it opens too, but the two were not tested as a pair.
    const bool backed = !holds && before.breaks && *before.breaks >= fault.prospective;
    const Said draws =
        breaking.breaks
            ? said<"A short draws {current} from {packs} here; the fuse breaks {most}.">(
                  fault.prospective, fault.from, *breaking.breaks)
            : said<
                  "A short draws {current} from {packs} here; the fuse breaks nothing that is "
                  "known at {voltage}.">(fault.prospective, fault.from, fit.top);
    add(fit, "C4", circuit, title,
        holds    ? Verdict::fits
        : backed ? Verdict::may_not
                 : Verdict::fails,
        backed ? said<"{finding} The fuse before it breaks {current}: what it lets through until "
                      "then is not known.">(draws, *before.breaks)
               : draws,
        holds ? Said() : mend, said<"[ABYC E-11] as quoted; {source}">(breaking.source));
}

void check_faults_of(const Scenario& scenario, const BuildUnit& unit, CircuitState& state,
                     Fit& fit) {
    const auto& circuit = scenario.circuits[state.index];
    const scenario::Fuse* before = fuse_before(scenario, fit, circuit);
    for (FuseState& fuse : state.fuses) {
        const Fault fault = fault_at(unit, state, circuit, fuse.link);
        fuse.prospective = fault.prospective;
        check_fault(fit, state.name, state.links[fuse.link].title,
                    breaking_of(std::get<scenario::Fuse>(circuit.links[fuse.link]), fit.top),
                    before == nullptr ? Breaking{} : breaking_of(*before, fit.top), fault);
    }
}

// A fuse of the pack's own key, with no circuit to say of which family it is.
void check_fuse_of_key(const Scenario& scenario, const PackKind& kind, Fit& fit) {
    const bool in_circuit = kind.lead != nullptr &&
                            std::ranges::any_of(kind.lead->links, [](const scenario::Link& link) {
                                return std::holds_alternative<scenario::Fuse>(link);
                            });
    if (kind.fuse && !in_circuit) {
        add(fit, "C4", "", said<"pack {pack} fuse">(scenario.packs[kind.index].name),
            Verdict::unknown,
            said<"Its family is not given by the pack's key, so what it breaks is not known.">(),
            said<"Describe the pack's lead as a [[circuit]] that feeds it.">(),
            "fitting method.md");
    }
}

}  // namespace

void check_faults(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    fit.prospective = fault_of(unit, nullptr);
    for (CircuitState& state : fit.circuits) {
        if (state.role != Role::ac) {
            check_faults_of(scenario, unit, state, fit);
        }
    }
    for (const PackKind& kind : unit.packs) {
        check_fuse_of_key(scenario, kind, fit);
    }
}

void check_inverter_voltage(const Scenario& scenario, Fit& fit) {
    if (!fit.continuous) {
        return;
    }
    const auto main = std::ranges::find(fit.circuits, Role::main, &CircuitState::role);
    const std::string where = main == fit.circuits.end() ? "" : main->name;
    const auto tell = [&](const Operating& at, units::Power output, const Said& about,
                          Verdict failing) {
        const auto& state = at.state;
        if (state.how != wiring::Feeding::carries) {
            add(fit, "C8", where, about, failing,
                said<"{power} at the outlets asks {drawn} of the packs; the voltage collapses "
                     "beyond "
                     "{largest}.">(units::amount(output, 4), units::amount(at.feed.drawn, 4),
                                   units::amount(state.largest, 4)),
                said<"Add a pack in parallel, thicken or shorten the main cable, or draw less.">(),
                "wiring method.md (17)");
            return;
        }
        const bool holds = state.at_load >= fit.cutoff;
        const auto usable = wiring::power_at_voltage(at.feed, fit.cutoff);
        const Said sees = said<
            "At {power} the inverter sees {voltage} and draws {current}; it switches off below "
            "{cutoff}">(units::amount(output, 4), units::amount(state.at_load, 4),
                        amperes(state.main), units::amount(fit.cutoff, 4));
        add(fit, "C8", where, about, holds ? Verdict::fits : failing,
            holds ? said<"{sees}.">(sees)
                  : said<"{sees}, so at most {power} can be drawn from the packs.">(sees, usable),
            holds
                ? Said()
                : said<
                      "Add a pack in parallel, thicken or shorten the main cable, or draw less.">(),
            "wiring method.md (16)");
    };
    tell(*fit.continuous, scenario.inverter->continuous, said<"inverter, at its rating">(),
         Verdict::fails);
    if (fit.surge) {
        tell(*fit.surge, scenario.inverter->surge.value_or(scenario.inverter->continuous),
             said<"inverter, at its surge">(), Verdict::may_not);
    }
}

Asked asked_at_most(const wiring::Feed& feed, units::Voltage cutoff) {
    const wiring::Fed state = wiring::fed(feed);
    const bool held = state.how == wiring::Feeding::carries && state.at_load >= cutoff;
    if (held || cutoff <= units::Voltage()) {
        return {.shares = state.shares, .main = state.main, .bus = state.bus};
    }
    Asked asked{.shares = {}, .main = feed.drawn / cutoff};
    asked.bus = cutoff + asked.main * feed.main;
    double conductance = 0.0;
    double pushed = 0.0;
    for (const wiring::Source& source : feed.sources) {
        const double each = 1.0 / (source.resistance / units::ohm);
        conductance += each;
        pushed += each * (source.emf / units::volt);
    }
    const double drawn = (asked.main + feed.branches) / units::ampere;
    const auto voltage = (pushed - drawn) / conductance * units::volt;
    for (const wiring::Source& source : feed.sources) {
        asked.shares.push_back((source.emf - voltage) / source.resistance);
    }
    return asked;
}

WorstShare worst_share(const BuildUnit& unit, const wiring::Feed& feed, std::size_t kind) {
    const auto cutoff = unit.inverter ? unit.inverter->cutoff_voltage : units::Voltage();
    // Where the kinds begin in the list of sources.
    std::size_t first = 0;
    for (std::size_t i = 0; i < kind; ++i) {
        first += static_cast<std::size_t>(unit.packs[i].count);
    }
    WorstShare worst;
    const auto look = [&](const wiring::Feed& of, std::size_t at, bool missing) {
        const Asked asked = asked_at_most(of, cutoff);
        const Current share = asked.shares[at];
        const double lower =
            cutoff > units::Voltage() && asked.bus > cutoff ? double(asked.bus / cutoff) : 1.0;
        worst.at_lowest = std::max(worst.at_lowest, lower * share);
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

namespace {

// The part of a current that one pack of a kind takes of what all share, by their resistances; at
// most, with any one other missing.
Current share_by_resistance(const BuildUnit& unit, Current total, std::size_t kind) {
    const auto conductance = [](const PackKind& of) {
        return 1.0 / std::max(double(of.flow / units::ohm), 1e-9);
    };
    double all = 0.0;
    double most_missing = 0.0;
    for (std::size_t i = 0; i < unit.packs.size(); ++i) {
        all += unit.packs[i].count * conductance(unit.packs[i]);
        if (i != kind || unit.packs[i].count > 1) {
            most_missing = std::max(most_missing, conductance(unit.packs[i]));
        }
    }
    return conductance(unit.packs[kind]) / (all - most_missing) * total;
}

// With each pack's own protection: once one opens, the others carry its part too.
void check_cascade(const BuildUnit& unit, Fit& fit) {
    if (!fit.continuous) {
        return;
    }
    wiring::Feed left = fit.continuous->feed;
    std::vector<std::optional<Current>> limits;
    for (const PackKind& kind : unit.packs) {
        const auto* limit = unit::find(kind.gives, unit::Limiter::protection);
        limits.insert(limits.end(), static_cast<std::size_t>(kind.count),
                      limit == nullptr ? std::nullopt : std::optional(limit->most.value));
    }
    std::size_t opened = 0;
    while (!left.sources.empty()) {
        const auto shares = asked_at_most(left, fit.cutoff).shares;
        std::size_t worst = 0;
        double most = 1.0 + 1e-12;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            if (limits[i] && shares[i] / *limits[i] > most) {
                most = shares[i] / *limits[i];
                worst = i + 1;
            }
        }
        if (worst == 0) {
            break;
        }
        ++opened;
        left.sources.erase(left.sources.begin() + static_cast<std::ptrdiff_t>(worst - 1));
        limits.erase(limits.begin() + static_cast<std::ptrdiff_t>(worst - 1));
    }
    if (opened > 1) {
        Check check = packs_open_in_turn();
        check.text =
            left.sources.empty()
                ? said<
                      "At the inverter's rating {opened} of {all} packs open one after another, "
                      "and "
                      "all goes dark.">(opened, unit.count)
                : said<"At the inverter's rating {opened} of {all} packs open one after another.">(
                      opened, unit.count);
        fit.checks.push_back(std::move(check));
    }
}

// One kind of pack while it is looked at.
//   rated      at the inverter's rating; else with all loads on
//   missing    with one pack missing
struct PackLook {
    const BuildUnit& unit;
    const PackKind& kind;
    PackCurrents currents;
    std::string lead;
    std::string name;
    bool rated = false;
    bool missing = false;

    // "At the inverter's rating a pack gives 62.5 A with one pack missing", as a clause.
    [[nodiscard]] Said gives(Current given) const {
        const auto current = amperes(given);
        if (rated && missing) {
            return said<"At the inverter's rating a pack gives {current} with one pack missing">(
                current);
        }
        if (rated) return said<"At the inverter's rating a pack gives {current}">(current);
        return missing
                   ? said<"With all loads on a pack gives {current} with one pack missing">(current)
                   : said<"With all loads on a pack gives {current}">(current);
    }
    [[nodiscard]] Said charges(Current taken) const {
        const auto current = amperes(taken);
        return unit.count > 1 ? said<"{current} may charge a pack with one pack missing">(current)
                              : said<"{current} may charge a pack">(current);
    }
};

void check_what_it_gives(const PackLook& look, Fit& fit) {
    const auto* limit = unit::find(look.kind.gives, unit::Limiter::protection);
    if (limit == nullptr) {
        return;
    }
    const auto& given = look.currents.given;
    const bool holds = given.current <= limit->most.value;
    add(fit, "C9", look.lead, said<"pack {pack}">(look.name),
        holds ? Verdict::fits : Verdict::fails,
        said<"{gives}; its limit is {most}.">(look.gives(given.current),
                                              amperes(limit->most.value)),
        holds ? Said()
              : said<"Add packs in parallel, or hold the loads below what the packs give: when "
                     "one opens the others follow.">(),
        "wiring method.md (18)");
}

// Weighed where the file states what it bears: else nothing is said of that part.
void check_what_it_takes(const PackLook& look, Fit& fit) {
    const auto* limit = unit::find(look.kind.takes, unit::Limiter::charging);
    const Current taken = look.currents.taken;
    if (limit == nullptr || limit->most.assumed() || !(taken > Current())) {
        return;
    }
    const bool holds = taken <= limit->most.value;
    add(fit, "C9", look.lead, said<"pack {pack} charging">(look.name),
        holds ? Verdict::fits : Verdict::fails,
        said<"{charges}; it bears {most}.">(look.charges(taken), amperes(limit->most.value)),
        holds ? Said()
              : said<"Charge with less, or add packs in parallel: a pack may switch itself off.">(),
        "fitting method.md");
}

// By the pack's own key; one of a circuit is weighed there.
void check_its_connector(const PackLook& look, Fit& fit) {
    const auto* limit = unit::find(look.kind.gives, unit::Limiter::connector);
    if (limit == nullptr || limit->most.origin == unit::Origin::circuit) {
        return;
    }
    const Current given = look.currents.for_hours + look.currents.further;
    const bool charging = look.currents.taken > given;
    const Current carries = std::max(given, look.currents.taken);
    const bool holds = carries <= limit->most.value;
    add(fit, "C9", look.lead, said<"pack {pack} connector">(look.name),
        holds ? Verdict::fits : Verdict::fails,
        said<"{flows}; its connector is rated {rating}.">(
            charging ? look.charges(carries) : look.gives(carries), amperes(limit->most.value)),
        holds
            ? Said()
            : said<"Take a larger connector, add packs in parallel, or hold the currents lower.">(),
        said<"pack.connector, the maker's rating">());
}

void check_its_fuse(const PackLook& look, Fit& fit) {
    const PackCurrents& currents = look.currents;
    if (!look.kind.fuse) {
        return;
    }
    const Current fuse = *look.kind.fuse;
    const Current given =
        wiring::least_rating({.continuous = currents.for_hours, .further = currents.further});
    const Current taken = wiring::least_rating({.continuous = currents.taken});
    const bool charging = taken > given;
    const Current least = std::max(given, taken);
    const bool holds = fuse >= least;
    add(fit, "C9", look.lead, said<"pack {pack} fuse">(look.name),
        holds ? Verdict::fits : Verdict::fails,
        said<"{flows}, which asks for a fuse of at least {least}; the pack has {fuse}.">(
            charging ? look.charges(currents.taken)
                     : look.gives(currents.for_hours + currents.further),
            amperes(least), amperes(fuse)),
        holds
            ? Said()
            : said<"Add packs in parallel or hold the currents lower, before any larger fuse: its "
                   "cable and connector must carry that too.">(),
        said<"[NEC] 210.20(A); wiring method.md (18)">());
    const auto* limit = unit::find(look.kind.gives, unit::Limiter::protection);
    if (limit != nullptr && fuse > limit->most.value) {
        add(fit, "C1", look.lead, said<"pack {pack} fuse">(look.name), Verdict::may_not,
            said<"The pack's fuse, {fuse}, is above what the pack may give, {most}.">(
                amperes(fuse), amperes(limit->most.value)),
            said<"Take the pack's limit as the largest fuse.">(), "fitting method.md (1)");
    }
}

void check_pack(const Scenario& scenario, const BuildUnit& unit, std::size_t k, Fit& fit) {
    const PackKind& kind = unit.packs[k];
    const PackCurrents currents = pack_currents(unit, fit, k);
    const PackLook look{.unit = unit,
                        .kind = kind,
                        .currents = currents,
                        .lead = kind.lead == nullptr ? "" : kind.lead->name,
                        .name = scenario.packs[kind.index].name,
                        .rated = fit.continuous.has_value(),
                        .missing = currents.given.one_missing};
    check_what_it_gives(look, fit);
    check_what_it_takes(look, fit);
    check_its_fuse(look, fit);
    check_its_connector(look, fit);
}

// The smaller of the key's fuse and those of its circuit.
std::optional<Current> smallest_fuse(const PackKind& kind) {
    std::optional<Current> smallest = kind.fuse;
    if (kind.lead == nullptr) {
        return smallest;
    }
    for (const scenario::Link& link : kind.lead->links) {
        if (const auto* part = std::get_if<scenario::Fuse>(&link)) {
            smallest = smallest ? std::min(*smallest, part->rating) : part->rating;
        }
    }
    return smallest;
}

// What the fuses of all packs but one of this kind let through; nothing where one has none.
std::optional<Current> fuses_of_others(const BuildUnit& unit, const PackKind& kind) {
    Current others{};
    for (const PackKind& other : unit.packs) {
        const int count = other.count - (&other == &kind ? 1 : 0);
        if (count == 0) {
            continue;
        }
        const auto fuse = smallest_fuse(other);
        if (!fuse) {
            return std::nullopt;
        }
        others += static_cast<double>(count) * *fuse;
    }
    return others;
}

// A lead is fed from its own pack and, over the bus, from all others.
void check_lead(const BuildUnit& unit, const PackKind& kind, Fit& fit) {
    const auto state = std::ranges::find(fit.circuits, kind.lead->name, &CircuitState::name);
    if (!state->weakest) {
        return;
    }
    const LinkState& weakest = state->links[*state->weakest];
    const bool bus_end = std::ranges::any_of(state->fuses, [&](const FuseState& fuse) {
        return !is_at_pack(*kind.lead, Role::pack_lead, fuse.link);
    });
    const auto others = fuses_of_others(unit, kind);
    const bool covered = bus_end || (others && *others <= *weakest.carries_at_most());
    add(fit, "C10", kind.lead->name, said<"both ends">(), covered ? Verdict::fits : Verdict::fails,
        bus_end ? said<"A fuse at the bus end guards the lead from the other packs.">()
        : others
            ? said<"A short at this pack is fed by the others through {fuses} of fuses; the {part} "
                   "carries {current}.">(amperes(*others), weakest.title,
                                         amperes(*weakest.carries_at_most()))
            : said<"The other packs' fuses are not given, so what may flow back into this lead is "
                   "not known.">(),
        covered ? Said() : said<"Fit a second fuse where the lead meets the bus.">(),
        "wiring method.md, \"Leads with two ends\"");
}

}  // namespace

PackCurrents pack_currents(const BuildUnit& unit, const Fit& fit, std::size_t kind) {
    PackCurrents currents;
    if (fit.continuous) {
        currents.given = worst_share(unit, fit.continuous->feed, kind);
        currents.for_hours = currents.given.at_lowest;
        const Current short_time =
            share_by_resistance(unit, fit.direct - fit.direct_for_hours, kind);
        currents.further = std::min(short_time, currents.for_hours);
        currents.for_hours -= currents.further;
    } else {
        currents.given.current = share_by_resistance(unit, fit.direct, kind);
        currents.given.one_missing = unit.count > 1;
        currents.for_hours = share_by_resistance(unit, fit.direct_for_hours, kind);
        currents.further = currents.given.current - currents.for_hours;
    }
    currents.taken = share_by_resistance(unit, fit.charging, kind);
    return currents;
}

Check packs_open_in_turn() {
    return {.id = "C9",
            .circuit = "",
            .about = said<"cascade">(),
            .verdict = Verdict::fails,
            .text = said<"At the inverter's rating several packs open one after another.">(),
            .mend = said<"Hold the loads below what the packs give together, or add packs.">(),
            .source = "wiring method.md (18)"};
}

void check_packs(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    for (std::size_t k = 0; k < unit.packs.size(); ++k) {
        check_pack(scenario, unit, k, fit);
    }
    check_cascade(unit, fit);
    for (const PackKind& kind : unit.packs) {
        if (kind.lead != nullptr && unit.count > 1) {
            check_lead(unit, kind, fit);
        }
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
        const bool holds = *guard.rating <= *weakest.carries_at_most();
        add(fit, "C1", state.name, said<"{fuse} of {circuit}">(guard.title, before->name),
            holds ? Verdict::fits : Verdict::fails,
            said<"Without a fuse of its own it depends on the {fuse} of {circuit}; the {part} "
                 "carries {current}.">(guard.title, before->name, weakest.title,
                                       amperes(*weakest.carries_at_most())),
            holds ? Said() : said<"Fit a fuse where this circuit begins.">(),
            "fitting method.md (1)");
    }
}

// ---- C3: a fuse behind a fuse.

namespace {

// A fuse as it stands before others, or several alike in parallel.
struct Guard {
    Said title;
    Current rating{};
    wiring::Envelope envelope;
};

Guard guard_of(const scenario::Fuse& fuse, Said title, double parallel = 1.0) {
    const auto* family = fuse.family ? wiring::find_fuse_family(*fuse.family) : nullptr;
    return {std::move(title), parallel * fuse.rating, wiring::envelope_of(fuse, family)};
}

enum class Order { holds, overlaps, not_known };

// Whether the nearer one is through at every current before the farther one begins to open.
Order order_of(const Guard& nearer, const Guard& farther) {
    if (nearer.rating > farther.rating) {
        return Order::overlaps;
    }
    constexpr int steps = 60;
    const double from = 1.05 * (nearer.rating / units::ampere);
    const double to = 10.0 * (farther.rating / units::ampere);
    bool known = true;
    for (int i = 0; i <= steps; ++i) {
        const Current current = from * std::pow(to / from, double(i) / steps) * units::ampere;
        const auto far = wiring::opening_at(farther.envelope, current / farther.rating);
        if (far.holds) {
            continue;
        }
        const auto near = wiring::opening_at(nearer.envelope, current / nearer.rating);
        if (near.holds) {
            return Order::overlaps;
        }
        if (!near.most || !far.least) {
            known = false;
        } else if (*near.most >= *far.least) {
            return Order::overlaps;
        }
    }
    // So much smaller that no curves of fuses meet; common practice, no source.
    return known || farther.rating >= 10.0 * nearer.rating ? Order::holds : Order::not_known;
}

void tell_order(Fit& fit, const std::string& circuit, const Guard& nearer, const Guard& farther) {
    const Order order = order_of(nearer, farther);
    add(fit, "C3", circuit, said<"{fuse} behind {farther}">(nearer.title, farther.title),
        order == Order::holds ? Verdict::fits : Verdict::may_not,
        order == Order::holds
            ? said<"On a fault the {fuse} opens before the {farther}.">(nearer.title, farther.title)
        : order == Order::overlaps
            ? said<"On a fault the {farther} may open before or with the {fuse}: then more goes "
                   "dark "
                   "than need be.">(farther.title, nearer.title)
            : said<
                  "Whether the {fuse} opens before the {farther} is not known, for an opening time "
                  "is not.">(nearer.title, farther.title),
        order == Order::holds ? Said()
                              : said<"Take the nearer fuse of half the rating or less and of one "
                                     "family, or give opens = [...] of both from their sheets.">(),
        said<"wiring method.md (7); twice the rating within a family: from memory">());
}

// The smallest fuse of every pack's lead, together; nothing where one pack has none.
std::optional<Guard> guard_of_packs(const Scenario& scenario, const Fit& fit) {
    std::optional<Guard> all;
    for (const CircuitState& state : fit.circuits) {
        if (state.role != Role::pack_lead) {
            continue;
        }
        const scenario::Fuse* smallest = nullptr;
        for (const FuseState& fuse : state.fuses) {
            const auto& part =
                std::get<scenario::Fuse>(scenario.circuits[state.index].links[fuse.link]);
            if (smallest == nullptr || part.rating < smallest->rating) {
                smallest = &part;
            }
        }
        if (smallest == nullptr) {
            return std::nullopt;
        }
        Guard one = guard_of(*smallest, said<"packs' fuses">(), state.alike);
        if (!all) {
            all = std::move(one);
        } else {
            all->rating += one.rating;
            // Of two families the one of which less is known.
            all->envelope = one.envelope.empty() ? one.envelope : all->envelope;
        }
    }
    return all;
}

}  // namespace

void check_order_of_fuses(const Scenario& scenario, Fit& fit) {
    const auto packs = guard_of_packs(scenario, fit);
    const std::vector<CircuitState> circuits = fit.circuits;
    for (const CircuitState& state : circuits) {
        const auto& circuit = scenario.circuits[state.index];
        if (state.fuses.empty() || state.role == Role::pack_lead) {
            continue;
        }
        const auto guard = [&](const CircuitState& of, std::size_t fuse) {
            const std::size_t link = of.fuses[fuse].link;
            return guard_of(std::get<scenario::Fuse>(scenario.circuits[of.index].links[link]),
                            &of == &state
                                ? of.links[link].title
                                : said<"{fuse} of {circuit}">(of.links[link].title, of.name),
                            of.runs);
        };
        const auto before = circuit.from
                                ? std::ranges::find(circuits, *circuit.from, &CircuitState::name)
                                : circuits.end();
        if (before != circuits.end() && !before->fuses.empty()) {
            tell_order(fit, state.name, guard(state, 0), guard(*before, before->fuses.size() - 1));
        } else if (before == circuits.end() && packs && state.role != Role::ac) {
            tell_order(fit, state.name, guard(state, 0), *packs);
        }
        for (std::size_t i = 1; i < state.fuses.size(); ++i) {
            tell_order(fit, state.name, guard(state, i), guard(state, i - 1));
        }
    }
}

// ---- Loads: their voltage, and kinds of current that do not mix.

namespace {

// Gear for a bus of 12 V is plated 12 to 13.8 V: common practice, no source.
constexpr double of_the_bus = 0.2;

bool fits_voltage(units::Voltage made, units::Voltage given, bool wall) {
    return wall ? motor::runs_from(made, given) : std::abs(made / given - 1.0) < of_the_bus;
}

void check_voltage_of(const scenario::Load& load, const BuildUnit& unit, Fit& fit) {
    const auto made = motor::plate_voltage(load);
    if (!made || load.from == scenario::Outlet::usb) {
        return;
    }
    const bool wall = load.from == scenario::Outlet::ac;
    if (wall && !unit.inverter) {
        return;
    }
    const auto given = wall ? unit.inverter->output_voltage : unit.nominal;
    if (fits_voltage(*made, given, wall)) {
        return;
    }
    add(fit, "C11", "", said<"load {load}">(load.name), Verdict::fails,
        wall ? said<"{load} is made for {voltage}; the inverter gives {given}.">(
                   load.name, units::amount(*made, 4), units::amount(given, 4))
             : said<"{load} is made for {voltage}; the bus gives {given}.">(
                   load.name, units::amount(*made, 4), units::amount(given, 4)),
        *made > given
            ? said<"Use a load made for this voltage, or an inverter that gives the load's.">()
            : said<"Do not connect it: it burns. Use a load made for this voltage.">(),
        wall ? said<"[NEMA MG 1] 12.44, 10 % either way">() : said<"common practice, no source">());
}

enum class Mixed { wall_on_bus, bus_on_wall, no_inverter };

Said needs(const std::vector<Said>& loads, Mixed how) {
    const Said named = words::joined(loads, words::List::Joint::comma);
    const bool one = loads.size() == 1;
    switch (how) {
        case Mixed::wall_on_bus:
            return one ? said<
                             "It carries the bus's direct current, and {load} needs the inverter's "
                             "alternating current.">(named)
                       : said<
                             "It carries the bus's direct current, and {loads} need the inverter's "
                             "alternating current.">(named);
        case Mixed::bus_on_wall:
            return one ? said<
                             "It begins behind the inverter, and {load} needs the bus's direct "
                             "current.">(named)
                       : said<
                             "It begins behind the inverter, and {loads} need the bus's direct "
                             "current.">(named);
        case Mixed::no_inverter:
            break;
    }
    return one ? said<"{load} needs alternating current, and the unit has no inverter.">(named)
               : said<"{loads} need alternating current, and the unit has no inverter.">(named);
}

}  // namespace

void check_loads(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    for (const scenario::Load& load : scenario.loads) {
        check_voltage_of(load, unit, fit);
    }
    for (const CircuitState& state : fit.circuits) {
        const auto& circuit = scenario.circuits[state.index];
        std::vector<Said> wall;
        std::vector<Said> bus;
        for (const scenario::Load& load : scenario.loads) {
            if (std::ranges::find(circuit.feeds, load.name) != circuit.feeds.end()) {
                (load.from == scenario::Outlet::ac ? wall : bus).push_back(load.name);
            }
        }
        const bool from_bus = circuit.from == "bus" || state.role == Role::main ||
                              state.role == Role::pack_lead || state.role == Role::charging ||
                              (state.role == Role::branch && !bus.empty());
        const auto refuse = [&](Said text, Said mend) {
            add(fit, "C1", state.name, said<"{?current}mixed">(), Verdict::fails, std::move(text),
                std::move(mend),
                said<"fitting method.md: a circuit carries one kind of current">());
        };
        if (!wall.empty() && from_bus) {
            refuse(needs(wall, Mixed::wall_on_bus),
                   said<"Feed them by a circuit with from = \"inverter\".">());
        } else if (!bus.empty() && state.role == Role::ac) {
            refuse(needs(bus, Mixed::bus_on_wall),
                   said<"Feed them by a circuit that begins at the bus.">());
        } else if (!wall.empty() && !unit.inverter) {
            refuse(
                needs(wall, Mixed::no_inverter),
                said<"Describe the [inverter], or give the load from = \"12V\" if that is what it "
                     "is.">());
        }
    }
}

// ---- C12, C13: the case.

namespace {

void check_heat(const Scenario& scenario, const BuildUnit& unit, bool shut, Fit& fit) {
    if (unit.shut && unit.inverter) {
        const auto loss =
            direct_power(*unit.inverter, unit.inverter->continuous) - unit.inverter->continuous;
        const auto air = wiring::air_for(loss, 20.0 * units::kelvin);
        // 60 degC: as warm as common terminals and cells may become; common practice, no source.
        const bool holds = *unit.shut <= units::celsius(60.0);
        add(fit, "C12", "", said<"heat">(),
            holds ? Verdict::fits : (shut ? Verdict::fails : Verdict::may_not),
            said<"Shut, at the inverter's rating, {loss} of heat would bring the inside to "
                 "{temperature}; a "
                 "shut case sheds {shed} within {rise}.">(loss, *unit.shut, *unit.shed,
                                                          20.0 * units::kelvin),
            holds ? Said()
                  : said<"Open the lid while the inverter works hard, or move {air} m³/h of "
                         "air through it with a fan.">(
                        words::with_decimals(air / wiring::cubic_metre_per_hour, 0)),
            said<"wiring method.md (12), (13); an estimate">());
    } else if (unit.inverter && !scenario.enclosure) {
        add(fit, "C12", "", said<"heat">(), Verdict::unknown,
            said<"The case is not described, so its heat is not reckoned; parts are taken "
                 "to be at {temperature}.">(unit.inside),
            said<"Give [case] its length, width, height, material and lid.">(),
            "wiring method.md (12)");
    }
}

// What lead-acid packs give off while they charge, against the openings of the case.
void check_hydrogen(const scenario::Pack& pack, const PackKind& kind,
                    const scenario::Case& enclosure, bool shut, Fit& fit) {
    // Cells of 2 V each.
    const int cells =
        static_cast<int>(std::max(1.0, 0.5 * double(kind.model.nominal / units::volt)));
    const auto vent = wiring::hydrogen_vent(pack.chemistry, cells, pack.capacity);
    if (!vent) {
        return;
    }
    const auto openings = static_cast<double>(kind.count) * vent->opening;
    const bool vented = enclosure.vent && *enclosure.vent >= openings;
    const auto area_of = [](units::Area area) {
        return words::with_decimals(area / units::square_metre * 1e4, 1);
    };
    const Said needs = said_of<
        "{n} lead-acid pack needs {air} m³/h of air while charging, through {area} cm² in and "
        "the same out",
        "{n} lead-acid packs need {air} m³/h of air while charging, through {area} cm² in and "
        "the same out">(
        kind.count,
        words::Number{.value = kind.count * (vent->air / wiring::cubic_metre_per_hour),
                      .digits = 2},
        area_of(openings));
    const bool closed = shut && !vented;
    add(fit, "C13", "", said<"hydrogen, pack {pack}">(pack.name),
        vented ? Verdict::fits : (closed ? Verdict::fails : Verdict::may_not),
        closed
            ? said<"{needs}; the case is shut: hydrogen gathers and one spark sets it off.">(needs)
        : enclosure.vent && !vented
            ? said<"{needs}; the case has {area} cm².">(needs, area_of(*enclosure.vent))
            : said<"{needs}.">(needs),
        vented ? Said()
               : said<"Keep lead-acid packs outside the case, or vent it to the open air, high "
                      "and low.">(),
        said<"[IEC 62485-2] as restated; wiring method.md (14)">());
}

void check_water(const scenario::Case& enclosure, Fit& fit) {
    if (enclosure.rating && enclosure.lid == "open") {
        add(fit, "C13", "", said<"water">(), Verdict::asked,
            said<"{rating} holds for the case shut; used open it keeps no water out.">(
                *enclosure.rating),
            said<"Keep it under a roof while it is open.">(), said<"[IEC 60529] as restated">());
    }
}

}  // namespace

void check_case(const Scenario& scenario, const BuildUnit& unit, Fit& fit) {
    const scenario::Case enclosure = scenario.enclosure.value_or(scenario::Case{});
    const bool shut = enclosure.lid == "closed";
    check_heat(scenario, unit, shut, fit);
    for (const PackKind& kind : unit.packs) {
        check_hydrogen(scenario.packs[kind.index], kind, enclosure, shut, fit);
    }
    check_water(enclosure, fit);
}

namespace {

// What carries current and is in no circuit.
void name_what_is_not_described(const Scenario& scenario, const Draws& draws, Fit& fit) {
    const auto none_of = [&fit](Role role) {
        return std::ranges::none_of(
            fit.circuits, [role](const CircuitState& state) { return state.role == role; });
    };
    const auto missing = [&fit](Said about, Said text, Said mend) {
        add(fit, "C1", "", said<"not described: {part}">(std::move(about)), Verdict::unknown,
            std::move(text), std::move(mend), "fitting method.md");
    };
    if (scenario.inverter && none_of(Role::main)) {
        missing(
            said<"main path">(),
            said<
                "The file names no circuit that feeds the inverter, so main fuse, switch and cable "
                "cannot be checked.">(),
            said<"Add a [[circuit]] with feeds = [\"inverter\"] and its fuse, switch and wire.">());
    }
    if (none_of(Role::pack_lead)) {
        missing(
            said<"pack leads">(),
            said<"The file names no circuit that feeds a pack, so pack fuses, leads and connectors "
                 "cannot be checked.">(),
            said<"Add a [[circuit]] with feeds = [\"{pack}\"] and its connector, wire and fuse.">(
                scenario.packs.front().name));
    }
    if (!draws.without_circuit.empty()) {
        missing(said<"loads">(),
                said<"No circuit feeds {loads}.">(
                    words::joined({draws.without_circuit.begin(), draws.without_circuit.end()},
                                  words::List::Joint::comma)),
                said<"Add a [[circuit]] that feeds them.">());
    }
    if (draws.ac.continuous + draws.ac.further > units::Power() && none_of(Role::ac)) {
        missing(
            said<"outlets">(), said<"The file names no circuit behind the inverter.">(),
            said<"Add a [[circuit]] with from = \"inverter\" and its breaker, wire and outlet.">());
    }
}

}  // namespace

void check_rest(const Scenario& scenario, const Draws& draws, Fit& fit) {
    name_what_is_not_described(scenario, draws, fit);
    add(fit, "C15", "", said<"workmanship">(), Verdict::asked,
        said<"Arithmetic cannot see crimps, torque, strain relief, polarity or labels.">(),
        said<"Pull each crimp, tighten each stud as its sheet says, check polarity before the last "
             "connection, and label every fuse with its rating.">(),
        said<"common practice, no source">());
    add(fit, "C16", "", said<"acceptance">(), Verdict::deferred,
        said<"Whether it may be used where you are is for local codes, insurers and the "
             "authority.">(),
        said<"Leave any tie to house wiring, bonding and earthing to a licensed electrician.">(),
        said<"common practice, no source">());
}

}  // namespace fitting
