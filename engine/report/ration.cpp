#include "report/ration.hpp"

#include <algorithm>
#include <set>

#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "report/cautions.hpp"

namespace report {

namespace {

using scenario::Load;
using scenario::Scenario;

// Health counts first, whatever number the file gives it.
int rank_of(const Load& load) {
    return is_medical(load) ? 1 : load.priority;
}

bool uses_inverter(const Load& load) {
    return load.from == scenario::Outlet::ac;
}

units::Result<RationStep> step_of(const Scenario& scenario, const std::string& folder) {
    const auto ready = outage::make_ready(scenario, folder);
    if (!ready) {
        return units::fail(ready.error());
    }
    const outage::Keep ending{.trace = false, .after_failure = false};
    const auto likely = outage::run(*ready, outage::End::likely, ending);
    const auto hungry = outage::run(*ready, outage::End::earliest, ending);
    return RationStep{.lasts = likely.lasts,
                      .lasts_low = std::min(hungry.lasts, likely.lasts),
                      .survives = likely.survives,
                      .survives_low = hungry.survives && likely.survives};
}

// Without the loads of one rank, and with the inverter off where nothing needs it any more.
Scenario without(Scenario scenario, int rank, bool& inverter_goes) {
    std::erase_if(scenario.loads, [rank](const Load& load) { return rank_of(load) == rank; });
    inverter_goes =
        scenario.inverter.has_value() && std::ranges::none_of(scenario.loads, uses_inverter);
    if (inverter_goes) {
        scenario.inverter->off = {{.from = {}, .until = units::day}};
    }
    return scenario;
}

// What each load takes on a mean day, in the order of the scenario.
units::Result<std::vector<units::Energy>> taken_a_day(const Scenario& scenario,
                                                      const std::string& folder) {
    const auto ready = outage::make_ready(scenario, folder);
    if (!ready) {
        return units::fail(ready.error());
    }
    std::vector<units::Energy> taken;
    for (const auto& use : outage::plan_outage(*ready).loads) {
        taken.push_back(use.per_day);
    }
    return taken;
}

std::vector<RationLoad> loads_of(const Scenario& scenario, const std::vector<units::Energy>& taken,
                                 auto wanted) {
    std::vector<RationLoad> loads;
    for (std::size_t load = 0; load < scenario.loads.size(); ++load) {
        if (wanted(rank_of(scenario.loads[load]))) {
            loads.push_back({scenario.loads[load].name, taken.at(load)});
        }
    }
    return loads;
}

}  // namespace

units::Result<Ration> ration(const Scenario& scenario, const std::string& folder) {
    const auto taken = taken_a_day(scenario, folder);
    auto all_on = step_of(scenario, folder);
    if (!taken || !all_on) {
        return units::fail(taken ? all_on.error() : taken.error());
    }
    Ration ration{.all_on = std::move(*all_on)};
    std::set<int, std::greater<>> ranks;
    for (const Load& load : scenario.loads) {
        ranks.insert(rank_of(load));
    }
    Scenario left = scenario;
    bool inverter_was_off = std::ranges::none_of(scenario.loads, uses_inverter);
    for (const int rank : ranks) {
        if (rank == *ranks.rbegin()) {
            break;
        }
        bool inverter_goes = false;
        left = without(std::move(left), rank, inverter_goes);
        auto step = step_of(left, folder);
        if (!step) {
            return units::fail(step.error());
        }
        step->inverter = inverter_goes && !inverter_was_off;
        inverter_was_off = inverter_goes;
        for (const auto& load : loads_of(scenario, *taken, [rank](int of) { return of == rank; })) {
            step->off.push_back(load);
            step->per_day += load.per_day;
        }
        ration.steps.push_back(std::move(*step));
    }
    const int last = ranks.empty() ? 0 : *ranks.rbegin();
    ration.kept = loads_of(scenario, *taken, [last](int of) { return of == last; });
    ration.vital = last == 1;
    return ration;
}

}  // namespace report
