#include "handling/storage.hpp"

#include <algorithm>
#include <cmath>

#include "battery/cell/chemistry.hpp"
#include "battery/cell/freezing.hpp"
#include "unit/built.hpp"
#include "units/said.hpp"

namespace handling {

using namespace units;
using scenario::Chemistry;
using scenario::Pack;
using scenario::Severity;
using words::Said;
using words::said;

namespace {

constexpr Current usual_drain = 0.010 * ampere;
constexpr Duration far_ahead = 3652.5 * day;

Said practice() {
    return said<"common practice, no source">();
}

double rate_of(const Keeping& keeping) {
    return -std::log1p(-std::min(0.999, keeping.a_month.value()));  // 1/month
}
double drained_a_month(const Keeping& keeping) {
    return keeping.drain * month / keeping.capacity;
}

// Doubles for each 10 K: [Storage table] at 10 and 20 degC.
Share at_temperature(Share at_20_degrees, Temperature temperature) {
    return Share(
        std::min(0.9, at_20_degrees.value() * std::exp2((in_celsius(temperature) - 20.0) / 10.0)));
}

bool is_lead(Chemistry chemistry) {
    return chemistry != Chemistry::lifepo4;
}

words::Moment date(LocalTime time) {
    return moment(midnight_before(time), words::Moment::Form::full_date);
}

struct Keeper {
    const scenario::Scenario& scenario;
    const scenario::Storage& asked;
    Stored told;

    void assume(std::string where, Said text, Said source) {
        told.assumptions.push_back({std::move(where), std::move(text), std::move(source)});
    }
    void find(Severity severity, Said where, Said text, Said mend, Said source) {
        told.findings.push_back(
            {severity, std::move(where), std::move(text), std::move(mend), std::move(source)});
    }

