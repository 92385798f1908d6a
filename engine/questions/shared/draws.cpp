#include "questions/shared/draws.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "demand/demand.hpp"
#include "demand/power.hpp"

namespace questions {

namespace {

using demand::Demand;
using demand::DemandStep;
using fitting::Draw;
using units::Power;

constexpr units::Duration continuous_for = 3.0 * units::hour;  // [NEC] article 100

// The highest power, and the highest that is held or exceeded for 3 h at a stretch.
template <class PowerOf>
Draw draw_of(const std::vector<DemandStep>& steps, units::Duration lasts, PowerOf power_of) {
    std::set<double> levels;
    for (const DemandStep& step : steps) {
        levels.insert(power_of(step) / units::watt);
    }
    Draw draw;
    const Power highest = levels.empty() ? Power() : *levels.rbegin() * units::watt;
    for (auto level = levels.rbegin(); level != levels.rend(); ++level) {
        const Power held = *level * units::watt;
        std::optional<units::Duration> since;
        bool enough = false;
        for (std::size_t i = 0; i <= steps.size() && !enough; ++i) {
            const units::Duration at = i < steps.size() ? steps[i].from : lasts;
            const bool still = i < steps.size() && power_of(steps[i]) >= held;
            // An outage shorter than 3 h counts as if it went on.
            const auto needed = std::min(continuous_for, lasts);
            enough = since && at - *since >= needed && !still;
            enough = enough || (since && i == steps.size() && at - *since >= needed);
            if (still && !since) {
                since = at;
            } else if (!still) {
                since.reset();
            }
        }
        if (enough) {
            draw.continuous = held;
            break;
        }
    }
    draw.further = highest - draw.continuous;
    return draw;
}

Power apparent(const DemandStep& step) {
    return std::hypot(step.ac / units::watt, step.ac_reactive / units::ReactivePower(units::watt)) *
           units::watt;
}

Power direct(const DemandStep& step) {
    return step.direct;
}

Demand only(const Demand& demand, const std::vector<std::string>& names) {
    Demand part = demand;
    std::erase_if(part.loads, [&names](const demand::PlannedLoad& load) {
        return std::ranges::find(names, load.name) == names.end();
    });
    return part;
}

bool is_critical(const scenario::Load& load) {
    return demand::is_medical(load) || load.priority <= 2;
}

}  // namespace

units::Result<fitting::Draws> draws_of(const scenario::Scenario& scenario) {
    const auto demand = demand::plan_demand(scenario);
    if (!demand) {
        return units::fail(demand.error());
    }
    fitting::Draws draws;
    const auto all = demand::demand_steps(*demand, demand::Case::high);
    draws.ac = draw_of(all, demand->lasts, apparent);
    draws.direct = draw_of(all, demand->lasts, direct);
    for (const scenario::Circuit& circuit : scenario.circuits) {
        const auto steps = demand::demand_steps(only(*demand, circuit.feeds), demand::Case::high);
        fitting::CircuitDraw draw{.circuit = circuit.name,
                                  .at_bus = draw_of(steps, demand->lasts, direct),
                                  .at_outlet = draw_of(steps, demand->lasts, apparent)};
        for (const scenario::Load& load : scenario.loads) {
            const bool fed = std::ranges::find(circuit.feeds, load.name) != circuit.feeds.end();
            draw.critical = draw.critical || (fed && is_critical(load));
            draw.starts_motors = draw.starts_motors || (fed && load.motor.has_value());
        }
        draws.circuits.push_back(std::move(draw));
    }
    for (const scenario::Load& load : scenario.loads) {
        const bool fed = std::ranges::any_of(scenario.circuits, [&](const auto& circuit) {
            return std::ranges::find(circuit.feeds, load.name) != circuit.feeds.end();
        });
        if (!fed && load.from != scenario::Outlet::ac) {
            draws.without_circuit.push_back(load.name);
        }
    }
    return draws;
}

}  // namespace questions
