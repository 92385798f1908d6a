#include "command_line/ask/ask_outage.hpp"

#include <CLI/CLI.hpp>

#include "command_line/complaints.hpp"

namespace command_line {

namespace {

void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--members,--weathers", request.members,
                    "Runs the outage for at least this many members of the "
                    "chance, each with its own draws, packs and sky, by 64; "
                    "0 runs the likely figures alone and tells no chance")
        ->check(whole_number("--members", 0, 100000))
        ->type_name("N");
    command.add_flag("--after-storage", request.after_storage,
                     "Starts with the charge that [storage] leaves in the packs");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    return questions::OutageAsked{.members = request.members,
                                  .after_storage = request.after_storage};
}

}  // namespace

Question outage_question() {
    return {
        .name = "outage",
        .asks =
            words::said<"How long does it last, hour by hour, and what do the panels give back?">(),
        .examples = "  candlemark outage storm.toml --set outage.lasts=\"3 d\" --full",
        .add_options = add_options,
        .asked = asked_of};
}

}  // namespace command_line
