#include "command_line/ask/ask_storage.hpp"

#include <CLI/CLI.hpp>

#include "command_line/reference/option_value.hpp"

namespace command_line {

namespace {

void add_options(CLI::App& command, Request& request) {
    command.add_option("--on", request.on, "The day to look at (the day the outage starts)")
        ->type_name("2026-11-01");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    units::Errors errors;
    const auto on = option_value<units::LocalTime>(request.on, "--on", errors);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return questions::StorageAsked{.on = on};
}

}  // namespace

Question storage_question() {
    return {
        .name = "storage",
        .asks = words::said<"After months in storage, is it ready? When must it be topped up?">(),
        .examples = "  candlemark storage storm.toml --on 2026-11-01",
        .add_options = add_options,
        .asked = asked_of};
}

}  // namespace command_line
