#include "questions/shared/outage_chance.hpp"

#include <algorithm>
#include <cmath>

#include "outage/clock/work.hpp"
#include "sizing/builds/builds.hpp"

namespace questions {

namespace {

using namespace units;
using outage::LimitedBy;

constexpr int most_more = 16;  // packs that are tried

LimitedBy limits_at_once(const std::vector<chance::MemberEnd>& ends) {
    std::vector<chance::MemberEnd> at_once;
    std::ranges::copy_if(ends, std::back_inserter(at_once), [](const chance::MemberEnd& end) {
        return !end.survives && end.lasts < minute;
    });
    return chance::mostly_limited_by(at_once);
}

// Steps for which the store is worth following to the end: part of a second.
constexpr double most_steps_of_a_fan = 2e6;

std::optional<sizing::Fan> fan_of(const chance::Members& members, unsigned threads) {
    const auto& ready = members.world().ready();
    if (outage::steps_of_a_run(ready) * std::min(members.count(), 128) > most_steps_of_a_fan)
        return std::nullopt;
    return sizing::fan_of(members, outage::interval_of(ready.outage.lasts), threads);
}

// Ends by what the loads ask for together, the first first.
std::vector<Duration> when_they_meet(const std::vector<chance::MemberEnd>& ends) {
    std::vector<Duration> met;
    for (const auto& end : ends)
        if (!end.survives &&
            (end.limited_by == LimitedBy::inverter_limit ||
             end.limited_by == LimitedBy::pack_limit || end.limited_by == LimitedBy::fuse))
            met.push_back(end.lasts);
    std::ranges::sort(met);
    return met;
}

chance::MemberEnd corner_of(const chance::World& world, double score) {
    const auto lived = world.lived(world.corner(score));
    return chance::end_in(
        world.run(lived, world.packs(), lived.sun, {.trace = false, .after_failure = false}));
}

std::optional<sizing::SunReturn> sun_of(const chance::Members& members, unsigned threads) {
    if (!members.world().ready().sky) return std::nullopt;
    return sizing::sun_return(members, members.world().panels(), threads);
}

OutageChance without_more(const scenario::Scenario& scenario, const chance::Members& members,
                          std::span<const outage::MotorStart> starts,
                          const std::vector<chance::MemberEnd>& ends, unsigned threads) {
    constexpr double far = 2.0;  // standard deviations; chance/method.md (14)
    const auto& world = members.world();
    const auto met = world.may_meet() ? when_they_meet(ends) : std::vector<Duration>{};
    return {.figures = members.figures(ends, sizing::goal_of(scenario)),
            .limits = chance::mostly_limited_by(ends),
            .limits_at_once = limits_at_once(ends),
            .packs = world.packs(),
            .meet = Probability(double(met.size()) / double(ends.size())),
            .meet_by = met.empty() ? Duration{} : met[(met.size() - 1) / 2],
            .one_year = world.ready().sky && world.ready().sky->hours,
            .bad = corner_of(world, far),
            .good = corner_of(world, -far),
            .fan = fan_of(members, threads),
            .sun = sun_of(members, threads),
            .starts = sizing::start_states(members, starts, threads)};
}

}  // namespace

OutageChance first_chance_of_outage(const scenario::Scenario& scenario,
                                    const chance::Members& members,
                                    std::span<const outage::MotorStart> starts, unsigned threads) {
    return without_more(scenario, members, starts, sizing::MemberRuns(members).ends(threads),
                        threads);
}

OutageChance chance_of_outage(const scenario::Scenario& scenario, const chance::Members& members,
                              std::span<const outage::MotorStart> starts, unsigned threads) {
    sizing::MemberRuns runs(members);
    const auto ends = runs.ends(threads);
    OutageChance told = without_more(scenario, members, starts, ends, threads);
    if (!told.figures.meets_the_goal())
        told.more = sizing::more_packs(runs, ends, told.figures.goal, most_more, threads);
    return told;
}

}  // namespace questions
