#include "outage/clock/banks.hpp"

#include <algorithm>
#include <cmath>

#include "battery/bank.hpp"
#include "outage/clock/packs.hpp"
#include "units/said.hpp"

namespace outage {

using namespace units;
using words::said;

namespace {

bool same_pulse(const scenario::PulseLimit& one, const scenario::PulseLimit& other) {
    return one.current == other.current && one.lasts == other.lasts;
}
bool same_point(const wiring::OpeningPoint& one, const wiring::OpeningPoint& other) {
    return one.ratio == other.ratio && one.least == other.least;
}

bool alike(const battery::PackModel& one, const battery::PackModel& other) {
    return one.chemistry == other.chemistry && one.kinetics == other.kinetics &&
           one.capacity == other.capacity && one.usable == other.usable &&
           one.inner == other.inner && one.lead == other.lead && one.nominal == other.nominal &&
           one.current_limit == other.current_limit && one.pack_cut_off == other.pack_cut_off &&
           one.charging.allowed == other.charging.allowed &&
           one.charging.largest == other.charging.largest &&
           one.charging.absorption == other.charging.absorption &&
           one.charging.resistance == other.charging.resistance && one.at_start == other.at_start &&
           std::ranges::equal(one.pulse, other.pulse, same_pulse);
}

bool alike(const unit::Guard& one, const unit::Guard& other) {
    return one.rating == other.rating && one.kept.hard == other.kept.hard &&
           std::ranges::equal(one.opens, other.opens, same_point);
}

bool alike(const PackKind& a, const PackKind& b) {
    const auto same_day = [](const unit::ModelOfDay& one, const unit::ModelOfDay& other) {
        return alike(*one.model, *other.model);
    };
    if (a.fuse.has_value() != b.fuse.has_value() || (a.fuse && !alike(*a.fuse, *b.fuse)))
        return false;
    return alike(*a.model, *b.model) && std::ranges::equal(a.days, b.days, same_day);
}

// How much can be drawn on the coldest and on the warmest day.
void tell_days(const unit::Packs& packs, scenario::Assumptions& assumptions) {
    const auto [least, most] = std::ranges::minmax(
        packs.days, {}, [](const unit::ModelOfDay& day) { return day.model->reachable.value(); });
    assumptions.push_back(
        {packs.where + ".chemistry",
         said<"{low} to {high} % of the charge can be drawn, by the day's warmth; the other "
              "figures here are those of the mean">(
             words::with_decimals(100.0 * least.model->reachable.value(), 0),
             words::with_decimals(100.0 * most.model->reachable.value(), 0)),
         "outage/method.md (10)"});
}

Bank bank_of(const PackKind& kind) {
    const auto& model = *kind.model;
    return {.setup = battery::arranged(model, {}, {}),
            .count = kind.count,
            .rated = model.capacity,
            .usable = model.usable,
            .cut_off = model.pack_cut_off,
            .current_limit = model.current_limit,
            .pulse = model.pulse,
            .fuse = kind.fuse ? std::optional(kind.fuse->rating) : std::nullopt,
            .fuse_opens = kind.fuse ? kind.fuse->opens : wiring::Envelope{},
            .fuse_kept = kind.fuse ? kind.fuse->kept.hard : 1.0,
            .at_start = model.at_start,
            .name = kind.name};
}

}  // namespace

PackKinds kinds_of(const unit::Unit& built, scenario::Assumptions& assumptions, Errors& errors) {
    if (built.packs.empty()) {
        errors.push_back(
            {.where = "pack",
             .found = said<"there is no pack">(),
             .remedy = said<"add a [[pack]] table with its chemistry and capacity">()});
        return {};
    }
    PackKinds kinds;
    for (const unit::Packs& packs : built.packs) {
        PackKind kind{
            .model = packs.model, .days = packs.days, .count = packs.count, .name = packs.name};
        PackLead lead{.name = packs.name,
                      .gives = unit::limits_of(packs, unit::Flow::out_of_pack),
                      .takes = unit::limits_of(packs, unit::Flow::into_pack)};
        if (const auto* fuse = unit::find(lead.gives, unit::Limiter::fuse)) kind.fuse = fuse->guard;
        if (packs.count > 0) kind.leads.push_back(std::move(lead));
        if (!kind.days.empty()) tell_days(packs, assumptions);
        const auto same =
            std::ranges::find_if(kinds, [&](const PackKind& other) { return alike(kind, other); });
        if (same == kinds.end()) {
            kinds.push_back(std::move(kind));
            continue;
        }
        same->count += packs.count;
        same->leads.insert(same->leads.end(), kind.leads.begin(), kind.leads.end());
    }
    const auto strangers = unit::strangers_on(built);
    errors.insert(errors.end(), strangers.begin(), strangers.end());
    if (count_of(kinds) == 0)
        errors.push_back({.where = "pack.count",
                          .found = said<"there is no pack: every count is 0">(),
                          .remedy = said<"give at least one [[pack]] a count of 1">()});
    std::ranges::stable_partition(kinds, [](const PackKind& kind) { return kind.count > 0; });
    return kinds;
}

int count_of(const PackKinds& kinds) {
    int sum = 0;
    for (const PackKind& kind : kinds)
        sum += kind.count;
    return sum;
}

namespace {

// What the temperatures of the days make of these kinds, in the order of the banks.
std::vector<DayOfUnit> days_of(const PackKinds& kinds) {
    std::vector<DayOfUnit> days;
    for (std::size_t i = 0; i < kinds.front().days.size(); ++i) {
        DayOfUnit day{.from = kinds.front().days[i].from, .banks = {}};
        for (const PackKind& kind : kinds) {
            const auto& model = *kind.days[i].model;
            day.banks.push_back({.inner = model.inner,
                                 .reachable = battery::reachable_slowly(model),
                                 .locked = model.locked,
                                 .charging = model.charging,
                                 .current_limit = model.current_limit,
                                 .pulse = model.pulse});
        }
        days.push_back(std::move(day));
    }
    return days;
}

}  // namespace

Unit unit_of(const PackKinds& kinds, Resistance main_path) {
    PackKinds present;
    std::ranges::copy_if(kinds, std::back_inserter(present),
                         [](const PackKind& kind) { return kind.count > 0; });
    assert(!present.empty());
    Unit unit{.bank = bank_of(present.front()), .main_path = main_path, .days = days_of(present)};
    for (std::size_t i = 1; i < present.size(); ++i)
        unit.others.push_back(bank_of(present[i]));
    return unit;
}

PackKinds with_count(PackKinds kinds, int packs) {
    int missing = std::max(1, packs) - count_of(kinds);
    kinds.back().count += std::max(0, missing);
    for (auto kind = kinds.rbegin(); kind != kinds.rend() && missing < 0; ++kind) {
        const int fewer = std::min(kind->count, -missing);
        kind->count -= fewer;
        missing += fewer;
    }
    return kinds;
}

scenario::Findings joining_findings(const Unit& unit) {
    scenario::Findings findings;
    if (unit.others.empty()) return findings;
    UnlikePacks packs(unit);
    (void)packs.operating_point(Duty::idle, Power{});
    std::vector<Bank> banks{unit.bank};
    banks.insert(banks.end(), unit.others.begin(), unit.others.end());
    for (std::size_t i = 0; i < banks.size(); ++i) {
        const Bank& bank = banks[i];
        const Current current = packs.current_of(i);
        const auto& charging = bank.setup.charging;
        const bool too_fast = charging.largest && -current > *charging.largest;
        const auto limit = first_limit(bank);
        const bool too_much = limit && current > *limit;
        if (!too_fast && !too_much) continue;
        const words::Amount flow = amount(Current(abs(current)), 2);
        findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = said<"pack {pack}">(bank.name),
             .text = too_fast
                         ? said<"joined as they are, {current} flow into it at first, and it bears "
                                "{limit}">(flow, amount(*charging.largest, 2))
                         : said<"joined as they are, {current} flow out of it at first, and it "
                                "bears {limit}">(flow, amount(*limit, 2)),
             .mend = said<"ask candlemark join before you plug them together">(),
             .source = said<"battery method.md (26)">()});
    }
    return findings;
}

}  // namespace outage
