#include "command_line/ask_start.hpp"

#include "answers/start/answer.hpp"
#include "command_line/in_its_room.hpp"

namespace command_line {

units::Result<answers::Answer> ask_start(const scenario::ReadScenario& read, const Request&) {
    const auto cold = InItsRoom::at_the_coldest(read);
    return answers::start_answer(cold.scenario()).map([&](answers::Answer answer) {
        return cold.told_in(std::move(answer));
    });
}

}  // namespace command_line
