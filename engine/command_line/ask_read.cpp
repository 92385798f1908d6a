#include "command_line/ask_read.hpp"

namespace command_line {

units::Result<questions::Asked> read_asked(const scenario::ReadScenario&, const Request&) {
    return questions::ReadAsked{};
}

}  // namespace command_line
