#include "command_line/ask_storage.hpp"

#include <CLI/CLI.hpp>

#include "command_line/option_value.hpp"

namespace command_line {

void add_storage_options(CLI::App& command, Request& request) {
    command.add_option("--on", request.on, "The day to look at (the day the outage starts)")
        ->type_name("2026-11-01");
}

units::Result<questions::Asked> storage_asked(const scenario::ReadScenario&,
                                              const Request& request) {
    units::Errors errors;
    const auto on = option_value<units::LocalTime>(request.on, "--on", errors);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return questions::StorageAsked{.on = on};
}

}  // namespace command_line
