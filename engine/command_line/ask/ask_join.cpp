#include "command_line/ask/ask_join.hpp"

#include <CLI/CLI.hpp>

#include "command_line/reference/option_value.hpp"

namespace command_line {

namespace {

using words::said;
void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--pack", request.pack,
                    "The pack that is plugged in (the last one of the file); "
                    "all others are on the unit already")
        ->type_name("NAME");
    command
        .add_option("--at-most", request.at_most,
                    "A current not to be exceeded, beside the limits of the file")
        ->type_name("\"20 A\"");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    units::Errors errors;
    const auto at_most = option_value<units::Current>(request.at_most, "--at-most", errors);
    if (at_most && !(*at_most > units::Current{})) {
        errors.push_back({.where = "--at-most",
                          .found = said<"found {text}, which is not above zero">(*request.at_most),
                          .remedy = said<"give a current such as \"20 A\"">()});
    }
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    return questions::JoinAsked{.pack = request.pack, .at_most = at_most};
}

}  // namespace

Question join_question() {
    return {.name = "join",
            .asks = words::said<"May I plug this pack onto that unit now?">(),
            .examples =
                "  candlemark join storm.toml --pack spare\n"
                "  candlemark join storm.toml --set pack.spare.rested_voltage=\"13.4 V\"",
            .add_options = add_options,
            .asked = asked_of};
}

}  // namespace command_line
