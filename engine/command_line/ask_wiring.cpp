#include "command_line/ask_wiring.hpp"

#include "checks/wiring_ways.hpp"
#include "report/wiring_answer.hpp"
#include "report/wiring_draws.hpp"

namespace command_line {

units::Result<report::Answer> ask_wiring(const scenario::ReadScenario& read, const Request&) {
    const auto draws = report::draws_of(read.scenario);
    if (!draws) {
        return units::fail(draws.error());
    }
    const auto fit = checks::fit(read.scenario, *draws);
    if (!fit) {
        return units::fail(fit.error());
    }
    return report::wiring_answer(read.scenario, *fit,
                                 checks::ways_out(read.scenario, *draws, *fit));
}

}  // namespace command_line
