#include "command_line/ask_start.hpp"

#include "command_line/in_its_room.hpp"
#include "report/start_answer.hpp"

namespace command_line {

units::Result<report::Answer> ask_start(const scenario::ReadScenario& read, const Request&) {
    const auto cold = InItsRoom::at_the_coldest(read);
    return report::start_answer(cold.scenario()).map([&](report::Answer answer) {
        return cold.told_in(std::move(answer));
    });
}

}  // namespace command_line
