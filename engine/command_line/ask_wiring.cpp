#include "command_line/ask_wiring.hpp"

namespace command_line {

units::Result<questions::Asked> wiring_asked(const scenario::ReadScenario&, const Request&) {
    return questions::WiringAsked{};
}

}  // namespace command_line
