#include "command_line/ask_start.hpp"

#include "outage/room.hpp"
#include "report/start_answer.hpp"
#include "scenario/file.hpp"

namespace command_line {

units::Result<report::Answer> ask_start(const scenario::ReadScenario& read, const Request&) {
    scenario::Assumptions room;
    const auto scenario =
        outage::at_the_coldest(read.scenario, scenario::folder_of(read.file_name), room);
    return report::start_answer(scenario).map([&](report::Answer answer) {
        answer.assumptions.insert(answer.assumptions.end(), room.begin(), room.end());
        return answer;
    });
}

}  // namespace command_line
