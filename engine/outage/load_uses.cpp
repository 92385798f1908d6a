#include "outage/load_uses.hpp"

namespace outage {

using units::Duration;

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
                        .from_what = load.power.from_what});
    }
    return uses;
}

}  // namespace outage
