#include "command_line/ask_start.hpp"

#include "report/start_answer.hpp"

namespace command_line {

units::Result<report::Answer> ask_start(const scenario::ReadScenario& read, const Request&) {
    return report::start_answer(read.scenario);
}

}  // namespace command_line
