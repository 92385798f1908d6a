#include "questions/sun.hpp"

#include <algorithm>

#include "outage/ready.hpp"
#include "scenario/file/file.hpp"
#include "scenario/keys/most.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/members_of.hpp"
#include "solar/irradiation.hpp"
#include "solar/panel.hpp"
#include "solar/sun_position.hpp"
#include "units/result.hpp"

namespace questions {

namespace {

using units::LocalTime;

// The first whole day of the outage; the day it begins where it has none.
LocalTime whole_day(const scenario::Outage& outage) {
    const LocalTime first = units::midnight_before(outage.starts);
    const LocalTime next = first + units::day;
    return outage.starts == first || outage.starts + outage.lasts <= next ? first : next;
}

SunDayCurves curves_of(const solar::SunSetup& setup, LocalTime midnight) {
    auto groups = setup.groups;
    for (auto& group : groups) {
        group.covered_days.clear();
    }
    const solar::SunTrack track(setup.site, groups, midnight, units::day);
    const auto under = [&](double darker) {
        return track.under(solar::QuantileSky{units::Probability(darker)}, setup.controller);
    };
    return {.midnight = midnight, .low = under(0.10), .likely = under(0.50), .high = under(0.90)};
}

SunOfThePlace place_of(const solar::Site& site, LocalTime midnight) {
    const auto noon = solar::solar_noon(site.at.longitude, midnight, site.utc_offset);
    const auto declination = solar::declination(units::instant(noon, site.utc_offset));
    return {.declination = declination,
            .above_horizon = solar::rise_and_set(site.at, midnight, site.utc_offset).lasts,
            .outside = solar::extraterrestrial_day(site.at.latitude, declination,
                                                   units::day_of_year(units::date_of(midnight))),
            .clearness = site.mean_clearness(midnight)};
}

std::vector<units::Temperature> cells_in_full_sun(const solar::SunSetup& setup) {
    std::vector<units::Temperature> cells;
    for (const auto& group : setup.groups)
        cells.push_back(solar::cell_temperature(group.model, 1000.0 * units::watt_per_square_metre,
                                                units::celsius(0.0)));
    return cells;
}

SunAndUnit unit_of(const scenario::Scenario& scenario, std::shared_ptr<const outage::Ready> ready,
                   const std::string& folder, const SunAsked& asked, const How& how) {
    const int now = panels_in(scenario);
    const int most =
        asked.most_panels.value_or(std::min(scenario::most_panels, std::max(6, now + 4)));
    const auto goal = sizing::goal_of(scenario);
    const auto members = sizing::members_of(scenario, folder, ready, how.seed, asked.members);
    sizing::MemberRuns runs(members);
    SunAndUnit unit{.plan = outage::plan_outage(*ready), .figures = {}, .sun = {}, .counts = {}};
    if (asked.with_counts) unit.counts = sizing::panel_counts(runs, most, goal);
    const auto own = std::ranges::find(unit.counts, now, &sizing::PanelCount::panels);
    const bool counted = own != unit.counts.end();
    unit.figures = counted ? own->figures : members.figures(runs.ends(), goal);
    unit.sun = counted ? own->sun : sizing::sun_return(members, now);
    if (unit.counts.empty()) return unit;
    unit.enough = sizing::enough_panels(unit.counts);
    unit.each_helps = sizing::each_helps(unit.counts, now);
    return unit;
}

// What loads and packs take and keep, in the place of what any weather offers.
solar::Recharge kept_of(const sizing::SunReturn& sun) {
    solar::Recharge kept{.days = {}, .whole = sun.kept, .ranked = {}};
    for (const auto& day : sun.days)
        kept.days.push_back({.midnight = day.midnight, .offered = day.taken});
    return kept;
}

// What is offered under chance weathers, where no unit can be planned that would take it.
void take_weathers(SunResults& results, const scenario::Scenario& scenario, const SunAsked& asked,
                   const How& how) {
    auto& sun = results.setup;
    const solar::SunTrack track(sun.site, sun.groups, scenario.outage.starts,
                                scenario.outage.lasts);
    if (sun.hours) {
        results.recharge = solar::recharge_of_hours(track, sun.controller, sun.hours, how.seed);
        return;
    }
    scenario::Assumptions told;
    const auto model = solar::weather_model(scenario.outage, told);
    results.recharge = solar::recharge(track, sun.site, sun.controller, model, how.seed,
                                       std::max(1, asked.weathers));
    sun.assumptions.insert(sun.assumptions.end(), told.begin(), told.end());
}

}  // namespace

int panels_in(const scenario::Scenario& scenario) {
    int panels = 0;
    for (const auto& panel : scenario.panels)
        panels += panel.count;
    return panels;
}

units::Result<SunFound> find(const scenario::ReadScenario& read, const SunAsked& asked,
                             const How& how) {
    const auto& scenario = read.scenario;
    const auto folder = scenario::folder_of(read.file_name);
    auto setup = solar::sun_setup(scenario, folder);
    if (!setup) {
        return units::fail(std::move(setup.error()));
    }
    SunFound found{.scenario = scenario,
                   .results = {.setup = std::move(*setup),
                               .recharge = {},
                               .day = {},
                               .place = {},
                               .cells_in_full_sun = {},
                               .placements = {},
                               .unit = {},
                               .why_no_unit = words::said<"there are no panels">()}};
    auto& results = found.results;
    results.day.midnight = whole_day(scenario.outage);
    if (results.setup.groups.empty()) {
        return found;
    }
    const auto& sun = results.setup;
    results.day = curves_of(sun, results.day.midnight);
    results.place = place_of(sun.site, results.day.midnight);
    results.cells_in_full_sun = cells_in_full_sun(sun);
    results.placements =
        solar::compare_placements(sun.site, sun.groups, sun.controller, results.day.midnight);
    auto made = outage::make_ready(scenario, folder);
    if (!made) {
        const units::Error& first = made.error().front();
        results.why_no_unit = words::said<"{place}: {fault}">(first.where, first.found);
        take_weathers(results, scenario, asked, how);
        return found;
    }
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    results.setup.assumptions = ready->assumptions;
    results.unit = unit_of(scenario, ready, folder, asked, how);
    results.recharge = kept_of(results.unit->sun);
    return found;
}

}  // namespace questions
