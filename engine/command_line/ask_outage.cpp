#include "command_line/ask_outage.hpp"

#include <CLI/CLI.hpp>

#include "answers/outage/answer.hpp"
#include "handling/storage.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file.hpp"
#include "sizing/members_of.hpp"

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

units::Result<answers::Answer> ask_outage(const scenario::ReadScenario& read,
                                          const Request& request) {
    auto scenario = read.scenario;
    scenario::Assumptions from_storage;
    if (request.after_storage) {
        const auto stored = handling::storage(scenario);
        if (!stored) {
            return units::fail(stored.error());
        }
        scenario = handling::after_storage(std::move(scenario), *stored);
        from_storage = stored->assumptions;
    }
    const auto folder = scenario::folder_of(read.file_name);
    auto made = outage::make_ready(scenario, folder);
    if (!made) {
        return units::fail(made.error());
    }
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    const auto plan = outage::plan_outage(*ready);
    std::optional<answers::OutageChance> chance;
    if (request.members.value_or(1) > 0) {
        chance = answers::chance_of_outage(
            scenario, sizing::members_of(scenario, folder, ready, request.seed, request.members));
    }
    auto answer = answers::outage_answer(scenario, plan, plan.more_packs, chance);
    answer.assumptions.insert(answer.assumptions.end(), from_storage.begin(), from_storage.end());
    return answer;
}

}  // namespace command_line
