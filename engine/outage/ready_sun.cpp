#include "outage/ready_sun.hpp"

#include "outage/weathers.hpp"
#include "solar/recharge.hpp"
#include "solar/sun_setup.hpp"
#include "solar/weather/start_dates.hpp"
#include "words/said.hpp"

namespace outage {

namespace {

using namespace units;
using words::said;

template <class T>
void append(std::vector<T>& to, const std::vector<T>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

void light_by_climate(Ready& ready) {
    const auto& sky_models = *ready.sky;
    for (const auto& [end, sky] :
         {std::pair{End::earliest, SkyEnd::dull}, std::pair{End::likely, SkyEnd::likely},
          std::pair{End::latest, SkyEnd::bright}})
        ready.sun[static_cast<std::size_t>(end)] =
            sun_changes(*ready.site, sky_models.groups, sky_models.controller, ready.outage, sky);
}

// The likely course is the file's own hours from the outage's start; the ends are those start
// dates around it that offer least and most but for a tenth; all without snow. method.md (9)
void light_by_hours(Ready& ready) {
    const auto& sky = *ready.sky;
    const auto range = solar::recharge_of_hours(sky.track, sky.controller, sky.hours);
    for (const auto& [end, number] :
         {std::pair{End::earliest, range.ranked.low}, std::pair{End::likely, solar::season_reaches},
          std::pair{End::latest, range.ranked.high}})
        ready.sun[static_cast<std::size_t>(end)] =
            sun_under(ready, solar::from_start_date(sky.hours, number));
}

}  // namespace

void make_suns(Ready& ready, const scenario::Scenario& scenario, const std::string& folder,
               Errors& errors) {
    if (scenario.panels.empty()) return;
    auto setup = solar::sun_setup(scenario, folder);
    if (!setup) {
        append(errors, setup.error());
        return;
    }
    append(ready.findings, setup->findings);
    append(ready.assumptions, setup->assumptions);
    ready.site = setup->site;
    if (setup->groups.empty()) return;
    ready.sky = std::make_shared<const SkyModels>(SkyModels{
        .track = solar::SunTrack(setup->site, setup->groups, scenario.outage.starts,
                                 scenario.outage.lasts),
        .controller = setup->controller,
        .weather = setup->hours ? solar::WeatherModel{}
                                : solar::weather_model(scenario.outage, ready.assumptions),
        .hours = setup->hours,
        .groups = setup->groups});
    light(ready);
    if (!setup->hours) return;
    ready.assumptions.push_back(
        {.where = "place.weather_file",
         .text = said<"the likely course runs on the file's own hours from the outage's date; the "
                      "spread is that of starts up to {days} days before and after, which share "
                      "days: {starts} starts are worth {independent} independent ones">(
             solar::season_reaches, solar::start_dates,
             words::with_decimals(solar::independent_start_dates(scenario.outage.lasts), 0)),
         .source = said<"ours; a file holds one year, typical or past, not the year to come; solar "
                        "method.md (49)">()});
}

void light(Ready& ready) {
    if (ready.sky->hours)
        light_by_hours(ready);
    else
        light_by_climate(ready);
}

}  // namespace outage
