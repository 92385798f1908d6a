#include "handling/join.hpp"

#include <algorithm>
#include <cmath>

#include "battery/bank.hpp"
#include "battery/bus.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/surface_charge.hpp"
#include "unit/built.hpp"
#include "unit/limits.hpp"
#include "units/said.hpp"

namespace handling {

using namespace units;
using scenario::Chemistry;
using scenario::Pack;
using scenario::Severity;
using words::Said;
using words::said;

namespace {

constexpr Duration looked_ahead = 48.0 * hour;

Said practice() {
    return said<"common practice, no source">();
}

// "main", "main and spare"
Said listed(const std::vector<std::string>& names) {
    return words::joined({names.begin(), names.end()}, words::List::Joint::all);
}

// One kind of pack on either side.
struct Side {
    const unit::Packs* packs = nullptr;
    const Pack* pack = nullptr;
    battery::PackModel model;
    int count = 1;
    bool joining = false;
};

struct Joiner {
    const scenario::Scenario& scenario;
    const JoinAsked& asked;
    unit::Unit built = {};
    std::vector<Side> sides = {};
    Joining told = {};

    std::vector<std::string> unknown = {};  // packs whose voltage at rest nobody tells

    void find(Severity severity, Said where, Said text, Said mend, Said source) {
        told.findings.push_back(
            {severity, std::move(where), std::move(text), std::move(mend), std::move(source)});
        if (severity == Severity::stop) told.allowed = false;
    }

    const Side& joining() const { return *std::ranges::find(sides, true, &Side::joining); }
    Said name(const Side& side) const { return said<"pack {pack}">(side.pack->name); }

    // What the current is held against: a part on its way, or without one the limit asked for.
    struct Held {
        std::optional<Said> part;
        Current bears{};
        Said source;
    };

