#include "command_line/ask_sun.hpp"

#include <CLI/CLI.hpp>

#include "scenario/most.hpp"

namespace command_line {

void add_sun_options(CLI::App& command, Request& request) {
    command
        .add_option("--members,--weathers", request.members,
                    "Runs the outage for at least this many members of the\n"
                    "chance, by 64 (256; 512 where the goal is 99 in 100)")
        ->check(CLI::Range(1, 100000))
        ->type_name("N");
    command
        .add_option("--panels", request.panels,
                    "Tries from no panel up to this many; without it some more than\n"
                    "the file has")
        ->check(CLI::Range(1, scenario::most_panels))
        ->type_name("N");
}

units::Result<questions::Asked> sun_asked(const scenario::ReadScenario&, const Request& request) {
    return questions::SunAsked{.members = request.members, .most_panels = request.panels};
}

}  // namespace command_line
