#include "command_line/ask/ask_packs.hpp"

#include <CLI/CLI.hpp>

#include "command_line/complaints.hpp"
#include "scenario/keys/most.hpp"

namespace command_line {

namespace {

void add_options(CLI::App& command, Request& request) {
    command
        .add_option("--threads", request.threads,
                    "Works on this many processors at once (0: as many as there are)")
        ->check(whole_number("--threads", 0, 1024))
        ->type_name("N");
    command
        .add_option("--members,--weathers", request.members,
                    "Runs each build for at least this many members of the "
                    "chance, by 64 (256; 512 where the goal is 99 in 100)")
        ->check(whole_number("--members", 1, 100000))
        ->type_name("N");
    command.add_option("--most-packs", request.most_packs, "Looks at up to this many packs (16)")
        ->check(whole_number("--most-packs", 1, scenario::most_packs))
        ->type_name("N");
    command
        .add_option("--most-panels", request.most_panels, "Looks at up to this many panels (12)")
        ->check(whole_number("--most-panels", 0, scenario::most_panels))
        ->type_name("N");
}

units::Result<questions::Asked> asked_of(const scenario::ReadScenario&, const Request& request) {
    return questions::PacksAsked{.members = request.members,
                                 .most_packs = request.most_packs,
                                 .most_panels = request.most_panels};
}

}  // namespace

Question packs_question() {
    return {.name = "packs",
            .asks = words::said<"How many packs, and panels, should I build?">(),
            .examples = "  candlemark packs storm.toml --set goal.chance=0.95",
            .add_options = add_options,
            .asked = asked_of};
}

}  // namespace command_line
