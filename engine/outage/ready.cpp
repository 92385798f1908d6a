#include "outage/ready.hpp"

#include "battery/pack_model.hpp"
#include "outage/demand_findings.hpp"
#include "solar/panel.hpp"

namespace outage {

namespace {

using namespace units;

template <class T>
void append(std::vector<T>& to, std::vector<T> more) {
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

// The value, or its errors among the others.
template <class T>
std::optional<T> or_errors(Result<T> result, Errors& errors) {
    if (result) return std::move(*result);
    append(errors, std::move(result.error()));
    return std::nullopt;
}

struct SunModels {
    std::vector<solar::PanelGroup> groups;
    solar::ControllerModel controller;
};

SunModels sun_models(const scenario::Scenario& scenario, const solar::Site& site,
                     scenario::Assumptions& assumptions) {
    SunModels models{.controller = solar::controller_model(scenario.controller, assumptions)};
    for (std::size_t i = 0; i < scenario.panels.size(); ++i)
        if (scenario.panels[i].count > 0)
            models.groups.push_back(solar::panel_group(scenario.panels[i],
                                                       fmt::format("panel[{}]", i), site,
                                                       scenario.outage.starts, assumptions));
    return models;
}

// Panels in the cold against what the controller withstands.
scenario::Findings cold_panels(const SunModels& models, const solar::Site& site, LocalTime starts) {
    scenario::Findings findings;
    const auto dawn = midnight_before(starts) + 6.0 * hour;
    for (const auto& group : models.groups)
        append(findings, solar::cold_voltage_check(models.controller, group.model, group.in_series,
                                                   solar::air_temperature(site, dawn)));
    return findings;
}

void make_suns(Ready& ready, const scenario::Scenario& scenario, Errors& errors) {
    if (scenario.panels.empty()) return;
    ready.site = or_errors(solar::site(scenario.place, ready.assumptions, ready.findings), errors);
    if (!ready.site) return;
    const auto models = sun_models(scenario, *ready.site, ready.assumptions);
    append(ready.findings, cold_panels(models, *ready.site, scenario.outage.starts));
    for (const auto& [end, sky] :
         {std::pair{End::earliest, SkyEnd::dull}, std::pair{End::likely, SkyEnd::likely},
          std::pair{End::latest, SkyEnd::bright}})
        ready.sun[static_cast<std::size_t>(end)] =
            sun_changes(*ready.site, models.groups, models.controller, scenario.outage, sky);
    if (models.groups.empty()) return;
    ready.sky = std::make_shared<const SkyModels>(
        SkyModels{.track = solar::SunTrack(*ready.site, models.groups, scenario.outage.starts,
                                           scenario.outage.lasts),
                  .controller = models.controller,
                  .weather = solar::weather_model(scenario.outage.cause, ready.assumptions)});
}

constexpr Temperature usual_battery_temperature = celsius(20.0);

Temperature battery_temperature(const scenario::Outage& outage,
                                scenario::Assumptions& assumptions) {
    if (outage.battery_temperature) return *outage.battery_temperature;
    assumptions.push_back({.where = "outage.battery_temperature",
                           .text = "the packs are at 20 degC throughout",
                           .source = "common practice, no source"});
    return usual_battery_temperature;
}

void make_units(Ready& ready, const scenario::Scenario& scenario, Errors& errors) {
    const auto temperature = battery_temperature(scenario.outage, ready.assumptions);
    ready.kinds = kinds_of(scenario, temperature, ready.assumptions, errors);
    const auto bus = ready.kinds.empty() ? 12.8 * volt : ready.kinds.front().model->nominal;
    std::optional<inverter::Model> inverter;
    if (scenario.inverter)
        inverter =
            or_errors(inverter::model_of(*scenario.inverter, bus, ready.assumptions), errors);
    if (count_of(ready.kinds) == 0) return;
    if (inverter) ready.shared_path = inverter->cable_resistance;
    auto like_all = unit_of(ready.kinds, ready.shared_path);
    like_all.inverter = inverter;
    ready.units = {like_all, like_all, like_all};
    append(ready.findings, joining_findings(like_all));
    if (!inverter) return;
    auto& earliest = ready.units[static_cast<std::size_t>(End::earliest)].inverter;
    auto& latest = ready.units[static_cast<std::size_t>(End::latest)].inverter;
    earliest = inverter::with_idle(*inverter, inverter->idle_high);
    latest = inverter::with_idle(*inverter, inverter->idle_low);
}

void make_demand(Ready& ready, const scenario::Scenario& scenario, Errors& errors) {
    auto demand = or_errors(plan_demand(scenario), errors);
    if (!demand) return;
    ready.demand = std::move(*demand);
    append(ready.assumptions, ready.demand.assumptions);
    for (const auto& [end, which] :
         {std::pair{End::earliest, Case::high}, std::pair{End::likely, Case::likely},
          std::pair{End::latest, Case::low}})
        ready.steps[static_cast<std::size_t>(end)] = demand_steps(ready.demand, which);
}

}  // namespace

Result<Ready> make_ready(const scenario::Scenario& scenario) {
    Ready ready{.outage = scenario.outage};
    Errors errors;
    make_units(ready, scenario, errors);
    make_demand(ready, scenario, errors);
    make_suns(ready, scenario, errors);
    if (!errors.empty()) return fail(std::move(errors));
    const auto& likely = ready.units[static_cast<std::size_t>(End::likely)];
    append(ready.findings, demand_findings(scenario, ready.demand, likely.inverter));
    const auto starts = scenario.outage.starts;
    ready.midnight = midnight_before(starts) + day - starts;
    return ready;
}

Unit with_packs(const Ready& ready, End end, int count) {
    Unit unit = unit_of(with_count(ready.kinds, count), ready.shared_path);
    unit.inverter = ready.units[static_cast<std::size_t>(end)].inverter;
    return unit;
}

Course run(const Ready& ready, End end, Keep keep, std::vector<SunOfDay>* days) {
    const auto index = static_cast<std::size_t>(end);
    return run(ready.units[index], ready.steps[index], ready.sun[index], ready.outage.lasts,
               ready.midnight, keep, days);
}

}  // namespace outage
