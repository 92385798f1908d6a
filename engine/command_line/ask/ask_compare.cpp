#include "command_line/ask/ask_compare.hpp"

#include <CLI/CLI.hpp>

#include "command_line/read_request.hpp"
#include "scenario/file/set_aside.hpp"

namespace command_line {

namespace {

void add_options(CLI::App& command, Request& request) {
    command.add_option("OTHER", request.other_file, "The new build; FILE is the old one")
        ->required();
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    auto overrides = overrides_of(request.set);
    if (!overrides) return units::fail(std::move(overrides.error()));
    auto other = scenario::read_scenario_file(request.other_file, std::move(*overrides));
    if (!other) return units::fail(other.error());
    scenario::set_aside(other->scenario);
    return questions::CompareAsked{.with = std::move(*other)};
}

}  // namespace

Question compare_question() {
    return {
        .name = "compare",
        .asks = words::said<"What differs between these two builds, and what must be rechecked?">(),
        .examples = "  candlemark compare old.toml new.toml --full",
        .add_options = add_options,
        .asked = asked_of,
        .of_one_file = true};
}

}  // namespace command_line
