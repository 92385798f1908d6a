#include "demand/size.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "scenario/set_aside.hpp"
#include "units/text.hpp"

namespace demand {

namespace {

using namespace units;

int strands_of(const scenario::Load& load) {
    return load.runs ? std::min(load.count, most_strands) : 1;
}

double switchings_of(const scenario::Load& load, const scenario::Outage& outage) {
    const double days = std::ceil(outage.lasts / day) + 1.0;
    const double spans = days * static_cast<double>(std::max<std::size_t>(1, load.hours.size()));
    const bool cycles = load.runs && load.runs->every > load.runs->on;
    const double turns = cycles ? double(outage.lasts / load.runs->every) : 0.0;
    return 2.0 * strands_of(load) * (spans + turns);
}

}  // namespace

Errors too_many_switchings(const scenario::Scenario& scenario) {
    double all = 0.0;
    for (const auto& load : scenario.loads)
        all += switchings_of(load, scenario.outage);
    Errors errors;
    if (all <= most_switchings) return errors;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& load = scenario.loads[i];
        if (!load.runs) continue;
        const double own = switchings_of(load, scenario.outage);
        // Those that switch more than their even share; the others are not to blame.
        if (own * static_cast<double>(scenario.loads.size()) < all) continue;
        const double seconds = load.runs->every / second;
        const Duration longer = std::ceil(seconds * all / most_switchings) * second;
        errors.push_back(
            {.where = scenario::key_of(load, i) + ".runs.every",
             .found = fmt::format("found {}, so that {} switches {:.0f} times in {}, and all loads "
                                  "together {:.0f} times",
                                  show(load.runs->every), load.name, own,
                                  show(scenario.outage.lasts), all),
             .remedy = fmt::format("at most {:.0f} are worked through: give a cycle of {} or more, "
                                   "fewer loads that cycle, or a shorter outage.lasts",
                                   most_switchings, show(longer))});
    }
    return errors;
}

}  // namespace demand
