#include "abreast/segments.hpp"

#include "outage/clock/inverter_draw.hpp"
#include "outage/clock/serving.hpp"

namespace abreast {

namespace {

using namespace units;

struct Load {
    double taken = 0.0;
    bool through_inverter = false;
    bool carried = true;  // by the inverter
    Voltage cut_off{};
};

Load load_of(const outage::Unit& unit, const demand::DemandStep& demand) {
    const auto draw = outage::drawn_by_inverter(unit, demand);
    const bool through = unit.inverter && demand.inverter_on;
    return {.taken = (draw.at_bus() + demand.direct) / watt,
            .through_inverter = through,
            .carried = draw.carried,
            .cut_off = outage::cut_off_of(through, demand.lowest, draw.needs)};
}

}  // namespace

Segments segments(const outage::Unit& unit, std::span<const demand::DemandStep> demand,
                  std::span<const Duration> sun_from, Duration lasts,
                  const battery::Prepared& pack) {
    Segments made{.horizon = lasts};
    made.all.reserve(demand.size() + sun_from.size() + unit.days.size());
    std::size_t step = 0;
    std::size_t light = 0;
    std::size_t today = 0;
    Load load = load_of(unit, demand.front());
    for (Duration now{}; now < lasts;) {
        if (!load.carried) {
            made.horizon = now;
            made.lasts = false;
            break;
        }
        Duration next = lasts;
        if (step + 1 < demand.size()) next = std::min(next, demand[step + 1].from);
        if (light + 1 < sun_from.size()) next = std::min(next, sun_from[light + 1]);
        if (today + 1 < unit.days.size()) next = std::min(next, unit.days[today + 1].from);
        const double time = (next - now) / second;
        if (time > 0.0) {
            const auto decayed = battery::decay(pack.rate * time);
            made.all.push_back(
                {.time = time,
                 .taken = load.taken,
                 .charger = demand[step].charger / watt,
                 .sun_step = static_cast<int>(light),
                 .day = static_cast<int>(today),
                 .through_inverter = load.through_inverter,
                 .cut_off = load.cut_off / volt,
                 .decayed = decayed,
                 .fill_per_ampere = time * (0.5 + pack.bound_gain * decayed.twice) * pack.per_total,
                 .begins = now / second,
                 .ends = next / second});
        }
        now = next;
        const std::size_t before = step;
        while (step + 1 < demand.size() && demand[step + 1].from <= now)
            ++step;
        while (light + 1 < sun_from.size() && sun_from[light + 1] <= now)
            ++light;
        while (today + 1 < unit.days.size() && unit.days[today + 1].from <= now)
            ++today;
        if (step != before) load = load_of(unit, demand[step]);
    }
    return made;
}

}  // namespace abreast
