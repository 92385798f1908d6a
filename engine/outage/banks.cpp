#include "outage/banks.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "battery/bank.hpp"
#include "battery/chemistry.hpp"
#include "outage/packs.hpp"
#include "units/text.hpp"

namespace outage {

using namespace units;

namespace {

bool alike(const PackKind& a, const PackKind& b) {
    const auto& one = *a.model;
    const auto& other = *b.model;
    return one.chemistry == other.chemistry && one.kinetics == other.kinetics &&
           one.capacity == other.capacity && one.usable == other.usable &&
           one.inner == other.inner && one.lead == other.lead && one.nominal == other.nominal &&
           one.current_limit == other.current_limit && one.pack_cut_off == other.pack_cut_off &&
           one.charging.allowed == other.charging.allowed &&
           one.charging.largest == other.charging.largest &&
           one.charging.absorption == other.charging.absorption && one.at_start == other.at_start &&
           a.fuse == b.fuse;
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
            .fuse = kind.fuse,
            .at_start = model.at_start,
            .name = kind.name};
}

}  // namespace

PackKinds kinds_of(const scenario::Scenario& scenario, Temperature temperature,
                   scenario::Assumptions& assumptions, Errors& errors) {
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
                      .fuse = pack.fuse,
                      .name = pack.name};
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

Unit unit_of(const PackKinds& kinds, Resistance shared) {
    PackKinds present;
    std::ranges::copy_if(kinds, std::back_inserter(present),
                         [](const PackKind& kind) { return kind.count > 0; });
    assert(!present.empty());
    Unit unit;
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
