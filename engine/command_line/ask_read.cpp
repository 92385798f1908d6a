#include "command_line/ask_read.hpp"

#include "answers/read/answer.hpp"
#include "answers/weather_part.hpp"
#include "outage/plan.hpp"
#include "scenario/file.hpp"
#include "scenario/set_aside.hpp"
#include "solar/sun_setup.hpp"

namespace command_line {

units::Result<answers::Answer> ask_read(const scenario::ReadScenario& read, const Request&) {
    const auto folder = scenario::folder_of(read.file_name);
    auto fed = read.scenario;
    scenario::set_aside(fed);
    const auto plan = outage::plan_outage(fed, folder);
    auto answer = answers::read_answer(read, plan ? plan->loads : std::vector<outage::LoadUse>{});
    if (const auto& file = read.scenario.place.weather_file) {
        const auto year = solar::read_weather_of(read.scenario.place, folder);
        if (!year) {
            return units::fail(year.error());
        }
        answers::add_weather(answer, *file, *year);
    }
    return answer;
}

}  // namespace command_line
