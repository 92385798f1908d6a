// The checks that look at one circuit alone; method.md, "The checks".
#include <algorithm>

#include "fitting/circuit.hpp"
#include "units/said.hpp"
#include "units/size_said.hpp"
#include "units/text.hpp"
#include "wiring/conductor.hpp"
#include "wiring/connector.hpp"

namespace fitting {

namespace {

using scenario::Circuit;
using units::Current;
using words::Said;
using words::said;

const Said fuse_rule =
    said<"fitting method.md (1): a fuse no larger than the weakest part behind it">();
const Said continuous_rule = said<"[NEC] 210.20(A), 215.3: 125 % of what runs for 3 h">();
constexpr units::Length unfused_bare = 7.0 * 0.0254 * units::metre;       // [33 CFR 183.455]
constexpr units::Length unfused_sheathed = 40.0 * 0.0254 * units::metre;  // [33 CFR 183.455]

words::Amount volts(units::Voltage voltage) {
    return units::amount(voltage, 4);
}

struct Checker {
    const Circuit& circuit;
    const CircuitState& state;
    const Around& around;
    std::vector<Check> checks = {};

    void add(std::string id, Said about, Verdict verdict, Said text, Said mend, Said source) {
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

// Where it lies in parallel.
bool in_runs(const CircuitState& state) {
    return state.runs > 1.0;
}

// What takes some of a part's rating behind it: "(0.91 for 35 degC)".
Said with_why(Said what, const Said& why) {
    return why.empty() ? what : said<"{what} ({reason})">(std::move(what), why);
}

// ---- C1: no fuse above the weakest part behind it; nothing without a fuse.

void check_fuse_against_links(Checker& checker, const FuseState& fuse) {
    const LinkState& own = checker.link(fuse.link);
    const auto& state = checker.state;
    for (const std::size_t i : protected_by(checker.circuit, checker.state.role, fuse.link)) {
        if (!checker.link(i).derated) {
            checker.add(
                "C1", checker.link(i).title, Verdict::fails,
                said<"How much the {part} carries here is not known: {reason}.">(
                    checker.link(i).title, checker.link(i).why),
                said<
                    "Give a part that is rated for this use, or its rating from the data sheet.">(),
                fuse_rule);
        }
    }
    if (!fuse.weakest || !fuse.window.most) {
        return;
    }
    const LinkState& weakest = checker.link(*fuse.weakest);
    const Current rating = *own.rating;
    const bool holds = rating <= (1.0 + 1e-12) * *fuse.window.most;
    const auto most = amperes(*fuse.window.most);
    const Said limit = with_why(
        in_runs(state) ? said<"the {part} in each run carries {current}">(weakest.title, most)
                       : said<"the {part} carries {current}">(weakest.title, most),
        weakest.why);
    checker.add("C1", own.title, holds ? Verdict::fits : Verdict::fails,
                holds ? said<"The {fuse} guards it: {limit}.">(own.title, limit)
                      : said<"The {fuse} is larger than what it guards: {limit}. It would let "
                             "that part burn before it opens.">(own.title, limit),
                holds || !fuse.window.largest
                    ? Said()
                    : said<"Fit a {largest} fuse, or a {part} that carries {current}.">(
                          amperes(*fuse.window.largest), kind_of(weakest), amperes(rating)),
                fuse_rule);
}

// What lies between one end of a circuit and the first fuse from there.
struct Unguarded {
    units::Length bare{};
    bool sheathed = true;
    bool fused = false;  // a fuse ends it

    void pass(const scenario::Link& link) {
        if (const auto* wire = std::get_if<scenario::Wire>(&link)) {
            bare += wiring::run_of(*wire).supply;
            sheathed = sheathed && wire->sheathed.value_or(false);
        }
        fused = std::holds_alternative<scenario::Fuse>(link);
    }
    units::Length allowed() const { return sheathed ? unfused_sheathed : unfused_bare; }
};

Unguarded unguarded_from_begin(const std::vector<scenario::Link>& links) {
    Unguarded wire;
    for (std::size_t i = 0; i < links.size() && !wire.fused; ++i) {
        wire.pass(links[i]);
    }
    return wire;
}

Unguarded unguarded_from_end(const std::vector<scenario::Link>& links) {
    Unguarded wire;
    for (std::size_t i = links.size(); i-- > 0 && !wire.fused;) {
        wire.pass(links[i]);
    }
    return wire;
}

void check_unfused(Checker& checker) {
    if (checker.alternating()) {
        return;  // C11 looks at the inverter's side
    }
    const bool lead = checker.state.role == Role::pack_lead;
    const auto& links = checker.circuit.links;
    const Unguarded wire = lead ? unguarded_from_end(links) : unguarded_from_begin(links);
    const bool at_the_pack = lead && checker.around.pack_fuse;
    const auto bare = units::amount(wire.bare, 2);
    const auto allowed = units::amount(wire.allowed(), 2);
    if (!wire.fused && !at_the_pack) {
        // A circuit that begins at another one is guarded by that one's fuse; compared there.
        if (checker.circuit.from && checker.circuit.from != "bus") {
            return;
        }
        checker.add("C1", Said(), Verdict::fails,
                    lead ? said<"There is no fuse between the pack and this circuit.">()
                         : said<"There is no fuse between the bus and this circuit.">(),
                    lead ? said<"Fit a fuse at the pack, before anything else.">()
                         : said<"Fit a fuse at the bus, before anything else.">(),
                    "[33 CFR 183.455]");
    } else if (wire.bare > wire.allowed() && !at_the_pack) {
        checker.add(
            "C1", Said(), Verdict::fails,
            lead ? said<"{length} of wire lies between the pack and its fuse; a short there meets "
                        "none.">(bare)
                 : said<"{length} of wire lies between the bus and its fuse; a short there meets "
                        "none.">(bare),
            lead ? said<"Put the fuse within {length} of the pack.">(allowed)
                 : said<"Put the fuse within {length} of the bus.">(allowed),
            said<"[33 CFR 183.455] 7 in, or 40 in of sheathed wire">());
    }
}

// A source at the far end, such as the battery of a vehicle, feeds a short on the wire just as the
// packs do: it needs a fuse at its own end.
void check_far_source(Checker& checker) {
    const Said& source = checker.around.far_source;
    if (source.empty()) {
        return;
    }
    const Unguarded wire = unguarded_from_end(checker.circuit.links);
    const bool holds = wire.fused && wire.bare <= wire.allowed();
    checker.add(
        "C1", said<"far end">(), holds ? Verdict::fits : Verdict::fails,
        holds ? said<"A fuse guards the wire at {source} too.">(source)
              : said<"{length} of wire lies between {source} and the first fuse; a short there "
                     "is fed from that end and meets none.">(units::amount(wire.bare, 2), source),
        holds ? Said()
              : said<"Fit a second fuse within {length} of {source}.">(
                    units::amount(wire.allowed(), 2), source),
        said<"[33 CFR 183.455] 7 in, or 40 in of sheathed wire">());
}

// ---- C2: the fuse carries what is drawn.

// "12.5 A for hours and 3 A for shorter", of which one may be nothing.
Said drawn_in_words(const CircuitState& state, const wiring::Asked& asked) {
    const bool charging = state.charging > Current();
    const auto lasting = amperes(asked.continuous);
    const auto further = amperes(asked.further);
    if (!(asked.continuous > Current())) {
        return asked.further > Current() ? said<"{current} for shorter">(further) : Said();
    }
    const Said for_hours = charging ? said<"{current} for hours while charging">(lasting)
                                    : said<"{current} for hours">(lasting);
    if (!(asked.further > Current())) return for_hours;
    return said<"{for_hours} and {current} for shorter">(for_hours, further);
}

Said asked_in_words(const CircuitState& state, const wiring::Asked& asked, Current least) {
    const Said drawn = drawn_in_words(state, asked);
    const Said each = in_runs(state) ? said<"{drawn} in each run">(drawn) : drawn;
    return asked.hot < 1.0
               ? said<"{drawn}, which asks for at least {current} in this heat">(each,
                                                                                 amperes(least))
               : said<"{drawn}, which asks for at least {current}">(each, amperes(least));
}

void check_fuse_against_load(Checker& checker, const FuseState& fuse) {
    const LinkState& own = checker.link(fuse.link);
    const Current least = wiring::least_rating(fuse.asked);
    if (least <= Current()) {
        return;
    }
    const bool holds = *own.rating >= (1.0 - 1e-12) * least;
    const Said asks = asked_in_words(checker.state, fuse.asked, least);
    checker.add("C2", own.title, holds ? Verdict::fits : Verdict::fails,
                holds ? said<"{asks}; the {fuse} carries it.">(asks, own.title)
                      : said<"{asks}; the {fuse} would open or age.">(asks, own.title),
                holds || !fuse.window.smallest || fuse.window.empty() ? Said()
                : fuse.window.largest
                    ? said<"Fit a {fuse} fuse; the parts behind it allow up to {current}.">(
                          amperes(*fuse.window.smallest), amperes(*fuse.window.largest))
                    : said<"Fit a {fuse} fuse; the parts behind it allow any.">(
                          amperes(*fuse.window.smallest)),
                continuous_rule);
}

// The window has no size in it: no fuse is right for this circuit as it is.
void check_window(Checker& checker, const FuseState& fuse) {
    const auto& window = fuse.window;
    if (!window.empty() || !window.most || window.least <= Current()) {
        return;
    }
    const Said weakest = fuse.weakest ? checker.link(*fuse.weakest).title : said<"weakest part">();
    const auto asked = amperes(window.smallest ? *window.smallest : window.least);
    const Said least = window.surge_sets_least
                           ? said<"the load asks for at least {current} (its surge does)">(asked)
                           : said<"the load asks for at least {current}">(asked);
    const auto most = amperes(window.largest ? *window.largest : *window.most);
    checker.add(
        "C1", about_window(), Verdict::fails,
        in_runs(checker.state)
            ? said<"No fuse fits in each run: {least}, the {part} allows {current} at most. "
                   "No standard size lies between.">(least, weakest, most)
            : said<"No fuse fits: {least}, the {part} allows {current} at most. No standard "
                   "size lies between.">(least, weakest, most),
        Said(), "fitting method.md (1), (2)");
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
    const Said surge = said<"{current} for {time} is {percent} % of the {fuse}">(
        amperes(fuse.asked.surge), units::amount(fuse.asked.surge_lasts, 2),
        words::with_decimals(100.0 * (fuse.asked.surge / part->rating), 0), own.title);
    const Said source = family != nullptr ? Said(family->source)
                                          : said<"fitting method.md, opening times unknown">();
    // A breaker is closed again by hand; a fuse leaves all dark until another is found.
    const Verdict opened = own.kind == "breaker" ? Verdict::may_not : Verdict::fails;
    switch (answer) {
        case wiring::Surge::holds:
            checker.add("C3", own.title, Verdict::fits, said<"{surge}, which it holds.">(surge),
                        Said(), source);
            break;
        case wiring::Surge::may_open:
            checker.add(
                "C3", own.title, opened,
                envelope.empty()
                    ? said<"{surge}: it may open, its opening times are not known.">(surge)
                    : said<"{surge}: it may open.">(surge),
                said<"Ask the maker for its time-current curve, or give it as opens = [...].">(),
                source);
            checker.checks.back().best = Verdict::fits;
            break;
        case wiring::Surge::opens:
            checker.add("C3", own.title, opened, said<"{surge}: it opens.">(surge),
                        said<"Start such loads one by one, or fit a slower family where the parts "
                             "behind it allow.">(),
                        source);
            break;
    }
}

// ---- C5: rated voltages.

void check_voltage(Checker& checker, std::size_t i) {
    const units::Voltage highest = checker.highest();
    const auto tell = [&](std::optional<units::Voltage> rated, const Said& source) {
        if (!rated) {
            // Below the lowest rating in common use nothing needs asking; common practice.
            if (!checker.alternating() && highest > 30.0 * units::volt) {
                checker.add("C5", checker.link(i).title, Verdict::unknown,
                            said<"Its direct-voltage rating is not known; the bus reaches "
                                 "{voltage} while charging.">(volts(highest)),
                            said<"Read its data sheet and give voltage.">(),
                            said<"fitting method.md">());
            }
            return;
        }
        const bool holds = *rated >= highest;
        checker.add(
            "C5", checker.link(i).title, holds ? Verdict::fits : Verdict::fails,
            said<"Rated {rated}; up to {highest} is across it.">(volts(*rated), volts(highest)),
            holds ? Said() : said<"Fit a part rated for that voltage.">(), source);
    };
    const scenario::Link& link = checker.circuit.links[i];
    if (const auto* fuse = std::get_if<scenario::Fuse>(&link)) {
        const auto* family = fuse->family ? wiring::find_fuse_family(*fuse->family) : nullptr;
        std::optional<units::Voltage> rated = fuse->voltage;
        if (!rated && family != nullptr && !family->breaks.empty() && !checker.alternating()) {
            rated = family->breaks.back().voltage;
        }
        tell(rated, family != nullptr ? Said(family->source) : "circuit.links");
    } else if (const auto* part = std::get_if<scenario::Switch>(&link)) {
        tell(part->voltage, "circuit.links");
    } else if (const auto* connector = std::get_if<scenario::Connector>(&link)) {
        const auto* row = connector->part ? wiring::find_connector(*connector->part) : nullptr;
        tell(connector->voltage ? connector->voltage
                                : (row != nullptr ? row->voltage : std::nullopt),
             row != nullptr ? Said(row->source) : "circuit.links");
    } else if (const auto* outlet = std::get_if<scenario::SocketOutlet>(&link)) {
        tell(outlet->voltage, "circuit.links");
    }
}

// ---- C6, C7: each part against what flows, fuse or no fuse.

Said carried_in_words(const Checker& checker, const LinkState& part) {
    if (*part.derated <= Current()) {
        return said<"The {part} is not usable here: {reason}.">(part.title, part.why);
    }
    const auto may = amperes(*part.derated);
    const auto flows = amperes(checker.state.carries());
    const Said allowed =
        with_why(said<"the {part} may carry {current} here">(part.title, may), part.why);
    return checker.state.charging > Current()
               ? said<"{^allowed}; {current} flows while charging.">(allowed, flows)
               : said<"{^allowed}; {current} flows.">(allowed, flows);
}

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
    checker.add(
        id, part.title, holds ? Verdict::fits : Verdict::fails, carried_in_words(checker, part),
        holds ? Said()
        : wire == nullptr
            ? said<"Fit a {part} rated for {current} or more.">(kind_of(part), amperes(carries))
        : thicker ? said<"Fit a thicker wire: {size} is the next.">(units::amount(*thicker))
                  : said<"Lay two runs in parallel, each with its own fuse.">(),
        part.source);
}

// A part that says nothing of this kind of current.
void check_unrated(Checker& checker, std::size_t i) {
    const LinkState& part = checker.link(i);
    const bool fuse = part.kind == "fuse" || part.kind == "breaker";
    if (fuse || part.derated) {
        return;
    }
    checker.add(
        part.kind == "wire" ? "C6" : "C7", part.title, Verdict::fails,
        said<"How much the {part} carries here is not known: {reason}.">(part.title, part.why),
        said<"Give a part that is rated for this use, or its rating from the data sheet.">(),
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
    checker.add("C6", said<"{part}, parallel">(checker.link(i).title),
                holds                   ? Verdict::fits
                : checker.alternating() ? Verdict::fails
                                        : Verdict::may_not,
                holds ? said<"Wires of this size may lie in parallel.">()
                      : said<"{size} wires in parallel: when one end loosens the others carry "
                             "its part. Building wire is laid so from 1/0 AWG on only.">(
                            units::amount(wire->size)),
                holds ? Said() : said<"Lay one thicker wire, or feed two circuits.">(),
                said<"[NEC] 310.10(G)">());
    checker.checks.back().part = checker.link(i).title;
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
        checker.add("C7", said<"{part}, parted live">(checker.link(i).title), Verdict::may_not,
                    said<"{current} can flow here; parted under current it is made for {rated}, "
                         "{times} times.">(amperes(checker.state.carries()),
                                           amperes(*row->hot_plug), row->hot_cycles.value_or(0)),
                    said<"Switch the loads off before plugging or unplugging.">(), row->source);
        checker.checks.back().part = checker.link(i).title;
    }
    if (part->cycles_used && row->cycles && *part->cycles_used >= *row->cycles) {
        checker.add("C7", said<"{part}, worn">(checker.link(i).title), Verdict::fails,
                    said<"It has been mated {times} times; it is made for {most}.">(
                        *part->cycles_used, *row->cycles),
                    said<"Replace both halves.">(), row->source);
        checker.checks.back().part = checker.link(i).title;
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
        "C8", about_drop(), holds ? Verdict::fits : Verdict::may_not,
        said<"{drop} of {voltage} is lost on the way ({percent} %, {loss}); the {part} takes most "
             "of it, {its_drop}.">(volts(state.drop), volts(state.nominal),
                                   words::with_decimals(100.0 * share, 1), state.loss, worst.title,
                                   volts(worst.drop)),
        holds ? Said()
              : said<"Shorten the way or fit thicker wire: {percent} % is the usual limit here.">(
                    words::with_decimals(100.0 * state.drop_limit, 0)),
        said<"[ABYC E-11] as quoted: 3 % for feeders and critical loads, 10 % else; [NEC] "
             "210.19">());
}

// ---- C11: the inverter's side.

// The smallest breaker of a circuit at the inverter.
std::optional<Current> breaker_of(const Circuit& circuit) {
    std::optional<Current> smallest;
    for (const scenario::Link& link : circuit.links) {
        if (const auto* fuse = std::get_if<scenario::Fuse>(&link)) {
            smallest = smallest ? std::min(*smallest, fuse->rating) : fuse->rating;
        }
    }
    return smallest;
}

// What the inverter can give against what the parts are made for; that heat takes some of it is for
// C1 and C6 to say.
void check_inverter_against_circuit(Checker& checker) {
    const auto& around = checker.around;
    Around cool = around;
    cool.inside = units::celsius(30.0);
    const CircuitState made_for =
        circuit_state(checker.circuit, {.role = Role::ac, .nominal = around.output}, cool);
    if (!around.inverter_power || !made_for.weakest) {
        return;
    }
    const auto breaker = breaker_of(checker.circuit);
    const Current whole = *around.inverter_power / around.output;
    const Current carries = *made_for.links[*made_for.weakest].carries_at_most();
    const Current limit = breaker ? std::min(*breaker, carries) : carries;
    if (whole <= limit) {
        checker.add("C11", said<"inverter">(), Verdict::fits,
                    said<"The inverter gives at most {current}; this circuit passes {passes}.">(
                        amperes(whole), amperes(limit)),
                    Said(), said<"[NEC] 240.4(D)">());
        return;
    }
    const Said gives = said<
        "The inverter can give {current} ({power}); this circuit passes {passes}: {passed}, "
        "{for_hours} for hours.">(amperes(whole), units::amount(*around.inverter_power, 4),
                                  amperes(limit), units::amount(limit * around.output, 4),
                                  units::amount(0.8 * limit * around.output, 4));
    const bool open_to_all = !breaker || *breaker > carries;
    checker.add("C11", said<"inverter">(), open_to_all ? Verdict::fails : Verdict::may_not,
                breaker ? gives : said<"{gives} No breaker keeps it within that.">(gives),
                open_to_all
                    ? said<"Fit a breaker of at most {current}.">(amperes(carries))
                    : said<"Spread the loads over several circuits, each with its own breaker.">(),
                said<"[NEC] 240.4(D), 210.20(A)">());
}

// A ground-fault outlet opens on a first fault only where the neutral is bonded in one place.
void check_neutral(Checker& checker) {
    const auto& neutral = checker.circuit.neutral;
    if (!neutral || *neutral == "unknown") {
        checker.add(
            "C11", said<"neutral">(), Verdict::may_not,
            said<"Whether the inverter bonds its neutral is not given; without one bond a "
                 "ground-fault outlet does not open on a first fault, and its test button does "
                 "not prove otherwise.">(),
            said<"Read the inverter's grounding page and give neutral. Never add a bond by hand: "
                 "on a split output it destroys the inverter.">(),
            said<"[UL 943]; [Inverter manuals] grounding pages">());
        checker.checks.back().best = Verdict::fits;
    } else if (neutral == "split") {
        checker.add(
            "C11", said<"neutral">(), Verdict::may_not,
            said<"Both legs of the output are live against the case: a ground-fault outlet does "
                 "not find its one bonded neutral, so whether it opens on a first fault is for "
                 "the inverter's maker to say.">(),
            said<"Use only an outlet that the inverter's maker names for a split output. Never "
                 "add a bond: it shorts a leg and destroys the inverter.">(),
            said<"[UL 943]; [Inverter manuals] grounding pages">());
    } else if (neutral == "floating") {
        checker.add(
            "C11", said<"neutral">(), Verdict::may_not,
            said<"The neutral floats: a ground-fault outlet does not open on a first fault.">(),
            said<"Leave the bonding to the inverter's maker and to whoever is licensed for it.">(),
            said<"[UL 943]">());
    }
}

void check_ground_fault(Checker& checker) {
    bool outlet = false;
    bool guarded = false;
    for (const scenario::Link& link : checker.circuit.links) {
        if (const auto* socket = std::get_if<scenario::SocketOutlet>(&link)) {
            outlet = true;
            guarded = guarded || socket->ground_fault.value_or(false);
        }
    }
    if (guarded) {
        check_neutral(checker);
    } else if (outlet) {
        checker.add(
            "C11", said<"ground fault">(), Verdict::unknown,
            said<"No ground-fault outlet is named.">(),
            said<"Use one where it is damp or outdoors; it must be one the inverter's maker "
                 "names, for it needs the neutral bonded in exactly one place.">(),
            said<"[NEC] 210.8; [Inverter manuals] grounding pages">());
    }
}

void check_outlets(Checker& checker) {
    if (!checker.alternating()) {
        return;
    }
    check_inverter_against_circuit(checker);
    check_ground_fault(checker);
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
            checker.add(
                "C14", checker.link(other).title, holds ? Verdict::fits : Verdict::fails,
                said<"The {part} takes wire up to {largest}; {size} comes to it.">(
                    checker.link(other).title, units::amount(*thickest), units::amount(wire->size)),
                holds ? Said() : said<"Fit a part that takes this wire; never cut strands off.">(),
                said<"circuit.links.takes or wiring/connectors.toml">());
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
