#include "report/sun_results.hpp"

#include <algorithm>

#include "outage/ready.hpp"
#include "outage/work.hpp"
#include "report/start_dates_chance.hpp"
#include "report/sun_words.hpp"
#include "scenario/most.hpp"
#include "units/result.hpp"

namespace report {

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

// Chance weathers run for each count of panels: a chance within 7 points, which tells where adding
// stops.
constexpr int weathers_a_count = 200;
// Where a run is so long that more would take too long.
constexpr int fewest_weathers = 20;
constexpr int fewest_a_count = 5;

SunAndUnit unit_of(const scenario::Scenario& scenario, const outage::Ready& ready,
                   const SunQuestion& question) {
    const int now = panels_in(scenario);
    const int most =
        question.most_panels.value_or(std::min(scenario::most_panels, std::max(6, now + 4)));
    const int weathers =
        question.weathers == usual_sun_weathers
            ? outage::weathers_within_reach(ready, question.weathers, fewest_weathers)
            : question.weathers;
    const auto counts = static_cast<double>(outage::panels_looked_at(ready, most).size());
    const int a_count =
        std::min(question.weathers,
                 outage::weathers_within_reach(ready, weathers_a_count, fewest_a_count, counts));
    auto chances = chances_of(outage::endings_in_weathers(ready, weathers, question.seed));
    if (ready.sky && ready.sky->hours) {
        chances = of_start_dates(std::move(chances), scenario.outage.lasts);
    }
    return {.plan = outage::plan_outage(ready),
            .chances = std::move(chances),
            .counts = question.with_counts
                          ? outage::panel_counts(ready, most, a_count, question.seed)
                          : std::vector<outage::PanelCount>{}};
}

}  // namespace

units::Result<SunResults> sun_results(const scenario::Scenario& scenario,
                                      const SunQuestion& question) {
    auto setup = solar::sun_setup(scenario, question.folder);
    if (!setup) {
        return units::fail(std::move(setup.error()));
    }
    SunResults results{.setup = std::move(*setup),
                       .recharge = {},
                       .day = {},
                       .placements = {},
                       .unit = {},
                       .why_no_unit = "there are no panels"};
    results.day.midnight = whole_day(scenario.outage);
    if (results.setup.groups.empty()) {
        return results;
    }
    const auto& sun = results.setup;
    results.day = curves_of(sun, results.day.midnight);
    results.placements =
        solar::compare_placements(sun.site, sun.groups, sun.controller, results.day.midnight);
    const solar::SunTrack track(sun.site, sun.groups, scenario.outage.starts,
                                scenario.outage.lasts);
    scenario::Assumptions told;
    const auto model = solar::weather_model(scenario.outage, told);
    results.recharge = sun.hours ? solar::recharge_of_hours(track, sun.controller, sun.hours)
                                 : solar::recharge(track, sun.site, sun.controller, model,
                                                   question.seed, std::max(1, question.weathers));
    const auto ready = outage::make_ready(scenario, question.folder);
    if (!ready) {
        results.why_no_unit = ready.error().front().where + ": " + ready.error().front().found;
        if (!sun.hours) {
            results.setup.assumptions.insert(results.setup.assumptions.end(), told.begin(),
                                             told.end());
        }
        return results;
    }
    results.setup.assumptions = ready->assumptions;
    results.unit = unit_of(scenario, *ready, question);
    return results;
}

}  // namespace report
