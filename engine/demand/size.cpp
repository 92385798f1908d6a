#include "demand/size.hpp"

#include <algorithm>
#include <cmath>

#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

namespace demand {

namespace {

using namespace units;
using words::said;

int strands_of(const scenario::Load& load) {
    return load.runs ? std::min(load.count, most_strands) : 1;
}

// Times at which a load switches in one outage: at the ends of its hours, and of its cycle.
struct Switchings {
    double by_hours = 0.0;
    double by_cycle = 0.0;
    [[nodiscard]] double all() const { return by_hours + by_cycle; }
};

Switchings switchings_of(const scenario::Load& load, const scenario::Outage& outage) {
    const double days = std::ceil(outage.lasts / day) + 1.0;
    const double spans = days * static_cast<double>(std::max<std::size_t>(1, load.hours.size()));
    const bool cycles = load.runs && load.runs->every > load.runs->on;
    const double turns = cycles ? double(outage.lasts / load.runs->every) : 0.0;
    return {2.0 * strands_of(load) * spans, 2.0 * strands_of(load) * turns};
}

// Times as long a cycle would have to be for all loads together to stay within bounds; the hours
// stay as they are. Where those alone are too many, as if they grew with it.
double times_longer(const Switchings& all) {
    if (all.by_hours < most_switchings) return all.by_cycle / (most_switchings - all.by_hours);
    return all.all() / most_switchings;
}

}  // namespace

Errors too_many_switchings(const scenario::Scenario& scenario) {
    Switchings all;
    for (const auto& load : scenario.loads) {
        const Switchings own = switchings_of(load, scenario.outage);
        all.by_hours += own.by_hours;
        all.by_cycle += own.by_cycle;
    }
    Errors errors;
    if (all.all() <= most_switchings) return errors;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& load = scenario.loads[i];
        if (!load.runs) continue;
        const double own = switchings_of(load, scenario.outage).all();
        // Those that switch more than their even share; the others are not to blame.
        if (own * static_cast<double>(scenario.loads.size()) < all.all()) continue;
        const Duration longer = std::ceil((load.runs->every / second) * times_longer(all)) * second;
        errors.push_back(
            {.where = scenario::key_of(load, i) + ".runs.every",
             .found = said<"found {cycle}, so that {load} switches {times} times in {time}, and "
                           "all loads together {all} times">(
                 load.runs->every, load.name, words::with_decimals(own, 0), scenario.outage.lasts,
                 words::with_decimals(all.all(), 0)),
             .remedy = said<"at most {most} are worked through: give a cycle of {cycle} or more, "
                            "fewer loads that cycle, or a shorter outage.lasts">(
                 words::with_decimals(most_switchings, 0), longer)});
    }
    return errors;
}

}  // namespace demand