    void conditions();
    Share lost_a_month(const unit::Packs& of);
    StoredPack put_away(const unit::Packs& of, Charge whole);
    Errors packs();
    void sums();
    StoredMonth month_on(LocalTime on) const;
    void month_by_month();
    void judge_charge(const StoredPack& pack);
    void judge_frost(const StoredPack& pack);
    void judge_keeping(const StoredPack& pack);
    void judge_drain();
    void judge_charger();
    void judge_all();
};

void Keeper::conditions() {
    told.since = asked.since;
    told.temperature = asked.temperature.value_or(celsius(20.0));
    if (!asked.temperature)
        assume("storage.temperature", said<"it is stored at {temperature}">(told.temperature),
               practice());
    told.switch_open = asked.master_switch_open.value_or(false);
    if (!asked.master_switch_open)
        assume("storage.master_switch_open", said<"the master switch is left closed">(),
               practice());
    told.drain = asked.drain.value_or(usual_drain);
    if (!asked.drain)
        assume("storage.drain",
               said<"{current} flows on while the master switch is closed: into a voltmeter and "
                    "the packs' own electronics">(told.drain),
               practice());
    told.maintained = asked.maintained.value_or(false);
    if (!asked.maintained)
        assume("storage.maintained", said<"no charger is left on it">(), practice());
}

// By itself, as the file says or as its chemistry does.
Share Keeper::lost_a_month(const unit::Packs& of) {
    if (asked.self_discharge_per_month) return *asked.self_discharge_per_month;
    const auto& usual = battery::defaults_of(scenario.packs[of.index].chemistry).self_discharge;
    const Share a_month = at_temperature(usual.value, told.temperature);
    assume(of.where,
           said<"it loses {share} of its charge a month by itself, at {temperature}">(
               amount(a_month, 2), told.temperature),
           usual.source);
    return a_month;
}

//   whole   of all packs, by which they share what is left on
StoredPack Keeper::put_away(const unit::Packs& of, Charge whole) {
    const Pack& pack = scenario.packs[of.index];
    const auto& model = of.model;
    StoredPack stored{
        .name = pack.name,
        .count = pack.count,
        .chemistry = pack.chemistry,
        .keeping = {.start = battery::shown(battery::charge_left(model->capacity, model->at_start)),
                    .a_month = lost_a_month(of),
                    .drain = pack.capacity / whole * told.drain,
                    .capacity = model->capacity},
        .top_up_at = StateOfCharge(is_lead(pack.chemistry) ? 0.80 : 0.20),
        .ready_from = StateOfCharge(is_lead(pack.chemistry) ? 0.80 : 0.50)};
    if (!pack.charge && !pack.rested_voltage)
        assume(of.where + ".charge", said<"it was put away full">(), practice());
    return stored;
}

Errors Keeper::packs() {
    Charge whole{};
    for (const Pack& pack : scenario.packs)
        whole += static_cast<double>(pack.count) * pack.capacity;
    // 25 degC is what ratings are stated at.
    const auto built = unit::built(scenario, {.packs = celsius(25.0)});
    if (!built) return built.error();
    for (const unit::Packs& one : built->packs)
        if (one.count >= 1) told.packs.push_back(put_away(one, whole));
    if (told.packs.empty())
        return {{.where = "pack",
                 .found = said<"there is no pack to store">(),
                 .remedy = said<"add a [[pack]] table with its chemistry and capacity">()}};
    if (scenario.packs.size() > 1 || (!scenario.packs.empty() && scenario.packs[0].count > 1))
        assume("storage.drain", said<"all packs share it by their size: they are stored joined">(),
               practice());
    return {};
}

void Keeper::sums() {
    const Duration time = told.on - told.since;
    Charge whole{};
    Charge held{};
    Charge held_open{};
    Charge at_start{};
    for (StoredPack& pack : told.packs) {
        Keeping open = pack.keeping;
        open.drain = {};
        if (told.switch_open) pack.keeping.drain = {};
        pack.now = told.maintained ? StateOfCharge(1.0) : charge_after(pack.keeping, time);
        pack.switch_open = told.maintained ? StateOfCharge(1.0) : charge_after(open, time);
        const auto until = time_until(pack.keeping, pack.top_up_at);
        pack.tops_up = !told.maintained && until && *until < far_ahead;
        pack.top_up_by = told.since + (pack.tops_up ? *until : far_ahead);
        const auto until_open = time_until(open, pack.top_up_at);
        const double n = pack.count;
        whole += n * pack.keeping.capacity;
        held += n * pack.now.value() * pack.keeping.capacity;
        held_open += n * pack.switch_open.value() * pack.keeping.capacity;
        at_start += n * pack.keeping.start.value() * pack.keeping.capacity;
        // the drain flows until a pack is empty
        const auto empty = time_until(pack.keeping, StateOfCharge(0.0));
        told.drained += n * pack.keeping.drain * (empty ? std::min(time, *empty) : time);
        const auto earlier = [](std::optional<LocalTime>& earliest, LocalTime candidate) {
            if (!earliest || candidate < *earliest) earliest = candidate;
        };
        if (pack.tops_up) earlier(told.top_up_by, pack.top_up_by);
        if (!told.maintained && until_open && *until_open < far_ahead)
            earlier(told.top_up_by_switch_open, told.since + *until_open);
    }
    if (told.maintained) told.drained = {};
    told.charge_now = StateOfCharge(held / whole);
    told.charge_switch_open = StateOfCharge(held_open / whole);
    told.self_discharged =
        told.maintained ? Charge{} : std::max(Charge{}, at_start - held - told.drained);
    told.ready = std::ranges::all_of(
        told.packs, [](const StoredPack& pack) { return pack.now >= pack.ready_from; });
}

StoredMonth Keeper::month_on(LocalTime on) const {
    if (told.maintained) return {on, StateOfCharge(1.0), StateOfCharge(1.0)};
    Charge whole{};
    Charge held{};
    Charge held_open{};
    for (const StoredPack& pack : told.packs) {
        Keeping open = pack.keeping;
        open.drain = {};
        const Charge size = static_cast<double>(pack.count) * pack.keeping.capacity;
        whole += size;
        held += charge_after(pack.keeping, on - told.since).value() * size;
        held_open += charge_after(open, on - told.since).value() * size;
    }
    return {on, StateOfCharge(held / whole), StateOfCharge(held_open / whole)};
}

void Keeper::month_by_month() {
    constexpr int looked_beyond = 3;
    constexpr double longest = 120.0;
    const double months = std::clamp<double>((told.on - told.since) / month, 1.0, longest);
    for (int i = 0; i <= static_cast<int>(std::ceil(months)) + looked_beyond; ++i)
        told.months.push_back(month_on(told.since + static_cast<double>(i) * month));
}

// What the packs must not fall below in such cold.
Said kept_from_frost(StateOfCharge least) {
    return said<"keep it above {least} of its charge, or above {freezing}">(amount(least, 2),
                                                                            celsius(0.0));
}

// Frozen, or near it on the date asked for.
void Keeper::judge_frost(const StoredPack& pack) {
    const auto freezing = battery::freezing_point(pack.chemistry, pack.now);
    if (!freezing || !(told.temperature < celsius(0.0))) return;
    const auto where = said<"pack {pack}">(pack.name);
    const auto left = amount(pack.now, 2);
    constexpr StateOfCharge usual_least(0.60);  // common practice, no source
    const auto least = battery::freezes_below(pack.chemistry, told.temperature);
    const auto mend = kept_from_frost(std::max(usual_least, least.value_or(usual_least)));
    if (told.temperature <= *freezing)
        find(Severity::stop, where,
             said<"at {temperature} the acid freezes below {least} of the charge, and {left} is "
                  "left: the case may break">(told.temperature, amount(least.value_or(pack.now), 2),
                                              left),
             said<"{keep}; thaw a frozen one before it is charged">(mend),
             "battery method.md (50), [Acid freezing]");
    else if (pack.now < usual_least || told.temperature <= *freezing + battery::near_freezing)
        find(Severity::caution, where,
             said<"at {temperature} the acid is near freezing: with {left} left it freezes at "
                  "{freezing}">(told.temperature, left, *freezing),
             mend, "battery method.md (50), [Acid freezing]");
}

// Less than keeps it well, or than an outage needs.
void Keeper::judge_charge(const StoredPack& pack) {
    const auto where = said<"pack {pack}">(pack.name);
    const auto left = amount(pack.now, 2);
    const bool too_low = pack.now < pack.top_up_at;
    if (too_low && is_lead(pack.chemistry))
        find(Severity::stop, where,
             said<"{left} is left on {date}; below {least} lead plates begin to sulphate">(
                 left, date(told.on), pack.top_up_at),
             said<"charge it full now, and sooner next time">(), "[Storage table]");
    else if (too_low)
        find(Severity::stop, where,
             said<"{left} is left on {date}; below {least} the pack's own draw may empty it for "
                  "good within weeks">(left, date(told.on), pack.top_up_at),
             said<"charge it to about half now, and sooner next time">(), practice());
    else if (pack.now < pack.ready_from)
        find(Severity::caution, where,
             said<"{left} is left on {date}; an outage needs {least} or more">(left, date(told.on),
                                                                               pack.ready_from),
             said<"top it up before you rely on it">(), practice());
}

// Too full, too warm or too long without a charge.
void Keeper::judge_keeping(const StoredPack& pack) {
    const auto where = said<"pack {pack}">(pack.name);
    const bool lead = is_lead(pack.chemistry);
    if (!lead && pack.keeping.start > StateOfCharge(0.90) && !told.maintained)
        find(Severity::note, where,
             said<"LiFePO4 ages less when it is stored about half full than full">(),
             said<"store it at about {charge}, which for 12 V packs is {voltage} at rest, and "
                  "charge it when an outage is announced">(StateOfCharge(0.50), 13.2 * volt),
             "[LFP 100 sheet]");
    if (in_celsius(told.temperature) > 30.0)
        find(Severity::caution, where,
             said<"at {temperature} it ages and loses charge faster: about twice as fast for each "
                  "{step} above {usual}">(told.temperature, 10.0 * kelvin, celsius(20.0)),
             said<"store it cooler">(), "[Storage table]");
    const double months = (told.on - told.since) / month;
    const int longest = pack.chemistry == Chemistry::flooded ? 4 : 6;
    if (lead && !told.maintained && months > longest)
        find(Severity::caution, where,
             said<"it is stored for {months} months without a charge; {chemistry} keeps for {most} "
                  "at most">(words::with_decimals(months, 0),
                             battery::defaults_of(pack.chemistry).name, longest),
             said<"charge it full, and check it under load before you rely on it">(),
             "[Storage table]");
}

void Keeper::judge_drain() {
    if (told.maintained || told.switch_open || !(told.drain > Current{})) return;
    if (!(told.drained > told.self_discharged)) return;
    find(Severity::caution, said<"storage">(),
         said<"what is left switched on takes more than the packs lose by themselves: {drained} "
              "against {lost}">(amount(told.drained, 2), amount(told.self_discharged, 2)),
         said<"open the master switch: then {charge} is left on {date}">(
             amount(told.charge_switch_open, 2), date(told.on)),
         practice());
}

void Keeper::judge_charger() {
    if (!told.maintained) return;
    const bool lithium = std::ranges::any_of(
        told.packs, [](const StoredPack& pack) { return !is_lead(pack.chemistry); });
    if (lithium)
        find(Severity::note, said<"storage">(),
             said<"LiFePO4 needs no charger in storage, and ages on one">(),
             said<"store it at about half, and top it up twice a year">(), "[LFP 100 sheet]");
    else
        find(Severity::note, said<"storage">(),
             said<"a charger left on lead-acid must hold its float voltage, not its absorption "
                  "voltage">(),
             said<"look at it each month: for 12 V packs it holds {voltage} at {temperature}">(
                 13.5 * volt, celsius(25.0)),
             "[Flooded 225 Ah sheet], [AGM 100 Ah sheet]");
}

void Keeper::judge_all() {
    for (const auto& pack : told.packs) {
        judge_charge(pack);
        judge_frost(pack);
        judge_keeping(pack);
    }
    judge_drain();
    judge_charger();
}

}  // namespace

StateOfCharge charge_after(const Keeping& keeping, Duration time) {
    const double months = time / month;
    const double k = rate_of(keeping);
    const double d = drained_a_month(keeping);
    const double x = k * months;
    // (1 - exp(-x))/k, which goes over into the time itself
    const double once = k > 0.0 ? -std::expm1(-x) / k : months;
    return StateOfCharge(std::max(0.0, keeping.start.value() * std::exp(-x) - d * once));
}

std::optional<Duration> time_until(const Keeping& keeping, StateOfCharge charge) {
    const double k = rate_of(keeping);
    const double d = drained_a_month(keeping);
    const double from = keeping.start.value();
    const double to = charge.value();
    if (from <= to) return Duration{};
    if (!(k > 0.0)) return d > 0.0 ? std::optional((from - to) / d * month) : std::nullopt;
    if (!(k * to + d > 0.0)) return std::nullopt;
    return std::log((k * from + d) / (k * to + d)) / k * month;
}

Result<Stored> storage(const scenario::Scenario& scenario, std::optional<LocalTime> on) {
    if (!scenario.storage)
        return fail(
            {.where = "storage",
             .found = said<"the file does not say how the unit is stored">(),
             .remedy = said<"add [storage], and on the next line since = 2026-04-01, the day on "
                            "which it was put away">()});
    Keeper keeper{.scenario = scenario, .asked = *scenario.storage};
    keeper.conditions();
    keeper.told.on = on.value_or(scenario.outage.starts);
    if (!on)
        keeper.assume("--on",
                      said<"the date is when the outage starts, {date}">(date(keeper.told.on)),
                      said<"the scenario file">());
    if (keeper.told.on < keeper.told.since)
        return fail({.where = on ? "--on" : "outage.starts",
                     .found = said<"{date} is before it was put away, on {since}">(
                         date(keeper.told.on), date(keeper.told.since)),
                     .remedy = said<"give a date after storage.since">()});
    if (auto errors = keeper.packs(); !errors.empty()) return fail(std::move(errors));
    keeper.sums();
    keeper.month_by_month();
    keeper.judge_all();
    return std::move(keeper.told);
}

scenario::Scenario after_storage(scenario::Scenario scenario, const Stored& stored) {
    for (Pack& pack : scenario.packs) {
        const auto found = std::ranges::find(stored.packs, pack.name, &StoredPack::name);
        if (found == stored.packs.end()) continue;
        pack.charge = found->now;
        pack.rested_voltage.reset();
    }
    return scenario;
}

}  // namespace handling
