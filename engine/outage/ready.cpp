#include "outage/ready.hpp"

#include <algorithm>
#include <cmath>

#include "battery/advance.hpp"
#include "battery/cell/percent.hpp"
#include "demand/findings.hpp"
#include "motor/appliances/appliances.hpp"
#include "outage/clock/branches.hpp"
#include "outage/clock/chargers.hpp"
#include "outage/ready_sun.hpp"
#include "outage/room.hpp"
#include "outage/warmth.hpp"
#include "scenario/file/open_end.hpp"
#include "unit/built.hpp"
#include "unit/usual.hpp"
#include "units/said.hpp"

namespace outage {

namespace {

using namespace units;
using words::said;

template <class T>
void append(std::vector<T>& to, std::vector<T> more) {
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

// The value, or its errors among the others.
template <class T>
std::optional<T> or_errors(Result<T> result, Errors& errors) {
    if (result) return std::move(*result);
    append(errors, std::move(result.error()));
    return std::nullopt;
}

Temperature battery_temperature(const scenario::Outage& outage,
                                const std::optional<PackWarmth>& warmth,
                                scenario::Assumptions& assumptions) {
    if (warmth) return warmth->mean;
    if (outage.battery_temperature) return *outage.battery_temperature;
    assumptions.push_back(
        {.where = "outage.battery_temperature",
         .text = said<"the packs are at {temperature} throughout">(unit::usual_pack_temperature),
         .source = said<"common practice, no source">()});
    return unit::usual_pack_temperature;
}

// When the packs' temperature changes; nothing where it does not.
std::vector<unit::TemperatureFrom> days_of(const scenario::Outage& outage,
                                           const std::optional<PackWarmth>& warmth) {
    std::vector<unit::TemperatureFrom> days;
    if (!warmth) return days;
    const auto first = midnight_before(outage.starts) - outage.starts;
    for (std::size_t i = 0; i < warmth->days.size(); ++i)
        if (days.empty() || warmth->days[i] != days.back().temperature)
            days.push_back({.from = std::max(Duration{}, first + static_cast<double>(i) * day),
                            .temperature = warmth->days[i]});
    if (days.size() == 1) days.clear();
    return days;
}

unit::Warmth unit_warmth(const scenario::Outage& outage, const std::optional<PackWarmth>& warmth,
                         scenario::Assumptions& assumptions) {
    return {.packs = battery_temperature(outage, warmth, assumptions),
            .days = days_of(outage, warmth)};
}

void make_units(Ready& ready, const scenario::Scenario& scenario,
                const std::optional<PackWarmth>& warmth, Errors& errors) {
    const unit::Warmth packs = unit_warmth(scenario.outage, warmth, ready.assumptions);
    ready.warmth = packs.days;
    if (ready.warmth.empty()) ready.warmth.push_back({.from = {}, .temperature = packs.packs});
    const auto built = or_errors(unit::built(scenario, packs), errors);
    if (!built) return;
    append(ready.assumptions, unit::assumptions_of(*built));
    append(ready.assumptions, built->of_inverter);
    append(ready.findings, built->findings);
    append(errors, built->inverter_refused);
    ready.branches = built->branches;
    ready.nominal = built->nominal();
    ready.kinds = kinds_of(*built, ready.assumptions, errors);
    if (count_of(ready.kinds) == 0) return;
    const auto& inverter = built->inverter;
    if (inverter) {
        ready.main_path = built->main.resistance.value;
        ready.main_limits = unit::limits_of(built->main);
    }
    auto like_all = unit_of(ready.kinds, ready.main_path);
    like_all.inverter = inverter;
    if (const auto& fuse = built->main.fuse; fuse && inverter)
        like_all.main_fuse = MainFuse{.rating = fuse->value.rating,
                                      .opens = fuse->value.opens,
                                      .kept = fuse->value.kept.hard};
    ready.units = {like_all, like_all, like_all};
    append(ready.findings, joining_findings(like_all));
    if (!inverter) return;
    auto& earliest = ready.units[static_cast<std::size_t>(End::earliest)].inverter;
    auto& latest = ready.units[static_cast<std::size_t>(End::latest)].inverter;
    earliest = inverter::with_idle(*inverter, inverter->idle_high);
    latest = inverter::with_idle(*inverter, inverter->idle_low);
}

demand::Case case_of(End end) {
    return end == End::earliest ? demand::Case::high
           : end == End::latest ? demand::Case::low
                                : demand::Case::likely;
}

void add_lowest_assumption(Ready& ready) {
    const bool silent =
        std::ranges::any_of(ready.demand.loads, [](const demand::PlannedLoad& load) {
            return load.from != scenario::Outlet::ac && !load.lowest;
        });
    if (!silent) return;
    ready.assumptions.push_back(
        {.where = "load.lowest_voltage",
         .text = said<"12 V and USB loads go out below {voltage} at their plug and come on again "
                      "0.3 V higher, where the file gives no lowest_voltage">(
             usual_lowest(ready.nominal)),
         .source = said<"common practice, no source">()});
}

void make_demand(Ready& ready, const scenario::Scenario& scenario, Errors& errors) {
    auto demand = or_errors(demand::plan_demand(scenario), errors);
    if (!demand) return;
    ready.demand = std::move(*demand);
    append(ready.findings, branch_findings(ready.demand, ready.branches, ready.nominal));
    append(ready.assumptions, ready.demand.assumptions);
    for (const auto end : {End::earliest, End::likely, End::latest}) {
        const auto index = static_cast<std::size_t>(end);
        ready.steps[index] = steps_of(ready, ready.demand, end);
        ready.parts[index] = parts_of(ready.demand, case_of(end), ready.branches, ready.nominal);
    }
    add_lowest_assumption(ready);
}

// The voltage at which rested packs half charged take this current, shared by all of them.
Voltage charged_at(const battery::PackModel& model, int packs, Current current) {
    const auto pack = battery::prepare(battery::arranged(model, Resistance{}, {}));
    const auto half = battery::rested_with(model.capacity, StateOfCharge(0.5));
    return battery::advance(pack, half, -current / static_cast<double>(packs), Duration{}).voltage;
}

// Generator and vehicle, as a part of the demand's steps.
void add_chargers(Ready& ready, const scenario::Scenario& scenario) {
    if (scenario.chargers.empty() && scenario.on_generator.empty()) return;
    const auto& unit = ready.units[static_cast<std::size_t>(End::likely)];
    const auto& model = *ready.kinds.front().model;
    const int packs = std::max(1, count_of(ready.kinds));
    const auto held_at = [&](Current current) { return charged_at(model, packs, current); };
    auto runs = charger_runs(scenario, held_at, model.charging.absorption.value_or(model.nominal),
                             ready.assumptions);
    ready.chargers = std::move(runs);
    for (auto& steps : ready.steps)
        steps = with_chargers(steps, ready.chargers);
    append(ready.findings, charger_findings(scenario, ready.chargers, unit));
}

// What is taken of an outage of which nobody knows how long it lasts.
void add_open_end(Ready& ready) {
    const auto& outage = ready.outage;
    if (!outage.half_over_by) return;
    if (!outage.open_ended) {
        ready.assumptions.push_back({.where = "outage.half_over_by",
                                     .text = said<"not used, for outage.lasts says how long it "
                                                  "lasts">(),
                                     .source = {}});
        return;
    }
    const auto after = std::exp(scenario::spread_of_length) * *outage.half_over_by;
    ready.assumptions.push_back(
        {.where = "outage.lasts",
         .text = said<"nobody knows: half of such outages are taken to be over within {half}, 84 "
                      "of 100 within {most}; looked at for {time}">(*outage.half_over_by, after,
                                                                    outage.lasts),
         .source = said<"{source} for the form, its spread is common practice, no source">(
             "[Ahmad 2026]")});
}

}  // namespace

unit::Warmth warmth_of(const scenario::Scenario& scenario, const std::string& folder,
                       scenario::Assumptions& assumptions) {
    return unit_warmth(scenario.outage, warmth_of_packs(scenario, folder, assumptions),
                       assumptions);
}

Ready::Ready() = default;
Ready::Ready(const Ready& other) = default;
Ready::Ready(Ready&& other) noexcept = default;
Ready& Ready::operator=(const Ready& other) = default;
Ready& Ready::operator=(Ready&& other) noexcept = default;
Ready::~Ready() = default;

Result<Ready> make_ready(const scenario::Scenario& written, const std::string& folder) {
    auto likened = motor::with_appliances(written);
    if (!likened) return fail(std::move(likened.error()));
    const scenario::Scenario& scenario = likened->scenario;
    Ready ready;
    ready.outage = scenario.outage;
    ready.assumptions = std::move(likened->assumptions);
    Errors errors;
    add_open_end(ready);
    const auto warmth = warmth_of_packs(scenario, folder, ready.assumptions);
    append(ready.findings, cold_room(days_too_cold_to_charge(scenario, warmth), warmth));
    if (warmth && !warmth->days.empty()) ready.coldest = std::ranges::min(warmth->days);
    make_units(ready, scenario, warmth, errors);
    make_demand(ready, scenario, errors);
    make_suns(ready, scenario, folder, errors);
    if (!errors.empty()) return fail(std::move(errors));
    add_chargers(ready, scenario);
    const auto& likely = ready.units[static_cast<std::size_t>(End::likely)];
    append(ready.findings, demand::demand_findings(scenario, ready.demand, likely.inverter));
    const auto starts = scenario.outage.starts;
    ready.midnight = midnight_before(starts) + day - starts;
    return ready;
}

std::vector<demand::DemandStep> steps_of(const Ready& ready, const demand::Demand& demand,
                                         End end) {
    const auto which = case_of(end);
    auto steps = with_lowest(with_branches(demand::demand_steps(demand, which), demand, which,
                                           ready.branches, ready.nominal),
                             parts_of(demand, which, ready.branches, ready.nominal));
    return ready.chargers.empty() ? steps : with_chargers(steps, ready.chargers);
}

Unit with_packs(const Ready& ready, End end, int count) {
    Unit unit = unit_of(with_count(ready.kinds, count), ready.main_path);
    unit.inverter = ready.units[static_cast<std::size_t>(end)].inverter;
    unit.main_fuse = ready.units[static_cast<std::size_t>(end)].main_fuse;
    return unit;
}

bool has_fuses(const Ready& ready) {
    return std::ranges::any_of(ready.branches,
                               [](const unit::Branch& branch) { return branch.fuse.has_value(); });
}

const Parts* guarded_loads(const Ready& ready, End end) {
    const Parts& parts = ready.parts[static_cast<std::size_t>(end)];
    return parts.may_open ? &parts : nullptr;
}

std::optional<Parts> guarded_loads(const Ready& ready, const demand::Demand& demand, End end) {
    if (!has_fuses(ready)) return std::nullopt;
    auto parts = parts_of(demand, case_of(end), ready.branches, ready.nominal);
    if (!parts.may_open) return std::nullopt;
    return parts;
}

Course run(const Ready& ready, End end, Keep keep, std::vector<SunOfDay>* days) {
    const auto index = static_cast<std::size_t>(end);
    return run(ready.units[index], ready.steps[index], ready.sun[index], ready.outage.lasts,
               ready.midnight, keep, days, &ready.parts[index]);
}

}  // namespace outage
