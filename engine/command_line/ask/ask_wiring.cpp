#include "command_line/ask/ask_wiring.hpp"

namespace command_line {

namespace {

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request&) {
    return questions::WiringAsked{};
}

}  // namespace

Question wiring_question() {
    return {
        .name = "wiring",
        .asks = words::said<"Do fuse, wire, switch, connector and outlet suit what is drawn?">(),
        .examples =
            "  candlemark wiring storm.toml --full\n"
            "  candlemark wiring storm.toml --as html > sheet.html",
        .asked = asked_of};
}

}  // namespace command_line
