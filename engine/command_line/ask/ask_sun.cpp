#include "command_line/ask/ask_sun.hpp"

#include <CLI/CLI.hpp>

#include "command_line/complaints.hpp"
#include "scenario/keys/most.hpp"

namespace command_line {

namespace {

void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--members,--weathers", request.members,
                    "Runs the outage for at least this many members of the "
                    "chance, by 64 (256; 512 where the goal is 99 in 100)")
        ->check(whole_number("--members", 1, 100000))
        ->type_name("N");
    command
        .add_option("--panels", request.panels,
                    "Tries from no panel up to this many; without it some more than "
                    "the file has")
        ->check(whole_number("--panels", 1, scenario::most_panels))
        ->type_name("N");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    return questions::SunAsked{.members = request.members, .most_panels = request.panels};
}

}  // namespace

Question sun_question() {
    return {
        .name = "sun",
        .asks =
            words::said<"What do the panels give back, how should they stand, how many help?">(),
        .examples =
            "  candlemark sun storm.toml\n"
            "  candlemark sun storm.toml --set panel.tilt=\"70 deg\" --panels 8",
        .add_options = add_options,
        .asked = asked_of};
}

}  // namespace command_line
