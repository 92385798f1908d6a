#include "outage/clock/motor_starts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "outage/ready.hpp"

namespace outage {

namespace {

using units::Duration;
using units::Power;
using units::ReactivePower;

// The last entry that holds at a moment.
template <class Entries, class Time>
const auto& holding_at(const Entries& entries, Duration moment, Time time) {
    const auto after = std::ranges::upper_bound(entries, moment, {}, time);
    return after == entries.begin() ? entries.front() : *(after - 1);
}

Power of_one(const demand::LoadPower& power, End end) {
    return end == End::earliest ? power.high : end == End::latest ? power.low : power.likely;
}

struct Others {
    Power ac{};
    ReactivePower reactive{};
    Power direct{};
};

// The whole demand of the moment less what the item itself draws once it runs.
Others others_at(const Ready& ready, const demand::PlannedLoad& load, Duration moment, End end) {
    const auto& step =
        holding_at(ready.steps[static_cast<std::size_t>(end)], moment, &demand::DemandStep::from);
    Others others{step.ac, step.ac_reactive, step.direct};
    const Power own = of_one(load.power, end);
    if (load.from == scenario::Outlet::ac) {
        const double factor = load.power.factor.value();
        const Power reactive = std::sqrt(1.0 / (factor * factor) - 1.0) * own;
        others.ac = std::max(Power{}, others.ac - own);
        others.reactive = ReactivePower(std::max(Power{}, others.reactive.amount() - reactive));
    } else {
        others.direct = std::max(Power{}, others.direct - own / load.power.converter.value());
    }
    return others;
}

void add_start(const Ready& ready, const Course& course, std::size_t load, Duration moment,
               bool with_the_supply, std::vector<MotorStart>& starts) {
    const auto& state = holding_at(course.trace, moment, &TracePoint::at);
    constexpr double nothing = 1e-9;
    if (state.wanted > (1.0 + nothing) * state.served) return;
    const auto& planned = ready.demand.loads[load];
    const auto low = others_at(ready, planned, moment, End::latest);
    const auto likely = others_at(ready, planned, moment, End::likely);
    const auto high = others_at(ready, planned, moment, End::earliest);
    starts.push_back({.at = moment,
                      .load = load,
                      .rested = state.rested,
                      .charge = state.charge,
                      .ac = {low.ac, likely.ac, high.ac},
                      .ac_reactive = {low.reactive, likely.reactive, high.reactive},
                      .direct = {low.direct, likely.direct, high.direct},
                      .with_the_supply = with_the_supply});
}

bool is_on(const demand::Strand& strand, Duration moment) {
    const auto after = std::ranges::upper_bound(strand.on, moment, {}, &demand::Span::from);
    return after != strand.on.begin() && (after - 1)->from < moment && (after - 1)->until > moment;
}

bool brings_supply(const Event& event, std::size_t load) {
    if (event.kind == EventKind::load_on_again) return event.load == load;
    return event.kind == EventKind::inverter_on_again || event.kind == EventKind::supply_back ||
           event.kind == EventKind::inverter_overload_over;
}

}  // namespace

std::vector<MotorStart> motor_starts(const Ready& ready, const Course& course) {
    std::vector<MotorStart> starts;
    if (course.trace.empty()) return starts;
    for (std::size_t i = 0; i < ready.demand.loads.size(); ++i) {
        const auto& load = ready.demand.loads[i];
        if (!load.has_motor) continue;
        for (const auto& strand : load.strands) {
            for (const auto& span : strand.on)
                for (int item = 0; item < strand.items; ++item)
                    add_start(ready, course, i, span.from, false, starts);
            for (const auto& event : course.events)
                if (brings_supply(event, i) && is_on(strand, event.at))
                    for (int item = 0; item < strand.items; ++item)
                        add_start(ready, course, i, event.at, true, starts);
        }
    }
    std::ranges::stable_sort(starts, {}, &MotorStart::at);
    return starts;
}

}  // namespace outage
