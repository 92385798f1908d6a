#include "command_line/ask/ask_start.hpp"

namespace command_line {

namespace {

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request&) {
    return questions::StartAsked{};
}

}  // namespace

Question start_question() {
    return {.name = "start",
            .asks = words::said<"Will this saw, fridge or pump start? With how many packs?">(),
            .examples = "  candlemark start storm.toml --set pack.expansion.count=2",
            .asked = asked_of};
}

}  // namespace command_line
