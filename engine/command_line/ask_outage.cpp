#include "command_line/ask_outage.hpp"

#include <CLI/CLI.hpp>

namespace command_line {

void add_outage_options(CLI::App& command, Request& request) {
    command
        .add_option("--members,--weathers", request.members,
                    "Runs the outage for at least this many members of the\n"
                    "chance, each with its own draws, packs and sky, by 64;\n"
                    "0 runs the likely figures alone and tells no chance")
        ->check(CLI::Range(0, 100000))
        ->type_name("N");
    command.add_flag("--after-storage", request.after_storage,
                     "Starts with the charge that [storage] leaves in the packs");
}

units::Result<questions::Asked> outage_asked(const scenario::ReadScenario&,
                                             const Request& request) {
    return questions::OutageAsked{.members = request.members,
                                  .after_storage = request.after_storage};
}

}  // namespace command_line
