#include "questions/read.hpp"

#include "outage/plan.hpp"
#include "scenario/file.hpp"
#include "scenario/set_aside.hpp"
#include "solar/sun_setup.hpp"

namespace questions {

units::Result<ReadFound> find(const scenario::ReadScenario& read, const ReadAsked&, const How&) {
    const auto folder = scenario::folder_of(read.file_name);
    ReadFound found{.read = read};
    auto fed = read.scenario;
    scenario::set_aside(fed);
    if (auto plan = outage::plan_outage(fed, folder)) found.loads = std::move(plan->loads);
    if (!read.scenario.place.weather_file) return found;
    auto year = solar::read_weather_of(read.scenario.place, folder);
    if (!year) return units::fail(std::move(year.error()));
    found.weather = std::move(*year);
    return found;
}

}  // namespace questions
