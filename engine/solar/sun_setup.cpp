#include "solar/sun_setup.hpp"

#include "solar/file_snow.hpp"
#include "solar/places.hpp"
#include "solar/snow_days.hpp"

namespace solar {

namespace {

using namespace units;

// What a weather file says of its place, where the person said nothing.
scenario::Place with_figures_of(const WeatherYear& year, const WeatherSummary& sums,
                                scenario::Place place) {
    const bool is_built_in = place.name && known_place(*place.name).has_value();
    if (!is_built_in) {
        if (!place.name) place.name = year.station;
        if (!place.latitude) place.latitude = year.at.latitude;
        if (!place.longitude) place.longitude = year.at.longitude;
        if (!place.elevation) place.elevation = year.elevation;
        if (!place.utc_offset) place.utc_offset = year.utc_offset;
    }
    if (!place.irradiation && !place.sunshine) place.irradiation = sums.monthly;
    if (!place.temperature) place.temperature = monthly_temperature(year);
    return place;
}

void warn_of_distance(const WeatherYear& year, const Site& site, scenario::Findings& findings) {
    const Length apart = distance_between(year.at, site.at);
    const Length height = abs(year.elevation - site.elevation);
    if (apart <= farthest_of_its_kind && height <= highest_of_its_kind) return;
    findings.push_back(
        {.severity = scenario::Severity::caution,
         .where = "place.weather_file",
         .text = fmt::format("the weather file is of {}, {:.0f} km and {:.0f} m of height away; "
                             "sky and fog can differ over such a distance",
                             year.station, apart / metre / 1000.0, height / metre),
         .mend = "take the file of a nearer station, or give place.irradiation for the spot itself",
         .source = "solar/method.md, section 6"});
}

void warn_of_the_file(const WeatherSummary& sums, SunSetup& setup) {
    for (const Oddity& odd : oddities_of(sums))
        setup.findings.push_back({.severity = odd.severity,
                                  .where = "place.weather_file",
                                  .text = odd.text,
                                  .mend = odd.mend,
                                  .source = "solar/method.md, section 6"});
}

void note(SunSetup& setup, const char* where, std::string text) {
    setup.findings.push_back({.severity = scenario::Severity::note,
                              .where = where,
                              .text = std::move(text),
                              .mend = "",
                              .source = "solar/method.md, section 6"});
}

// What was typed and what the file says beside it: never one for the other unspoken.
void tell_file_from_typed(const scenario::Scenario& scenario, SunSetup& setup) {
    const WeatherYear& year = *setup.hours;
    const Duration apart = setup.site.utc_offset - year.utc_offset;
    if (std::abs(apart / hour) > 1e-6)
        note(setup, "place.utc_offset",
             fmt::format("the clock of the scenario is UTC{:+g} h, that of the weather file "
                         "UTC{:+g} h; the file's hours are read by its own clock, the times here "
                         "are those of the scenario's",
                         setup.site.utc_offset / hour, year.utc_offset / hour));
    if (scenario.outage.cause && *scenario.outage.cause != scenario::Cause::unknown)
        note(setup, "outage.cause",
             "changes nothing beside a weather file: the sky is that of the file's own days");
    if (!scenario.outage.sky.empty())
        note(setup, "outage.sky",
             "changes nothing beside a weather file: the sky is that of the file's own days");
    if (scenario.place.ground_reflectance) return;
    const auto ground = mean_ground(year);
    if (!ground) return;
    std::erase_if(setup.assumptions, [](const scenario::Assumption& assumption) {
        return assumption.where == "place.ground_reflectance";
    });
    setup.assumptions.push_back(
        {"place.ground_reflectance",
         fmt::format("that of the weather file, hour by hour, {:.2f} on the mean of its days; "
                     "{:.2f} in hours that give none",
                     ground->value(), setup.site.ground.value()),
         fmt::format("weather file of {}", year.station)});
}

// Figures made from the file are refused at the file: nobody typed them.
Errors at_the_file(const scenario::Place& typed, Errors errors) {
    for (Error& error : errors) {
        const bool of_light = error.where.starts_with("place.irradiation") && !typed.irradiation;
        if (!of_light) continue;
        error.where = "place.weather_file";
        error.remedy =
            "the file's light does not fit the latitude typed; take the file of a "
            "nearer station";
    }
    return errors;
}

// Colder than the month's mean night by this much on its coldest morning: ours.
constexpr TemperatureDifference below_the_mean = 15.0 * kelvin;

// What is typed of a plane that lies flat is not dropped unspoken.
void tell_tilt_of_flat_panels(const scenario::Scenario& scenario, SunSetup& setup) {
    for (std::size_t i = 0; i < scenario.panels.size(); ++i) {
        const scenario::Panel& panel = scenario.panels[i];
        const bool leans = panel.tilt && *panel.tilt > Angle{};
        if (panel.count <= 0 || panel.placement != scenario::Placement::flat || !leans) continue;
        setup.findings.push_back({.severity = scenario::Severity::caution,
                                  .where = fmt::format("panel[{}].tilt", i),
                                  .text = "changes nothing: these panels lie flat",
                                  .mend = "say placement = \"fixed\" where they stand tilted",
                                  .source = "solar/method.md, section 3"});
    }
}

// The coldest hour of a weather file; without one, of the month's climate.
Temperature coldest_air(const scenario::Scenario& scenario, const SunSetup& setup) {
    if (setup.file && setup.file->coldest) return *setup.file->coldest;
    return air_temperature(setup.site, midnight_before(scenario.outage.starts) + 2.5 * hour) -
           below_the_mean;
}

void check_cold_voltage(const scenario::Scenario& scenario, SunSetup& setup) {
    const Temperature coldest = coldest_air(scenario, setup);
    for (const PanelGroup& group : setup.groups)
        for (scenario::Finding& finding :
             cold_voltage_check(setup.controller, group.model, group.in_series, coldest))
            setup.findings.push_back(std::move(finding));
}

//   by_the_file  it is the weather file that tells when snow falls
void tell_snow(SunSetup& setup, std::string where, const std::vector<SnowOfMonth>& months,
               bool by_the_file) {
    const auto worst = std::ranges::max_element(
        months, {}, [](const SnowOfMonth& of) { return of.falls.value() * of.lies; });
    const std::string silent =
        setup.hours ? ", drawn, since the weather file tells of no snow," : "";
    const std::string falls =
        by_the_file
            ? fmt::format(
                  "on {:.0f} in 100 of the days that the start dates meet, by the depth in "
                  "the weather file,",
                  100.0 * worst->falls.value())
            : fmt::format("on about {:.0f} days in 100{}", 100.0 * worst->falls.value(), silent);
    setup.assumptions.push_back(
        {std::move(where),
         fmt::format("false: an inch of snow or more falls {} and covers these panels for {:.1f} "
                     "days; the likely course is without snow",
                     falls, worst->lies),
         by_the_file ? "[EPW]; [Townsend Powers 2011]"
                     : "[Twin Cities snow]; [Townsend Powers 2011]; that snow is as frequent "
                       "elsewhere at the same warmth is ours"});
}

// Snow on the panels, where a cold month may bring it and nobody says that it is taken off. Days
// named as covered stand for all the snow there is.
void count_snow(const scenario::Scenario& scenario, SunSetup& setup) {
    std::size_t next = 0;
    std::optional<Probability> told;
    if (setup.hours && !setup.hours->snowfall.empty())
        told = snowy_days(*setup.hours, scenario.outage.starts, scenario.outage.lasts);
    for (std::size_t i = 0; i < scenario.panels.size(); ++i) {
        const scenario::Panel& panel = scenario.panels[i];
        if (panel.count <= 0) continue;
        PanelGroup& group = setup.groups[next++];
        if (panel.brushed_off.value_or(false) || !panel.covered_days.empty()) continue;
        group.snow =
            snow_of_months(setup.site, group, scenario.outage.starts, scenario.outage.lasts, told);
        if (!group.snow.empty())
            tell_snow(setup, fmt::format("panel[{}].brushed_off", i), group.snow, told.has_value());
    }
}

}  // namespace

Result<SunSetup> sun_setup(const scenario::Scenario& scenario, const std::string& folder) {
    SunSetup setup;
    scenario::Place place = scenario.place;
    if (place.weather_file) {
        auto year = read_weather_of(place, folder);
        if (!year) return fail(std::move(year.error()));
        setup.hours = std::make_shared<const WeatherYear>(std::move(*year));
        setup.file = summary(*setup.hours);
        place = with_figures_of(*setup.hours, *setup.file, std::move(place));
        warn_of_the_file(*setup.file, setup);
    }
    auto made = site(place, setup.assumptions, setup.findings);
    if (!made)
        return fail(setup.hours ? at_the_file(scenario.place, std::move(made.error()))
                                : std::move(made.error()));
    setup.site = std::move(*made);
    if (setup.hours) warn_of_distance(*setup.hours, setup.site, setup.findings);
    if (setup.hours)
        setup.site.source = fmt::format("hourly weather file of {}", setup.hours->station);
    if (setup.hours) tell_file_from_typed(scenario, setup);
    for (std::size_t i = 0; i < scenario.panels.size(); ++i)
        if (scenario.panels[i].count > 0)
            setup.groups.push_back(panel_group(scenario.panels[i], fmt::format("panel[{}]", i),
                                               setup.site, scenario.outage.starts,
                                               setup.assumptions));
    if (setup.groups.empty()) return setup;
    count_snow(scenario, setup);
    tell_tilt_of_flat_panels(scenario, setup);
    setup.controller = controller_model(scenario.controller, setup.assumptions);
    check_cold_voltage(scenario, setup);
    return setup;
}

}  // namespace solar
