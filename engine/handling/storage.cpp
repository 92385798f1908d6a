#include "handling/storage.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/chemistry.hpp"
#include "battery/freezing.hpp"
#include "unit/built.hpp"
#include "units/clock.hpp"
#include "units/text.hpp"

namespace handling {

using namespace units;
using scenario::Chemistry;
using scenario::Pack;
using scenario::Severity;

namespace {

constexpr std::string_view practice = "common practice, no source";
constexpr Current usual_drain = 0.010 * ampere;
constexpr Duration far_ahead = 3652.5 * day;

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

std::string date(LocalTime time) {
    return print(time).substr(0, 10);
}

struct Keeper {
    const scenario::Scenario& scenario;
    const scenario::Storage& asked;
    Stored told;

    void assume(std::string where, std::string text, std::string_view source) {
        told.assumptions.push_back({std::move(where), std::move(text), std::string(source)});
    }
    void find(Severity severity, std::string where, std::string text, std::string mend,
              std::string_view source) {
        told.findings.push_back(
            {severity, std::move(where), std::move(text), std::move(mend), std::string(source)});
    }

    void conditions();
    Errors packs();
    void sums();
    void judge(const StoredPack& pack);
    void judge_frost(const StoredPack& pack);
    void judge_all();
};

void Keeper::conditions() {
    told.since = asked.since;
    told.temperature = asked.temperature.value_or(celsius(20.0));
    if (!asked.temperature) assume("storage.temperature", "stored at 20 degC", practice);
    told.switch_open = asked.master_switch_open.value_or(false);
    if (!asked.master_switch_open)
        assume("storage.master_switch_open", "the master switch is left closed", practice);
    told.drain = asked.drain.value_or(usual_drain);
    if (!asked.drain)
        assume("storage.drain",
               "10 mA stay on while the master switch is closed: a voltmeter and a pack's own "
               "electronics",
               practice);
    told.maintained = asked.maintained.value_or(false);
    if (!asked.maintained) assume("storage.maintained", "no charger is left on it", practice);
}

Errors Keeper::packs() {
    Errors errors;
    Charge whole{};
    for (const Pack& pack : scenario.packs)
        whole += static_cast<double>(pack.count) * pack.capacity;
    // 25 degC is what ratings are stated at.
    const auto built = unit::built(scenario, {.packs = celsius(25.0)});
    if (!built) return built.error();
    for (const unit::Packs& one : built->packs) {
        const Pack& pack = scenario.packs[one.index];
        if (one.count < 1) continue;
        const std::string& where = one.where;
        const auto& model = one.model;
        const auto& defaults = battery::defaults_of(pack.chemistry);
        Share a_month;
        if (asked.self_discharge_per_month) {
            a_month = *asked.self_discharge_per_month;
        } else {
            a_month = at_temperature(defaults.self_discharge.value, told.temperature);
            assume(where,
                   fmt::format("loses {} of its charge a month at {} by itself", show(a_month, 2),
                               show(told.temperature)),
                   defaults.self_discharge.source);
        }
        StoredPack stored{.name = pack.name,
                          .count = pack.count,
                          .chemistry = pack.chemistry,
                          .keeping = {.start = battery::shown(
                                          battery::charge_left(model->capacity, model->at_start)),
                                      .a_month = a_month,
                                      .drain = pack.capacity / whole * told.drain,
                                      .capacity = model->capacity},
                          .top_up_at = StateOfCharge(is_lead(pack.chemistry) ? 0.80 : 0.20),
                          .ready_from = StateOfCharge(is_lead(pack.chemistry) ? 0.80 : 0.50)};
        if (!pack.charge && !pack.rested_voltage)
            assume(where + ".charge", "put away full", practice);
        told.packs.push_back(std::move(stored));
    }
    if (told.packs.empty() && errors.empty())
        errors.push_back({.where = "pack",
                          .found = "there is no pack to store",
                          .remedy = "add a [[pack]] table with its chemistry and capacity"});
    if (scenario.packs.size() > 1 || (!scenario.packs.empty() && scenario.packs[0].count > 1))
        assume("storage.drain", "shared by all packs by their size: they are stored joined",
               practice);
    return errors;
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

// Frozen, or near it on the date asked for; and what the packs must not fall below in such cold.
void Keeper::judge_frost(const StoredPack& pack) {
    const auto freezing = battery::freezing_point(pack.chemistry, pack.now);
    if (!freezing || !(told.temperature < celsius(0.0))) return;
    const auto where = "pack " + pack.name;
    constexpr StateOfCharge usual_least(0.60);  // common practice, no source
    const auto least = battery::freezes_below(pack.chemistry, told.temperature);
    const auto mend = fmt::format("keep it above {} or above 0 degC",
                                  show(std::max(usual_least, least.value_or(usual_least)), 2));
    if (told.temperature <= *freezing)
        find(Severity::stop, where,
             fmt::format("at {} the acid freezes below {}, and {} is left: the case may break",
                         show(told.temperature), show(least.value_or(pack.now), 2),
                         show(pack.now, 2)),
             mend + "; thaw a frozen one before it is charged",
             "battery method.md (50), [Acid freezing]");
    else if (pack.now < usual_least || told.temperature <= *freezing + battery::near_freezing)
        find(Severity::caution, where,
             fmt::format("at {} and {} full the acid is near freezing ({})", show(told.temperature),
                         show(pack.now, 2), show(*freezing)),
             mend, "battery method.md (50), [Acid freezing]");
}

void Keeper::judge(const StoredPack& pack) {
    const auto where = "pack " + pack.name;
    if (pack.now < pack.top_up_at)
        find(Severity::stop, where,
             fmt::format("{} is left on {}, below the {} at which {}", show(pack.now, 2),
                         date(told.on), show(pack.top_up_at),
                         is_lead(pack.chemistry)
                             ? "lead plates begin to sulphate"
                             : "the pack's own draw may empty it for good within weeks"),
             is_lead(pack.chemistry) ? "charge it full now, and sooner next time"
                                     : "charge it to about half now, and sooner next time",
             is_lead(pack.chemistry) ? "[Storage table]" : practice);
    else if (pack.now < pack.ready_from)
        find(Severity::caution, where,
             fmt::format("{} is left on {}; an outage wants {} or more", show(pack.now, 2),
                         date(told.on), show(pack.ready_from)),
             "top it up before you rely on it", practice);
    if (!is_lead(pack.chemistry) && pack.keeping.start > StateOfCharge(0.90) && !told.maintained)
        find(Severity::note, where, "LiFePO4 ages less when it is stored about half full than full",
             "store it at about 50 %, 13.2 V at rest, and charge it when an outage is announced",
             "[LFP 100 sheet]");
    judge_frost(pack);
    if (in_celsius(told.temperature) > 30.0)
        find(Severity::caution, where,
             fmt::format("at {} a pack ages and loses charge about twice as fast for each 10 K "
                         "above 20 degC",
                         show(told.temperature)),
             "store it cooler", "[Storage table]");
    const Duration time = told.on - told.since;
    const double longest = pack.chemistry == Chemistry::flooded ? 4.0 : 6.0;
    if (is_lead(pack.chemistry) && !told.maintained && time > longest * month)
        find(Severity::caution, where,
             fmt::format("stored {:.0f} months without a charge; {} for at most {:.0f}",
                         time / month, battery::defaults_of(pack.chemistry).name, longest),
             "charge it full, and check it under load before you rely on it", "[Storage table]");
}

void Keeper::judge_all() {
    for (const auto& pack : told.packs)
        judge(pack);
    if (!told.maintained && !told.switch_open && told.drain > Current{} &&
        told.drained > told.self_discharged)
        find(Severity::caution, "storage",
             fmt::format("what is left switched on takes more than the packs lose by themselves: "
                         "{} against {}",
                         show(told.drained, 2), show(told.self_discharged, 2)),
             fmt::format("open the master switch: then {} is left on {}",
                         show(told.charge_switch_open, 2), date(told.on)),
             practice);
    if (told.maintained) {
        const bool lithium = std::ranges::any_of(
            told.packs, [](const StoredPack& pack) { return !is_lead(pack.chemistry); });
        find(Severity::note, "storage",
             lithium ? "LiFePO4 needs no charger through storage, and ages on one"
                     : "a charger left on lead-acid must hold its float voltage, not its "
                       "absorption voltage; look at it each month",
             lithium ? "store it at about half, and top it up twice a year"
                     : "13.5 V for 12 V packs at 25 degC",
             lithium ? "[LFP 100 sheet]" : "[T-105 sheet], [MA12-100 sheet]");
    }
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
        return fail({.where = "storage",
                     .found = "the file does not say how the unit is stored",
                     .remedy = "add [storage], and on the next line since = 2026-04-01, the day on "
                               "which it was put away"});
    Keeper keeper{.scenario = scenario, .asked = *scenario.storage};
    keeper.conditions();
    keeper.told.on = on.value_or(scenario.outage.starts);
    if (!on)
        keeper.assume("--on",
                      fmt::format("the date is when the outage starts, {}", date(keeper.told.on)),
                      "the scenario file");
    if (keeper.told.on < keeper.told.since)
        return fail({.where = on ? "--on" : "outage.starts",
                     .found = fmt::format("{} is before it was put away, {}", date(keeper.told.on),
                                          date(keeper.told.since)),
                     .remedy = "give a date after storage.since"});
    if (auto errors = keeper.packs(); !errors.empty()) return fail(std::move(errors));
    keeper.sums();
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
