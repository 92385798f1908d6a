#include "support/simulated_outages.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "chance/draw.hpp"
#include "chance/unknowns.hpp"
#include "demand/hours.hpp"
#include "units/clock.hpp"

namespace simulated {

using namespace units;

namespace {

constexpr std::uint64_t meters_differ = first_seed ^ 7;  // from the truths

double rounded(double value, double digit) {
    return std::round(value / digit) * digit;
}

double value_of(const chance::World& world, chance::Values values, const std::string& name) {
    const auto found = std::ranges::find(world.names(), name);
    return found == world.names().end()
               ? 0.0
               : chance::score_of(values[std::size_t(found - world.names().begin())]);
}

std::string day_name(const scenario::Load& load, std::size_t day) {
    switch (chance::day_kind_of(load)) {
        case chance::DayKind::warm:
            return fmt::format("day/{}/warm", day);
        case chance::DayKind::cold:
            return fmt::format("day/{}/cold", day);
        case chance::DayKind::own:
            break;
    }
    return fmt::format("load/{}/day/{}", load.name, day);
}

Energy wanted(const demand::PlannedLoad& load, const demand::Span& within) {
    Energy energy{};
    for (const auto& strand : load.strands)
        energy += double(strand.items) * strand.of_power.value() * load.power.likely *
                  demand::total(demand::common(strand.on, {within}));
    return energy;
}

estimate::Lives lives_of(const scenario::Scenario& scenario, const std::string& folder,
                         const std::shared_ptr<const outage::Ready>& ready) {
    return *estimate::Lives::of(scenario, folder, ready,
                                estimate::story_of(scenario, scenario.outage.starts));
}

std::shared_ptr<const outage::Ready> ready_of(const scenario::Scenario& scenario,
                                              const std::string& folder) {
    return std::make_shared<const outage::Ready>(std::move(*outage::make_ready(scenario, folder)));
}

}  // namespace

Outages::Outages(scenario::Scenario scenario, std::string folder, int count, std::uint64_t seed)
    : scenario_(std::move(scenario)),
      folder_(std::move(folder)),
      seed_(seed),
      ready_(ready_of(scenario_, folder_)),
      truths_(sizing::members_of(scenario_, folder_, ready_, seed, count)),
      lives_(lives_of(scenario_, folder_, ready_)) {
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t load = 0; load < scenario_.loads.size(); ++load)
        order.emplace_back(
            -wanted(ready_->demand.loads[load], {.from = {}, .until = scenario_.outage.lasts}) /
                watt_hour,
            load);
    std::ranges::sort(order);
    for (const auto& [energy, load] : order)
        metered_.push_back(load);
}

// A normal score of one outage, by name.
double Outages::score(int number, const std::string& name) const {
    const auto column = chance::drawn(
        {.seed = seed_ ^ meters_differ, .number = std::uint32_t(number / chance::lanes)}, name);
    return chance::score_of(column[std::size_t(number % chance::lanes)]);
}

// Half past seven, noon and half past nine in the evening, each within the hour around it; the first
// at least three hours after the start.
std::vector<Duration> Outages::hours_of(int number, int readings) const {
    std::vector<Duration> at;
    const Duration since_midnight = time_of_day(scenario_.outage.starts);
    for (int day_number = 0; int(at.size()) < readings; ++day_number)
        for (const double clock : {7.5, 12.5, 21.5}) {
            const double away =
                std::clamp(score(number, fmt::format("hour/{}/{}", day_number, clock)), -2.0, 2.0);
            const Duration moment =
                rounded(clock + 0.25 * away + 24.0 * day_number, 1.0 / 12.0) * hour -
                since_midnight;
            if (moment >= 3.0 * hour && int(at.size()) < readings) at.push_back(moment);
        }
    return at;
}

// What a load drew so far over what the plan has: its own factor, and its days'.
double Outages::of_the_plan(int number, std::size_t load, Duration until) const {
    const auto values = truths_.values(number);
    const auto& named = scenario_.loads[load];
    const auto& planned = ready_->demand.loads[load];
    const auto& world = lives_.world();
    const double draw = chance::factor_at(
        world.draw_of(load), value_of(world, values, fmt::format("load/{}/draw", named.name)));
    const double spread = chance::day_deviation(chance::day_kind_of(named));
    Energy plan{};
    Energy drawn{};
    std::size_t day_number = 1;
    Duration from{};
    for (Duration to = ready_->midnight; from < until; to += day) {
        if (!(to > from)) continue;
        const Energy of_day = wanted(planned, {.from = from, .until = std::min(to, until)});
        plan += of_day;
        drawn +=
            of_day * draw * std::exp(spread * value_of(world, values, day_name(named, day_number)));
        from = to;
        ++day_number;
    }
    return plan > Energy{} ? double(drawn / plan) : 1.0;
}

