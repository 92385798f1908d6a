#include "questions/gauge.hpp"

#include <memory>

#include "estimate/outlook.hpp"
#include "handling/gauge.hpp"
#include "outage/ready.hpp"
#include "questions/shared/in_its_room.hpp"
#include "scenario/file/file.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace questions {

namespace {

using units::LocalTime;
using words::said;

units::Error not_within(LocalTime now, const scenario::Outage& outage) {
    return {.where = "--now",
            .found = said<"{time} is not within the outage">(units::print(now)),
            .remedy = said<"give a time between {starts} and {ends}">(
                units::print(outage.starts), units::print(outage.starts + outage.lasts))};
}

// Nothing is planned from the very end.
bool is_within(LocalTime now, const scenario::Outage& outage) {
    return !(now < outage.starts) && now < outage.starts + outage.lasts;
}

// Of the reading; common practice, no source: cheap panel meters are given as half a percent.
constexpr double usual_accuracy = 0.005;

handling::Reading reading_of(const GaugeAsked& asked) {
    const units::Voltage reads = asked.reads.volts;
    handling::Reading reading{
        .reads = reads,
        .error = half_last_digit(asked.reads) + asked.accuracy.value_or(usual_accuracy * reads),
        .rested_for = asked.rested,
        .pack = asked.pack};
    if (asked.under)
        reading.power = asked.under->current ? *asked.under->current * reads : asked.under->power;
    return reading;
}

// The reading as an entry of the log.
scenario::LogEntry entry_of(const GaugeAsked& asked) {
    constexpr units::Duration usual_rest = 8.0 * units::hour;
    scenario::LogEntry entry{
        .at = *asked.now, .pack = asked.pack, .reads = asked.reads, .under = asked.under};
    if (!asked.under) entry.rested = asked.rested.value_or(usual_rest);
    return entry;
}

// With a log the reading is one more of it, and nothing that was written down is thrown away.
units::Result<FromNow> estimate_from(scenario::Scenario scenario, const GaugeAsked& asked,
                                     const std::string& folder, std::uint64_t seed) {
    scenario.log.push_back(entry_of(asked));
    auto ready = outage::make_ready(scenario, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    const auto outlook = estimate::outlook_of(
        scenario, folder, std::make_shared<const outage::Ready>(std::move(*ready)),
        {.now = *asked.now, .seed = seed, .steps = false});
    if (!outlook) return units::fail(outlook.error());
    const auto& figures = outlook->figures;
    const auto left = scenario.outage.starts + scenario.outage.lasts - *asked.now;
    return FromNow{.now = *asked.now,
                   .left = left,
                   .lasts_low = figures.count_on,
                   .lasts = figures.half,
                   .lasts_high = figures.one_in_ten,
                   .survives_low = figures.meets_the_goal(),
                   .survives = figures.half >= left,
                   .survives_high = figures.one_in_ten >= left};
}

// What the chance makes of a start at this charge.
units::Result<chance::Figures> figures_at(const scenario::Scenario& later,
                                          const handling::Reading& reading,
                                          units::StateOfCharge charge, const std::string& folder,
                                          std::uint64_t seed) {
    constexpr int members_run = 64;
    const auto told = handling::at_charge(later, reading, charge);
    auto ready = outage::make_ready(told, folder);
    if (!ready) return units::fail(std::move(ready.error()));
    const auto members = sizing::members_of(
        told, folder, std::make_shared<const outage::Ready>(std::move(*ready)), seed, members_run);
    sizing::MemberRuns runs(members);
    return members.figures(runs.ends(), sizing::goal_of(later));
}

// Without a log: the outage that is left, begun at each of the three charges of the reading.
units::Result<FromNow> plan_from(const GaugeFound& read, LocalTime now, const std::string& folder,
                                 std::uint64_t seed) {
    auto later = read.scenario;
    const auto end = later.outage.starts + later.outage.lasts;
    later.outage.out_for = now - later.outage.starts;
    later.outage.starts = now;
    later.outage.lasts = end - now;
    const auto low = figures_at(later, read.reading, read.charge.low, folder, seed);
    const auto likely = figures_at(later, read.reading, read.charge.likely, folder, seed);
    const auto high = figures_at(later, read.reading, read.charge.high, folder, seed);
    for (const auto* figures : {&low, &likely, &high})
        if (!*figures) return units::fail(figures->error());
    return FromNow{.now = now,
                   .left = end - now,
                   .lasts_low = low->count_on,
                   .lasts = likely->half,
                   .lasts_high = high->one_in_ten,
                   .survives_low = low->count_on >= later.outage.lasts,
                   .survives = likely->half >= later.outage.lasts,
                   .survives_high = high->one_in_ten >= later.outage.lasts};
}

}  // namespace

units::Result<GaugeFound> find(const scenario::ReadScenario& read, const GaugeAsked& asked,
                               const How& how) {
    auto room = at_the_mean_from(asked.now.value_or(read.scenario.outage.starts), read);
    const auto reading = reading_of(asked);
    const auto charge = handling::gauge(room.scenario, reading);
    if (!charge) return units::fail(charge.error());
    GaugeFound found{.scenario = std::move(room.scenario),
                     .reading = reading,
                     .charge = *charge,
                     .from_now = {},
                     .assumed = std::move(room.taken)};
    if (!asked.now) return found;
    if (!is_within(*asked.now, read.scenario.outage))
        return units::fail(not_within(*asked.now, read.scenario.outage));
    const auto folder = scenario::folder_of(read.file_name);
    const auto from_now = read.scenario.log.empty()
                              ? plan_from(found, *asked.now, folder, how.seed)
                              : estimate_from(read.scenario, asked, folder, how.seed);
    if (!from_now) return units::fail(from_now.error());
    found.from_now = *from_now;
    return found;
}

}  // namespace questions
