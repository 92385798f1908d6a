#include "command_line/ask_start.hpp"

namespace command_line {

units::Result<questions::Asked> start_asked(const scenario::ReadScenario&, const Request&) {
    return questions::StartAsked{};
}

}  // namespace command_line
