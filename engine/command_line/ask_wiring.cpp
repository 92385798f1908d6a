#include "command_line/ask_wiring.hpp"

#include "answers/wiring/answer.hpp"
#include "answers/wiring/draws.hpp"
#include "command_line/in_its_room.hpp"
#include "fitting/ways.hpp"

namespace command_line {

units::Result<answers::Answer> ask_wiring(const scenario::ReadScenario& read, const Request&) {
    const auto cold = InItsRoom::at_the_coldest(read);
    const auto& scenario = cold.scenario();
    const auto draws = answers::draws_of(scenario);
    if (!draws) {
        return units::fail(draws.error());
    }
    const auto fit = fitting::fit(scenario, *draws);
    if (!fit) {
        return units::fail(fit.error());
    }
    return cold.told_in(
        answers::wiring_answer(scenario, *fit, fitting::ways_out(scenario, *draws, *fit)));
}

}  // namespace command_line
