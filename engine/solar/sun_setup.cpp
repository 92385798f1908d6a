#include "solar/sun_setup.hpp"

#include <filesystem>

namespace solar {

namespace {

using namespace units;

// What a weather file says of its place, where the person said nothing.
scenario::Place with_figures_of(const WeatherYear& year, scenario::Place place) {
    const WeatherSummary sums = summary(year);
    if (!place.name) place.name = year.station;
    if (!place.latitude) place.latitude = year.at.latitude;
    if (!place.longitude) place.longitude = year.at.longitude;
    if (!place.elevation) place.elevation = year.elevation;
    if (!place.utc_offset) place.utc_offset = year.utc_offset;
    if (!place.irradiation && !place.sunshine) place.irradiation = sums.monthly;
    if (!place.temperature) place.temperature = site_of(year).temperature;
    return place;
}

void warn_of_the_file(const WeatherYear& year, SunSetup& setup) {
    const WeatherSummary sums = summary(year);
    if (sums.missing > 0)
        setup.findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = "place.weather_file",
             .text = fmt::format("{} of {} hours have no usable light; they count as dark",
                                 sums.missing, sums.hours),
             .mend = "take a complete file",
             .source = "solar/method.md, section 6"});
    if (sums.half_an_hour_off)
        setup.findings.push_back(
            {.severity = scenario::Severity::note,
             .where = "place.weather_file",
             .text = fmt::format("the sun's height fits the light better half an hour later "
                                 "(closure {:.3f} against {:.3f})",
                                 sums.closure_at_the_hours_end, sums.closure),
             .mend = "",
             .source = "solar/method.md, section 6"});
}

// Colder than the month's mean by this much on its coldest morning: ours.
constexpr TemperatureDifference below_the_mean = 15.0 * kelvin;

void check_cold_voltage(const scenario::Scenario& scenario, SunSetup& setup) {
    const Temperature coldest =
        air_temperature(setup.site, midnight_before(scenario.outage.starts) + 2.5 * hour) -
        below_the_mean;
    for (const PanelGroup& group : setup.groups)
        for (scenario::Finding& finding :
             cold_voltage_check(setup.controller, group.model, group.in_series, coldest))
            setup.findings.push_back(std::move(finding));
}

}  // namespace

Result<SunSetup> sun_setup(const scenario::Scenario& scenario, const std::string& folder) {
    SunSetup setup;
    scenario::Place place = scenario.place;
    if (place.weather_file) {
        const auto path = std::filesystem::path(folder) / *place.weather_file;
        auto year = read_weather_file(path.string());
        if (!year) return fail(std::move(year.error()));
        setup.hours = std::make_shared<const WeatherYear>(std::move(*year));
        place = with_figures_of(*setup.hours, std::move(place));
        warn_of_the_file(*setup.hours, setup);
    }
    auto made = site(place, setup.assumptions, setup.findings);
    if (!made) return fail(std::move(made.error()));
    setup.site = std::move(*made);
    if (setup.hours)
        setup.site.source = fmt::format("hourly weather file of {}", setup.hours->station);
    for (std::size_t i = 0; i < scenario.panels.size(); ++i)
        setup.groups.push_back(panel_group(scenario.panels[i], fmt::format("panel[{}]", i),
                                           setup.site, scenario.outage.starts, setup.assumptions));
    if (setup.groups.empty()) return setup;
    setup.controller = controller_model(scenario.controller, setup.assumptions);
    check_cold_voltage(scenario, setup);
    return setup;
}

}  // namespace solar
