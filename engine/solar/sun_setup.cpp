#include "solar/sun_setup.hpp"

#include "solar/places/places.hpp"
#include "solar/snow_days.hpp"
#include "solar/weather/file_snow.hpp"
#include "units/said.hpp"

namespace solar {

namespace {

using namespace units;
using words::Said;
using words::said;
using words::with_decimals;

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

Said on_files() {
    return said<"solar/method.md, section 6">();
}

void warn_of_distance(const WeatherYear& year, const Site& site, scenario::Findings& findings) {
    const Length apart = distance_between(year.at, site.at);
    const Length height = abs(year.elevation - site.elevation);
    if (apart <= farthest_of_its_kind && height <= highest_of_its_kind) return;
    findings.push_back(
        {.severity = scenario::Severity::caution,
         .where = "place.weather_file",
         .text = said<"the weather file is of {station}, {distance} and {height} of height away; "
                      "sky and fog can differ over such a distance">(
             year.station, amount_in(apart, "km", 0), amount_in(height, "m", 0)),
         .mend = said<"take the file of a nearer station, or give place.irradiation for the spot "
                      "itself">(),
         .source = on_files()});
}

void warn_of_the_file(const WeatherSummary& sums, SunSetup& setup) {
    for (const Oddity& odd : oddities_of(sums))
        setup.findings.push_back({.severity = odd.severity,
                                  .where = "place.weather_file",
                                  .text = odd.text,
                                  .mend = odd.mend,
                                  .source = on_files()});
}

void note(SunSetup& setup, const char* where, Said text) {
    setup.findings.push_back({.severity = scenario::Severity::note,
                              .where = where,
                              .text = std::move(text),
                              .mend = "",
                              .source = on_files()});
}

// What was typed and what the file says beside it: never one for the other unspoken.
void tell_file_from_typed(const scenario::Scenario& scenario, SunSetup& setup) {
    const WeatherYear& year = *setup.hours;
    const Duration apart = setup.site.utc_offset - year.utc_offset;
    if (std::abs(apart / hour) > 1e-6)
        note(setup, "place.utc_offset",
             said<"the clock of the scenario is UTC{ours}, that of the weather file UTC{its}; the "
                  "file's hours are read by its own clock, the times here are those of the "
                  "scenario's">(offset_in_words(setup.site.utc_offset),
                                offset_in_words(year.utc_offset)));
    const Said no_use =
        said<"changes nothing beside a weather file: the sky is that of the file's own days">();
    if (scenario.outage.cause && *scenario.outage.cause != scenario::Cause::unknown)
        note(setup, "outage.cause", no_use);
    if (!scenario.outage.sky.empty()) note(setup, "outage.sky", no_use);
    if (scenario.place.ground_reflectance) return;
    const auto ground = mean_ground(year);
    if (!ground) return;
    std::erase_if(setup.assumptions, [](const scenario::Assumption& assumption) {
        return assumption.where == "place.ground_reflectance";
    });
    setup.assumptions.push_back(
        {"place.ground_reflectance",
         said<"that of the weather file, hour by hour, {mean} on the mean of its days; {otherwise} "
              "in hours that give none">(with_decimals(ground->value(), 2),
                                         with_decimals(setup.site.ground.value(), 2)),
         said<"weather file of {station}">(year.station)});
}

// Figures made from the file are refused at the file: nobody typed them.
Errors at_the_file(const scenario::Place& typed, Errors errors) {
    for (Error& error : errors) {
        const bool of_light = error.where.starts_with("place.irradiation") && !typed.irradiation;
        if (!of_light) continue;
        error.where = "place.weather_file";
        error.remedy = said<
            "the file's light does not fit the latitude typed; take the file of a nearer "
            "station">();
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
        setup.findings.push_back(
            {.severity = scenario::Severity::caution,
             .where = fmt::format("panel[{}].tilt", i),
             .text = said<"changes nothing: these panels lie flat">(),
             .mend = said<"say {placement} where they stand tilted">("placement = \"fixed\""),
             .source = said<"solar/method.md, section 3">()});
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

// How often it falls in the worst month, where no weather file says when.
Said how_often(const SnowOfMonth& worst, bool file_is_silent) {
    const words::Number days = with_decimals(100.0 * worst.falls.value(), 0);
    if (!file_is_silent) return said<"on about {days} days in 100">(days);
    return said<"on about {days} days in 100, drawn, since the weather file tells of no snow,">(
        days);
}

constexpr Length inch = 0.0254 * metre;

//   by_the_file  it is the weather file that tells when snow falls
void tell_snow(SunSetup& setup, std::string where, const std::vector<SnowOfMonth>& months,
               bool by_the_file) {
    const auto worst = std::ranges::max_element(
        months, {}, [](const SnowOfMonth& of) { return of.falls.value() * of.lies; });
    const Said often =
        by_the_file ? said<
                          "on {days} in 100 of the days that the start dates meet, by the depth "
                          "in the weather file,">(with_decimals(100.0 * worst->falls.value(), 0))
                    : how_often(*worst, setup.hours != nullptr);
    setup.assumptions.push_back(
        {std::move(where),
         said<"false: {depth} of snow or more falls {often} and covers these panels for {days} "
              "days; the likely course is without snow">(units::amount(inch, 2), often,
                                                         with_decimals(worst->lies, 1)),
         by_the_file ? said<"{source}">("[EPW]; [Townsend Powers 2011]")
                     : said<"[Twin Cities snow]; [Townsend Powers 2011]; that snow is as frequent "
                            "elsewhere at the same warmth is ours">()});
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
        setup.site.source = said<"hourly weather file of {station}">(setup.hours->station);
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
