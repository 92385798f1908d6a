#include "command_line/ask_wiring.hpp"

#include "command_line/in_its_room.hpp"
#include "fitting/ways.hpp"
#include "report/wiring_answer.hpp"
#include "report/wiring_draws.hpp"

namespace command_line {

units::Result<report::Answer> ask_wiring(const scenario::ReadScenario& read, const Request&) {
    const auto cold = InItsRoom::at_the_coldest(read);
    const auto& scenario = cold.scenario();
    const auto draws = report::draws_of(scenario);
    if (!draws) {
        return units::fail(draws.error());
    }
    const auto fit = fitting::fit(scenario, *draws);
    if (!fit) {
        return units::fail(fit.error());
    }
    return cold.told_in(
        report::wiring_answer(scenario, *fit, fitting::ways_out(scenario, *draws, *fit)));
}

}  // namespace command_line
