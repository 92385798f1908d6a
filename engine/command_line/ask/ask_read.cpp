#include "command_line/ask/ask_read.hpp"

namespace command_line {

namespace {

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request&) {
    return questions::ReadAsked{};
}

}  // namespace

Question read_question() {
    return {.name = "read",
            .asks = words::said<"What did you understand of my file?">(),
            .examples = "  candlemark read storm.toml --full",
            .asked = asked_of,
            .tells_warnings = true};
}

}  // namespace command_line
