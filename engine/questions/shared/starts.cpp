#include "questions/shared/starts.hpp"

#include "demand/power.hpp"
#include "motor/appliances/appliances.hpp"
#include "motor/kind.hpp"
#include "scenario/file/set_aside.hpp"
#include "units/said.hpp"

namespace questions {

using units::Power;
using units::Range;

namespace {

// A motor whose plate tells its output and nothing else: output over efficiency.
std::optional<Range<Power>> from_horsepower(const scenario::Load& load) {
    if (!load.motor || !load.motor->horsepower ||
        load.motor->kind == scenario::MotorKind::direct_current)
        return std::nullopt;
    const auto& efficiency = motor::traits_of(load.motor->kind).efficiency;
    const Power output = *load.motor->horsepower;
    return units::spanning<Power>(output / efficiency.high().value(),
                                  output / efficiency.likely().value(),
                                  output / efficiency.low().value());
}

}  // namespace

units::Result<LoadRuns> load_runs(const scenario::Scenario& scenario) {
    LoadRuns found;
    units::Errors errors;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i) {
        const auto& load = scenario.loads[i];
        const auto where = scenario::key_of(load, i);
        if (!load.draw && load.motor) {
            // What runs the motor is told by its plate, or not needed for its start.
            starting::LoadRun run;
            if (const auto power = from_horsepower(load)) {
                run.draw = {.real = *power,
                            .factor = load.power_factor.value_or(
                                motor::traits_of(load.motor->kind).running_power_factor.likely())};
                found.assumptions.push_back(
                    {where + ".power",
                     words::said<"{low} to {high} once it runs, from its horsepower">(
                         words::with_decimals(power->low() / units::watt, 0),
                         units::amount_in(power->high(), "W", 0)),
                     words::said<"method.md of motor, Kinds">()});
            }
            found.runs.push_back(run);
            continue;
        }
        const auto power = demand::load_power(load, where, found.assumptions);
        if (!power) {
            errors.insert(errors.end(), power.error().begin(), power.error().end());
            continue;
        }
        found.runs.push_back(
            {.draw = {.real = units::spanning(power->low, power->likely, power->high),
                      .factor = power->factor},
             .converter = power->converter});
    }
    if (!errors.empty()) return units::fail(std::move(errors));
    return found;
}

units::Result<PlannedStarts> planned_starts(const scenario::Scenario& written) {
    auto likened = motor::with_appliances(written);
    if (!likened) return units::fail(std::move(likened.error()));
    auto runs = load_runs(likened->scenario);
    if (!runs) return units::fail(std::move(runs.error()));
    for (std::size_t i = 0; i < runs->runs.size(); ++i)
        runs->runs[i].drives = likened->drives[i];
    auto plan = starting::plan_starts(likened->scenario, runs->runs);
    if (!plan) return units::fail(plan.error());
    scenario::Assumptions assumptions = likened->assumptions;
    assumptions.insert(assumptions.end(), runs->assumptions.begin(), runs->assumptions.end());
    return PlannedStarts{std::move(likened->scenario), std::move(*plan), std::move(assumptions)};
}

}  // namespace questions
