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

std::vector<Metered> metered(const scenario::Scenario& scenario, const Story& story,
                             const chance::World& world) {
    std::vector<Metered> all;
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
        const auto& sides = world.draw_of(load);
        Normal before{.mean = 0.0, .deviation = 0.5 * (sides.above + sides.below)};
        for (const Metered& earlier : all)
            if (earlier.load == load) before = earlier.after;
        const double error =
            meter_deviation(shown, planned.power.factor.value(), demand::has_compressor(*named),
                            over, chance::day_deviation(chance::day_kind_of(*named)));
        const auto made = updated(before, std::log(shown / *plan), error);
        all.push_back({.entry = place,
                       .load = load,
                       .before = before,
                       .after = made.after,
                       .surprise = made.surprise});
    }
    return all;
}

}  // namespace estimate
