#include "outage/banks.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/bank.hpp"
#include "battery/chemistry.hpp"
#include "outage/packs.hpp"
#include "units/text.hpp"
#include "wiring/tables.hpp"

namespace outage {

using namespace units;

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
           one.charging.absorption == other.charging.absorption && one.at_start == other.at_start &&
           std::ranges::equal(one.pulse, other.pulse, same_pulse);
}

bool alike(const PackKind& a, const PackKind& b) {
    const auto same_day = [](const KindOfDay& one, const KindOfDay& other) {
        return alike(*one.model, *other.model);
    };
    return alike(*a.model, *b.model) && std::ranges::equal(a.days, b.days, same_day) &&
           a.fuse == b.fuse && std::ranges::equal(a.fuse_opens, b.fuse_opens, same_point);
}

// The fuse of a pack: by its own key, or in the circuit that feeds this pack alone, whichever is
// smaller. Only of the latter is it known when it opens.
void fuse(PackKind& kind, const scenario::Scenario& scenario, const scenario::Pack& pack) {
    kind.fuse = pack.fuse;
    for (const auto& circuit : scenario.circuits) {
        if (circuit.feeds != std::vector<std::string>{pack.name}) continue;
        for (const auto& link : circuit.links) {
            const auto* in_lead = std::get_if<scenario::Fuse>(&link);
            if (in_lead == nullptr || (kind.fuse && *kind.fuse < in_lead->rating)) continue;
            kind.fuse = in_lead->rating;
            kind.fuse_opens = wiring::envelope_of(
                *in_lead, in_lead->family ? wiring::find_fuse_family(*in_lead->family) : nullptr);
        }
    }
}

// Why the two cannot share a bus.
void refuse_strangers(const PackKind& first, const PackKind& kind, const std::string& where,
                      Errors& errors) {
    const auto& ours = battery::defaults_of(first.model->chemistry);
    const auto& theirs = battery::defaults_of(kind.model->chemistry);
    if (first.model->chemistry != kind.model->chemistry)
        errors.push_back(
            {.where = where + ".chemistry",
             .found = fmt::format("{} on one bus with {}: one would feed the other until it is "
                                  "empty, and no charger suits both",
                                  theirs.name, ours.name),
             .remedy = "plan the packs of each chemistry by themselves"});
    else if (std::abs(first.model->nominal / kind.model->nominal - 1.0) > 0.15)
        errors.push_back({.where = where + ".voltage",
                          .found = fmt::format("{} on one bus with {}", show(kind.model->nominal),
                                               show(first.model->nominal)),
                          .remedy = "join packs of one nominal voltage only"});
}

Bank bank_of(const PackKind& kind, Resistance shared) {
    const auto& model = *kind.model;
    return {.setup = battery::arranged(model, shared, {}),
            .count = kind.count,
            .rated = model.capacity,
            .usable = model.usable,
            .cut_off = model.pack_cut_off,
            .current_limit = model.current_limit,
            .pulse = model.pulse,
            .fuse = kind.fuse,
            .fuse_opens = kind.fuse_opens,
            .at_start = model.at_start,
            .name = kind.name};
}

}  // namespace

PackKinds kinds_of(const scenario::Scenario& scenario, Temperature temperature,
                   const std::vector<TemperatureFrom>& days, scenario::Assumptions& assumptions,
                   Errors& errors) {
    if (scenario.packs.empty()) {
        errors.push_back({.where = "pack",
                          .found = "there is no pack",
                          .remedy = "add a [[pack]] table with its chemistry and capacity"});
        return {};
    }
    PackKinds kinds;
    for (std::size_t i = 0; i < scenario.packs.size(); ++i) {
        const auto& pack = scenario.packs[i];
        const auto where = fmt::format("pack[{}]", i);
        auto model = battery::pack_model(pack, where, temperature, assumptions);
        if (!model) {
            errors.insert(errors.end(), model.error().begin(), model.error().end());
            continue;
        }
        PackKind kind{.model = std::make_shared<const battery::PackModel>(std::move(*model)),
                      .count = pack.count,
                      .name = pack.name};
        fuse(kind, scenario, pack);
        for (const auto& day : days) {
            scenario::Assumptions told_already;
            auto of_day = battery::pack_model(pack, where, day.temperature, told_already);
            if (!of_day) {  // one day tells why for all of them
                errors.insert(errors.end(), of_day.error().begin(), of_day.error().end());
                break;
            }
            kind.days.push_back(
                {day.from, std::make_shared<const battery::PackModel>(std::move(*of_day))});
        }
        if (!kind.days.empty()) {
            const auto [least, most] = std::ranges::minmax(
                kind.days, {}, [](const KindOfDay& day) { return day.model->reachable.value(); });
            assumptions.push_back(
                {where + ".chemistry",
                 fmt::format("{:.0f} to {:.0f} % of the charge can be drawn, by the day's warmth; "
                             "the other figures here are those of the mean",
                             100.0 * least.model->reachable.value(),
                             100.0 * most.model->reachable.value()),
                 "outage/method.md (10)"});
        }
        if (!kinds.empty()) refuse_strangers(kinds.front(), kind, where, errors);
        const auto same =
            std::ranges::find_if(kinds, [&](const PackKind& other) { return alike(kind, other); });
        if (same == kinds.end())
            kinds.push_back(std::move(kind));
        else
            same->count += pack.count;
    }
    if (!kinds.empty() && count_of(kinds) == 0)
        errors.push_back({.where = "pack.count",
                          .found = "there is no pack: every count is 0",
                          .remedy = "give at least one [[pack]] a count of 1"});
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
                                 .reachable = model.reachable,
                                 .charging = model.charging,
                                 .current_limit = model.current_limit,
                                 .pulse = model.pulse});
        }
        days.push_back(std::move(day));
    }
    return days;
}

}  // namespace

Unit unit_of(const PackKinds& kinds, Resistance shared) {
    PackKinds present;
    std::ranges::copy_if(kinds, std::back_inserter(present),
                         [](const PackKind& kind) { return kind.count > 0; });
    assert(!present.empty());
    Unit unit{.days = days_of(present)};
    if (present.size() == 1) {
        unit.bank = bank_of(present.front(), static_cast<double>(present.front().count) * shared);
        return unit;
    }
    unit.shared = shared;
    unit.bank = bank_of(present.front(), Resistance{});
    for (std::size_t i = 1; i < present.size(); ++i)
        unit.others.push_back(bank_of(present[i], Resistance{}));
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
        if (too_fast || too_much)
            findings.push_back(
                {.severity = scenario::Severity::caution,
                 .where = "pack " + bank.name,
                 .text = fmt::format("joined as they are, {} flow {} it at first, and it bears {}",
                                     show(abs(current), 2), too_fast ? "into" : "out of",
                                     show(too_fast ? *charging.largest : *limit, 2)),
                 .mend = "ask candlemark join before you plug them together",
                 .source = "battery method.md (26)"});
    }
    return findings;
}

}  // namespace outage
