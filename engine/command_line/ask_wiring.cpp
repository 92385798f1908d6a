#include "command_line/ask_wiring.hpp"

#include "checks/wiring_ways.hpp"
#include "outage/room.hpp"
#include "report/wiring_answer.hpp"
#include "report/wiring_draws.hpp"
#include "scenario/file.hpp"

namespace command_line {

units::Result<report::Answer> ask_wiring(const scenario::ReadScenario& read, const Request&) {
    scenario::Assumptions room;
    const auto scenario =
        outage::at_the_coldest(read.scenario, scenario::folder_of(read.file_name), room);
    const auto draws = report::draws_of(scenario);
    if (!draws) {
        return units::fail(draws.error());
    }
    const auto fit = checks::fit(scenario, *draws);
    if (!fit) {
        return units::fail(fit.error());
    }
    auto answer = report::wiring_answer(scenario, *fit, checks::ways_out(scenario, *draws, *fit));
    answer.assumptions.insert(answer.assumptions.end(), room.begin(), room.end());
    return answer;
}

}  // namespace command_line