    Errors gather();
    void take_sides(std::size_t chosen);
    void first_moment();
    void hold(const Side& side, const Held& part, Current carries, double share);
    void hold_lead(const Side& side, unit::Flow flow, Current carries, double share);
    void limits();
    void unknowns();
    void refuse_unlike();
    void refuse_charging_in_frost();
    void refuse_without_fuses();
    void unrested();
    void warnings();
    void straight_from_the_charger();
    void decay();
};

Errors Joiner::gather() {
    const auto& packs = scenario.packs;
    int all = 0;
    for (const Pack& pack : packs)
        all += pack.count;
    std::optional<std::size_t> chosen;
    for (std::size_t i = 0; i < packs.size(); ++i)
        if (packs[i].count > 0 && (!asked.pack || packs[i].name == *asked.pack)) chosen = i;
    if (asked.pack && !chosen)
        return {{.where = "--pack",
                 .found = said<"there is no pack named {pack}">(*asked.pack),
                 .remedy = said<"give the name of a [[pack]] of the file">()}};
    if (all < 2 || !chosen)
        return {
            {.where = "pack",
             .found = said<"there is only one pack, and nothing to plug it onto">(),
             .remedy =
                 said<"describe the unit's pack and the joining pack as two [[pack]] tables, each "
                      "with its rested_voltage or charge">()}};
    told.temperature = unit::usual_warmth(scenario).packs;
    if (!scenario.outage.battery_temperature)
        told.assumptions.push_back(
            {"outage.battery_temperature",
             said<"the packs are at {temperature} when they are joined">(told.temperature),
             practice()});
    auto made = unit::built(scenario, {.packs = told.temperature});
    if (!made) return made.error();
    built = *std::move(made);
    const auto taken = unit::assumptions_of(built);
    told.assumptions.insert(told.assumptions.end(), taken.begin(), taken.end());
    told.findings = built.findings;
    take_sides(*chosen);
    told.in_parallel = all;
    return {};
}

// Of a kind of which one joins, the others are the unit's.
void Joiner::take_sides(std::size_t chosen) {
    for (const unit::Packs& one : built.packs) {
        const bool joins = one.index == chosen;
        const Pack& pack = scenario.packs[one.index];
        if (one.count > 0 && one.inner.assumed()) told.resistance_assumed = true;
        if (one.count > 0 && !pack.charge && !pack.rested_voltage) unknown.push_back(one.name);
        if (joins) sides.push_back({&one, &pack, *one.model, 1, true});
        const int others = one.count - (joins ? 1 : 0);
        if (others > 0) sides.push_back({&one, &pack, *one.model, others, false});
    }
}

// What a full LiFePO4 pack stands above its rested voltage this long after it was charged, at first
// as while charge went in. A voltage that was read has it in it.
Voltage surface_of(const Side& side, Duration after) {
    if (side.pack->chemistry != Chemistry::lifepo4 || side.pack->rested_voltage) return {};
    const auto fill = battery::available_fill(side.model.kinetics, side.model.at_start);
    const Voltage charging = side.model.at_rest.charging_voltage(fill);
    const Voltage rested = side.packs->rested();
    if (!(charging > rested)) return {};
    constexpr Voltage of_four_cells = 12.8 * volt;
    const Voltage relaxed = side.model.nominal / of_four_cells * battery::full_lithium_after(after);
    return std::max(Voltage{},
                    (after > Duration{} ? std::min(charging, relaxed) : charging) - rested);
}

// Before it meets another: at rest, or as the file's `rested_for` leaves it.
Voltage stands_at(const Side& side) {
    const auto after = side.pack->rested_for;
    return side.packs->rested() + (after ? surface_of(side, *after) : Voltage{});
}

battery::PackOnBus on_bus(const Side& side, bool respect_cold) {
    const double n = side.count;
    const Resistance path = (side.model.inner + side.model.lead) / n;
    const Resistance at_least = std::max(path, 1e-7 * ohm);
    return {.rested = stands_at(side),
            .giving = at_least,
            .taking = at_least,
            .takes = !respect_cold || side.model.charging.allowed};
}

// Currents as they would be if no protection stepped in: that is what it would have to stop.
void Joiner::first_moment() {
    std::vector<battery::PackOnBus> unit;
    double per_ohm = 0.0;
    for (const Side& side : sides)
        if (!side.joining) {
            unit.push_back(on_bus(side, false));
            per_ohm += 1.0 / (unit.back().giving / ohm).value();
        }
    const Side& pack = joining();
    told.pack = pack.pack->name;
    told.pack_voltage = stands_at(pack);
    told.unit_voltage = battery::shared_at_power(unit, Power{}).voltage;
    told.pack_charge =
        battery::shown(battery::charge_left(pack.model.capacity, pack.model.at_start));
    Charge held{};
    Charge whole{};
    std::vector<Said> onto;
    for (const Side& side : sides) {
        if (side.joining) continue;
        onto.push_back(side.pack != pack.pack ? Said(side.pack->name)
                       : side.count == 1      ? said<"the other {pack}">(side.pack->name)
                                              : said<"{n} more of its kind">(side.count));
        const double n = side.count;
        whole += n * side.model.capacity;
        held += n * (side.model.capacity - side.model.at_start.removed);
    }
    told.onto = words::joined(std::move(onto), words::List::Joint::all);
    told.unit_charge = battery::shown(StateOfCharge(held / whole));
    told.path = on_bus(pack, false).giving + 1.0 / per_ohm * ohm;
    told.current = (told.pack_voltage - told.unit_voltage) / told.path;
    constexpr Current nothing = 0.05 * ampere;
    told.direction = told.current > nothing    ? Joins::pack_charges_unit
                     : told.current < -nothing ? Joins::unit_charges_pack
                                               : Joins::level;
}

// Who says what a part bears.
Said source_of(const Side& side, const unit::Limit& limit) {
    if (!limit.most.assumed()) return said<"the scenario file">();
    if (limit.by == unit::Limiter::charging)
        return battery::defaults_of(side.pack->chemistry).charge_rate.source;
    return "[LFP 100 sheet]";
}

Said too_much(Current carries, const std::optional<Said>& part, Current bears) {
    return part ? said<"{current} would flow, and its {part} is {limit}">(carries, *part, bears)
                : said<"{current} would flow, and you asked for {limit} at most">(carries, bears);
}

void Joiner::hold(const Side& side, const Held& part, Current carries, double share) {
    if (!(share > 0.0)) return;
    // joining current at which this part is at its limit
    const Current of_all = part.bears / share;
    const Voltage difference = of_all * told.path;
    if (!told.largest_difference || difference < *told.largest_difference) {
        told.largest_difference = difference;
        told.weakest_limit = part.bears;
        told.weakest = part.part ? said<"the {part} of pack {pack}">(*part.part, side.pack->name)
                                 : said<"the limit you asked for">();
    }
    if (carries > part.bears && unknown.empty())
        find(Severity::stop, name(side), too_much(carries, part.part, part.bears),
             said<"first charge the lower one or use the higher one, until their voltages are "
                  "within {difference} of each other">(amount(difference, 2)),
             part.source);
}

// At rest nothing has warmed the fuses: their ratings as stamped.
void Joiner::hold_lead(const Side& side, unit::Flow flow, Current carries, double share) {
    const bool too_cold = flow == unit::Flow::into_pack && !side.model.charging.allowed;
    if (too_cold) {  // the refusal itself: see refuse_charging_in_frost()
        told.largest_difference = Voltage{};
        told.weakest_limit = Current{};
        told.weakest = said<"charging pack {pack} this cold">(side.pack->name);
    }
    for (const unit::Limit& limit : unit::limits_of(*side.packs, flow)) {
        const bool charging = limit.by == unit::Limiter::charging;
        if (charging && (too_cold || !(limit.most.value > Current{}))) continue;
        hold(side, {unit::word_for(limit.by), limit.most.value, source_of(side, limit)}, carries,
             share);
    }
}

// Every part that carries the joining current, or its share of it, against what it bears.
void Joiner::limits() {
    double per_ohm = 0.0;
    for (const Side& side : sides)
        if (!side.joining) per_ohm += 1.0 / (on_bus(side, false).giving / ohm).value();
    const Current current = abs(told.current);
    for (const Side& side : sides) {
        const double share = side.joining ? 1.0
                                          : 1.0 / (on_bus(side, false).giving / ohm).value() /
                                                per_ohm / static_cast<double>(side.count);
        const Current carries = share * current;
        const bool gives = side.joining == (told.current > Current{});
        const bool either = !unknown.empty();  // which of them gives is not known
        if (gives || either) hold_lead(side, unit::Flow::out_of_pack, carries, share);
        if (!gives || either) hold_lead(side, unit::Flow::into_pack, carries, share);
    }
    if (asked.at_most) hold(joining(), {{}, *asked.at_most, said<"your question">()}, current, 1.0);
}

// Nobody can say what flows between voltages that nobody has read.
void Joiner::unknowns() {
    if (unknown.empty()) return;
    told.known = false;
    told.allowed = false;
    find(Severity::caution,
         unknown.size() == 1 ? said<"pack {pack}">(unknown.front()) : said<"packs">(),
         said<"neither the voltage at rest nor the charge of {packs} is given: what would flow is "
              "not known">(listed(unknown)),
         said<"measure both at rest, and give each as rested_voltage">(), practice());
}

// Another chemistry, or another number of cells in series.
void Joiner::refuse_unlike() {
    const Side& pack = joining();
    for (const Side& side : sides) {
        if (side.joining) continue;
        const auto& ours = battery::defaults_of(pack.pack->chemistry);
        const auto& theirs = battery::defaults_of(side.pack->chemistry);
        if (pack.pack->chemistry != side.pack->chemistry)
            find(Severity::stop, name(pack),
                 said<"it is {ours} and {pack} is {theirs}: their voltages at rest differ at every "
                      "charge, so one would feed the other until it is empty, and they need "
                      "different charging">(ours.name, side.pack->name, theirs.name),
                 said<"never join them; use them one after the other">(), practice());
        else if (std::abs(pack.model.nominal / side.model.nominal - 1.0) > 0.15)
            find(Severity::stop, name(pack),
                 said<"it has another number of cells in series than {pack}: {ours} against "
                      "{theirs}">(side.pack->name, pack.model.nominal, side.model.nominal),
                 said<"join packs of one nominal voltage only">(), practice());
    }
}

void Joiner::refuse_charging_in_frost() {
    for (const Side& side : sides) {
        const bool taken_from = side.joining ? told.direction == Joins::unit_charges_pack
                                             : told.direction == Joins::pack_charges_unit;
        if (taken_from && !side.model.charging.allowed)
            find(Severity::stop, name(side),
                 said<"it would be charged at {temperature}, and this cold it must not be">(
                     told.temperature),
                 said<"bring it into a warm room first, or wait until its voltage is the higher "
                      "one">(),
                 battery::defaults_of(side.pack->chemistry).coldest_charge.source);
    }
}

// Of two in parallel neither is fed by more than its own like.
void Joiner::refuse_without_fuses() {
    if (told.in_parallel < 3) return;
    std::vector<std::string> bare;
    const Pack* last = nullptr;  // the joining pack and more of its kind follow one another
    for (const Side& side : sides) {
        if (side.packs->lead.fuse || side.pack == last) continue;
        bare.push_back(side.pack->name);
        last = side.pack;
    }
    if (!bare.empty())
        find(Severity::stop, said<"packs">(),
             said<"with {n} packs in parallel a fault in one is fed by all the others, and no fuse "
                  "of its own is given for {packs}">(told.in_parallel, listed(bare)),
             said<"fuse every pack at its own terminal, and give its fuse in the file">(),
             practice());
}

// A voltage too high or too low for the charge, because the pack has not rested. Told once for all
// packs of a chemistry it holds for. [Rest]
void Joiner::unrested() {
    for (const bool given : {true, false})
        for (const Chemistry chemistry :
             {Chemistry::lifepo4, Chemistry::flooded, Chemistry::agm, Chemistry::gel}) {
            const Duration wanted = (chemistry == Chemistry::lifepo4 ? 24.0 : 6.0) * hour;
            std::vector<std::string> packs;
            for (const Side& side : sides) {
                const Pack& pack = *side.pack;
                const bool rested = pack.rested_for && *pack.rested_for >= wanted;
                if (pack.chemistry != chemistry || rested || pack.rested_for.has_value() != given)
                    continue;
                if (std::ranges::find(packs, pack.name) == packs.end()) packs.push_back(pack.name);
            }
            if (packs.empty()) continue;
            find(given ? Severity::caution : Severity::note,
                 packs.size() == 1 ? said<"pack {pack}">(packs.front())
                                   : said<"packs {packs}">(listed(packs)),
                 said<"a pack just off the charger shows more than it holds; {chemistry} needs "
                      "{time} of rest before its voltage tells the charge">(
                     battery::defaults_of(chemistry).name, wanted),
                 said<"measure again after the rest, and give it as rested_for">(),
                 said<"makers' sheets, {source}">("[Rest]"));
        }
}

void Joiner::warnings() {
    unrested();
    const Side& pack = joining();
    for (const Side& side : sides) {
        if (side.joining) continue;
        const double size = pack.model.capacity / side.model.capacity;
        if (size > 2.0 || size < 0.5)
            find(Severity::caution, name(pack),
                 said<"its capacity is {share} of that of {pack}: the smaller one works harder">(
                     amount(Share(size), 2), side.pack->name),
                 said<"watch the currents of both under load">(), practice());
        const double ohms =
            (pack.model.inner + pack.model.lead) / (side.model.inner + side.model.lead) * size;
        if (ohms > 1.5 || ohms < 1.0 / 1.5)
            find(Severity::caution, name(pack),
                 said<"for its size its resistance is {times} times that of {pack}: they share a "
                      "load unevenly">(words::with_decimals(ohms, 1), side.pack->name),
                 said<"make the leads of both alike in length and thickness">(), practice());
        if (pack.pack->age.value_or(scenario::Age::fresh) !=
            side.pack->age.value_or(scenario::Age::fresh))
            find(
                Severity::caution, name(pack),
                said<"it differs in age from {pack}: the older one empties first">(side.pack->name),
                said<"replace packs in parallel together">(), practice());
    }
    if (told.resistance_assumed && told.direction != Joins::level)
        find(Severity::note, name(pack),
             said<"a resistance is a typical one, not measured: the current may be half or twice "
                  "this">(),
             said<"measure the sag under a known load, or take the maker's figure">(), practice());
}

// What flows at first where the higher one is full and may have just been charged.
void Joiner::straight_from_the_charger() {
    const Voltage rested = told.pack_voltage - told.unit_voltage;
    if (!unknown.empty() || told.direction == Joins::level) return;
    Voltage surface{};
    Charge rated{};
    for (const Side& side : sides) {
        if (side.joining != (told.direction == Joins::pack_charges_unit)) continue;
        if (!side.pack->rested_for) surface = std::max(surface, surface_of(side, {}));
        rated += static_cast<double>(side.count) * side.model.capacity;
    }
    if (!(surface > Voltage{})) return;
    const auto flows = [&](Duration after) {
        return battery::joining_current(abs(rested), surface, told.path, rated, after);
    };
    find(Severity::note, name(joining()),
         said<"this holds for rested packs: straight from the charger {current} would flow at "
              "first, and {later} after a minute">(flows({}), flows(1.0 * minute)),
         said<"let the full one rest for a day, or draw a hundredth of its charge first; with "
              "rested_for in the file its rest is counted">(),
         "battery method.md (67)");
}

// The packs on one bus with nothing else, step by step.
void Joiner::decay() {
    std::vector<battery::PackGroup> groups;
    std::size_t mine = 0;
    for (const Side& side : sides) {
        if (side.joining) mine = groups.size();
        auto setup = battery::arranged(side.model, Resistance{}, {});
        setup.stops = {};
        setup.path = side.model.lead;
        groups.push_back({setup, side.count, side.model.at_start});
    }
    battery::Bank bank(groups, Resistance{});
    const Charge before = bank.wells(mine).removed;
    Duration at{};
    const auto keep = [&] {
        const auto point = bank.operating_point(Power{});
        told.course.push_back({at, bank.current_of(mine), point.voltage});
    };
    keep();
    Duration step = 1.0 * minute;
    while (at < looked_ahead) {
        if (!told.settles_in && abs(told.course.back().current) < settled) {
            told.settles_in = at;
            told.moved = bank.wells(mine).removed - before;
            break;
        }
        (void)bank.advance({}, Power{}, step);
        at += step;
        keep();
        if (at >= 10.0 * step) step = std::min(2.0 * step, 15.0 * minute);
    }
    if (!told.settles_in) told.moved = bank.wells(mine).removed - before;
}

}  // namespace

Result<Joining> join(const scenario::Scenario& scenario, const JoinAsked& asked) {
    Joiner joiner{.scenario = scenario, .asked = asked};
    if (auto errors = joiner.gather(); !errors.empty()) return fail(std::move(errors));
    joiner.first_moment();
    joiner.limits();
    joiner.unknowns();
    joiner.refuse_unlike();
    joiner.refuse_charging_in_frost();
    joiner.refuse_without_fuses();
    joiner.warnings();
    joiner.straight_from_the_charger();
    joiner.decay();
    return std::move(joiner.told);
}

}  // namespace handling
