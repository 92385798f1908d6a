#include "command_line/ask_compare.hpp"

#include <CLI/CLI.hpp>

#include "command_line/read_request.hpp"
#include "scenario/set_aside.hpp"

namespace command_line {

void add_compare_options(CLI::App& command, Request& request) {
    command.add_option("OTHER", request.other_file, "The new build; FILE is the old one")
        ->required();
}

units::Result<questions::Asked> compare_asked(const scenario::ReadScenario&,
                                              const Request& request) {
    auto overrides = overrides_of(request.set);
    if (!overrides) return units::fail(std::move(overrides.error()));
    auto other = scenario::read_scenario_file(request.other_file, std::move(*overrides));
    if (!other) return units::fail(other.error());
    scenario::set_aside(other->scenario);
    return questions::CompareAsked{.with = std::move(*other)};
}

}  // namespace command_line
