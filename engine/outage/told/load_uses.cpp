#include "outage/told/load_uses.hpp"

#include <algorithm>
#include <cmath>

namespace outage {

using units::Duration;
using units::hour;

namespace {

// Each hour takes the part of the spans that lies in it.
void add_to_hours(std::vector<units::Energy>& hours, const demand::Spans& on, units::Power power) {
    for (const demand::Span& span : on) {
        const double first = std::floor(double(span.from / hour));
        for (auto number = static_cast<std::size_t>(first); number < hours.size(); ++number) {
            const Duration begins = double(number) * hour;
            if (begins >= span.until) break;
            const Duration from = std::max(span.from, begins);
            const Duration until = std::min(span.until, begins + 1.0 * hour);
            if (until > from) hours[number] += power * (until - from);
        }
    }
}

std::vector<units::Energy> by_the_hour(const demand::PlannedLoad& load, Duration lasts) {
    std::vector<units::Energy> hours(static_cast<std::size_t>(std::ceil(double(lasts / hour))));
    for (const demand::Strand& strand : load.strands)
        add_to_hours(hours, strand.on,
                     double(strand.items) * strand.of_power.value() * load.power.likely);
    return hours;
}

}  // namespace

std::vector<LoadUse> load_uses(const demand::Demand& demand) {
    std::vector<LoadUse> uses;
    for (const demand::PlannedLoad& load : demand.loads) {
        const double count = load.count;
        Duration of_all_items{};
        Duration at_full_power{};
        for (const demand::Strand& strand : load.strands) {
            const Duration on = static_cast<double>(strand.items) * demand::total(strand.on);
            of_all_items += on;
            at_full_power += strand.of_power.value() * on;
        }
        const units::Energy wanted = load.power.likely * at_full_power;
        uses.push_back({.name = load.name,
                        .from = load.from,
                        .priority = load.priority,
                        .count = load.count,
                        .running_low = count * load.power.low,
                        .running = count * load.power.likely,
                        .running_high = count * load.power.high,
                        .wanted = wanted,
                        .per_day = wanted * (units::day / demand.lasts),
                        .on_time = of_all_items / count,
                        .from_what = load.power.from_what,
                        .hours = by_the_hour(load, demand.lasts)});
    }
    return uses;
}

}  // namespace outage
