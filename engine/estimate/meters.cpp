#include "estimate/meters.hpp"

#include <algorithm>
#include <cmath>

#include "demand/power.hpp"
#include "estimate/likelihood.hpp"

namespace estimate {

using namespace units;

std::optional<Power> planned_mean(const demand::PlannedLoad& load, const demand::Span& within) {
    if (!(within.until > within.from)) return std::nullopt;
    Duration on{};
    for (const demand::Strand& strand : load.strands)
        on += double(strand.items) * strand.of_power.value() *
              demand::total(demand::common(strand.on, {within}));
    if (!(on > Duration{})) return std::nullopt;
    return load.power.likely * double(on / (within.until - within.from));
}

namespace {

// What the meter on a load says so far: of the load's factor, and of the meter's own error.
struct OnLoad {
    std::size_t load = 0;
    Joint joint;
};

Normal of_factor(const Joint& joint) {
    return {.mean = joint.mean[0], .deviation = std::sqrt(std::max(0.0, joint.covariance[0][0]))};
}

OnLoad first_of(std::size_t load, const chance::Sides& sides, const MeterError& error) {
    const double deviation = 0.5 * (sides.above + sides.below);
    return {.load = load,
            .joint = {.mean = {0.0, 0.0},
                      .covariance = {{deviation * deviation, 0.0}, {0.0, error.own * error.own}}}};
}

}  // namespace

std::vector<Metered> metered(const scenario::Scenario& scenario, const Story& story,
                             const chance::World& world) {
    std::vector<Metered> all;
    std::vector<OnLoad> on_loads;
    for (const std::size_t place : story.meters) {
        const scenario::LogEntry& entry = scenario.log[place];
        const auto named = std::ranges::find(scenario.loads, *entry.load, &scenario::Load::name);
        if (named == scenario.loads.end()) continue;
        const auto load = static_cast<std::size_t>(named - scenario.loads.begin());
        const auto& planned = world.ready().demand.loads[load];
        // What was counted before the outage began is taken as it went on.
        const Duration until = entry.at - scenario.outage.starts;
        const Duration over = entry.metered->over;
        const auto plan =
            planned_mean(planned, {.from = std::max(Duration{}, until - over), .until = until});
        const Power shown = entry.metered->energy / over;
        if (!plan || !(shown > Power{})) continue;
        const MeterError error =
            meter_error(shown, planned.power.factor.value(), demand::has_compressor(*named), over,
                        chance::day_deviation(chance::day_kind_of(*named)));
        auto of = std::ranges::find(on_loads, load, &OnLoad::load);
        if (of == on_loads.end())
            of = on_loads.insert(of, first_of(load, world.draw_of(load), error));
        const Normal before = of_factor(of->joint);
        const double both[] = {1.0, 1.0};
        auto made = updated(of->joint, both, std::log(shown / *plan), error.fresh);
        of->joint = std::move(made.after);
        all.push_back({.entry = place,
                       .load = load,
                       .before = before,
                       .after = of_factor(of->joint),
                       .surprise = made.surprise});
    }
    return all;
}

}  // namespace estimate
