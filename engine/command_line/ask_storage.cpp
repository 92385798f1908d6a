#include "command_line/ask_storage.hpp"

#include <CLI/CLI.hpp>

#include "answers/storage/answer.hpp"
#include "command_line/option_value.hpp"
#include "handling/storage.hpp"

namespace command_line {

void add_storage_options(CLI::App& command, Request& request) {
    command.add_option("--on", request.on, "The day to look at (the day the outage starts)")
        ->type_name("2026-11-01");
}

units::Result<answers::Answer> ask_storage(const scenario::ReadScenario& read,
                                           const Request& request) {
    units::Errors errors;
    const auto on = option_value<units::LocalTime>(request.on, "--on", errors);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    const auto stored = handling::storage(read.scenario, on);
    if (!stored) {
        return units::fail(stored.error());
    }
    return answers::storage_answer(read.scenario, *stored);
}

}  // namespace command_line