scenario::Scenario Outages::with_log(int number, const Readings& readings, Duration& now) const {
    auto scenario = scenario_;
    const auto at = hours_of(number, readings.charges);
    now = at.empty() ? Duration{} : at.back();
    if (at.empty()) return scenario;
    const auto states = lives_.states(truths_.values(number), at);
    const auto packs = estimate::packs_read(*ready_);
    const bool lithium = packs.chemistry == scenario::Chemistry::lifepo4;
    const estimate::OwnErrors own{.meter = score(number, "volts"),
                                  .table = score(number, "table"),
                                  .display = score(number, "display"),
                                  .sun = score(number, "sun")};
    for (std::size_t j = 0; j < at.size(); ++j) {
        scenario::LogEntry entry;
        entry.at = scenario.outage.starts + at[j];
        if (lithium) {
            // 3 points, always to the same side.
            const double shown = states[j].charge.value() + 0.03 * own.display;
            entry.shows = StateOfCharge(rounded(std::clamp(shown, 0.0, 1.0), 0.01));
        } else {
            const Current drawn = 5.0 * ampere;
            const double table = 0.1 / 1.2816 * own.table;
            const double true_volts =
                (states[j].unloaded - drawn * states[j].resistance) / volt + table;
            entry.reads = scenario::VoltageShown{
                rounded(true_volts * (1.0 + 0.005 * own.meter), 0.01) * volt, 2};
            entry.under = scenario::DrawnMeanwhile{.power = {}, .current = drawn};
        }
        scenario.log.push_back(entry);
        if (!readings.sun) continue;
        scenario::LogEntry counted;
        counted.at = entry.at;
        counted.sun = scenario::SunCounted{
            rounded(states[j].sun_taken / watt_hour * (1.0 + 0.03 * own.sun), 10.0) * watt_hour};
        scenario.log.push_back(counted);
    }
    for (int meter = 0; meter < std::min(readings.meters, int(metered_.size())); ++meter) {
        const std::size_t load = metered_[std::size_t(meter)];
        const Energy plan = wanted(ready_->demand.loads[load], {.from = {}, .until = now});
        if (!(plan > Energy{})) continue;
        const Power mean = plan / now;
        const double off = mean > 20.0 * watt ? 0.05 : 0.15;
        const double true_energy = plan / watt_hour * of_the_plan(number, load, now);
        scenario::LogEntry entry;
        entry.at = scenario.outage.starts + now;
        entry.load = scenario.loads[load].name;
        const double shown = rounded(
            true_energy * std::exp(off * score(number, fmt::format("meter/{}", meter))), 10.0);
        if (!(shown > 0.0)) continue;
        entry.metered = scenario::MeteredUse{.energy = shown * watt_hour, .over = now, .room = {}};
        scenario.log.push_back(entry);
    }
    return scenario;
}

// How far the truth lies on the side that is told, above 0; in logarithms or scores.
double Outages::toward(int number, const estimate::Departure& told, Duration now) const {
    const auto values = truths_.values(number);
    const auto& world = lives_.world();
    const double side = told.likely > 1.0 ? 1.0 : -1.0;
    for (std::size_t i = 0; i < scenario_.loads.size(); ++i)
        if (told.what == words::said<"what {load} draws">(scenario_.loads[i].name))
            return side * std::log(of_the_plan(number, i, now));
    for (const auto& kind : ready_->kinds)
        if (told.what == words::said<"what {pack} holds">(kind.name))
            return -side * value_of(world, values, fmt::format("pack/{}/capacity", kind.name));
    if (told.what == words::said<"the inverter's idle draw">())
        return side * value_of(world, values, "inverter/idle");
    return -side * value_of(world, values, "sun/scale");
}

Said Outages::said(int number, const Readings& readings) const {
    Said made;
    Duration now{};
    const auto values = truths_.values(number);
    const auto end = lives_.ends({std::vector<double>(values.begin(), values.end())}, 1).front();
    const auto scenario = with_log(number, readings, now);
    if (!end.survives && end.lasts <= now) return made;
    const auto found = estimate::outlook_of(
        scenario, folder_, ready_,
        {.now = scenario.outage.starts + now, .seed = 1, .threads = 1, .steps = false});
    const auto& figures = found->figures;
    const Duration left = end.lasts - now;
    made.counts = true;
    made.inside = left >= figures.nine_in_ten && left <= figures.one_in_ten;
    made.even = made.inside;
    if (end.survives) {
        // Where in what lasts to the end it stands, nothing tells.
        const double place = 0.5 * std::erfc(-score(number, "place") / std::sqrt(2.0));
        const double share = 1.0 - figures.of.value() * place;
        made.even = share >= 0.1 && share <= 0.9;
    }
    made.width = found->width;
    made.effective = figures.effective;
    made.against = found->contradiction.has_value();
    for (const auto& told : found->departures) {
        if (told.sure == estimate::Sure::perhaps) continue;
        ++made.named;
        if (toward(number, told, now) > 0.0) continue;
        ++made.wrongly;
        made.words += std::string(told.what) + "; ";
    }
    return made;
}

}  // namespace simulated
