#include "questions/read.hpp"

#include "outage/plan.hpp"
#include "scenario/file/file.hpp"
#include "scenario/file/set_aside.hpp"
#include "solar/sun_setup.hpp"

namespace questions {

namespace {

WeatherRead weather_of(solar::WeatherYear year) {
    auto sums = solar::summary(year);
    auto odd = solar::oddities_of(sums);
    const auto temperatures = solar::monthly_temperature(year);
    return {std::move(year), std::move(sums), std::move(odd), temperatures};
}

}  // namespace

units::Result<ReadFound> find(const scenario::ReadScenario& read, const ReadAsked&, const How&) {
    const auto folder = scenario::folder_of(read.file_name);
    ReadFound found{.read = read};
    auto fed = read.scenario;
    scenario::set_aside(fed);
    if (auto plan = outage::plan_outage(fed, folder)) found.loads = std::move(plan->loads);
    if (!read.scenario.place.weather_file) return found;
    auto year = solar::read_weather_of(read.scenario.place, folder);
    if (!year) return units::fail(std::move(year.error()));
    found.weather = weather_of(std::move(*year));
    return found;
}

}  // namespace questions
