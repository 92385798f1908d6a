#include "command_line/ask_join.hpp"

#include <CLI/CLI.hpp>

#include "command_line/option_value.hpp"

namespace command_line {

void add_join_options(CLI::App& command, Request& request) {
    command
        .add_option("--pack", request.pack,
                    "The pack that is plugged in (the last one of the file);\n"
                    "all others are on the unit already")
        ->type_name("NAME");
    command
        .add_option("--at-most", request.at_most,
                    "A current not to be exceeded, beside the limits of the file")
        ->type_name("\"20 A\"");
}

units::Result<questions::Asked> join_asked(const scenario::ReadScenario&, const Request& request) {
    units::Errors errors;
    const auto at_most = option_value<units::Current>(request.at_most, "--at-most", errors);
    if (at_most && !(*at_most > units::Current{})) {
        errors.push_back({.where = "--at-most",
                          .found = "found " + *request.at_most + ", which is not above zero",
                          .remedy = "give a current such as \"20 A\""});
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return questions::JoinAsked{.pack = request.pack, .at_most = at_most};
}

}  // namespace command_line
