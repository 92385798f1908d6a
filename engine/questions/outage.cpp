#include "questions/outage.hpp"

#include <memory>

#include "handling/storage.hpp"
#include "outage/ready.hpp"
#include "scenario/file/file.hpp"
#include "sizing/members_of.hpp"

namespace questions {

units::Result<OutageFound> find(const scenario::ReadScenario& read, const OutageAsked& asked,
                                const How& how) {
    OutageFound found{.scenario = read.scenario, .plan = {}};
    if (asked.after_storage) {
        const auto stored = handling::storage(found.scenario);
        if (!stored) return units::fail(stored.error());
        found.scenario = handling::after_storage(std::move(found.scenario), *stored);
        found.assumed = stored->assumptions;
    }
    const auto folder = scenario::folder_of(read.file_name);
    auto made = outage::make_ready(found.scenario, folder);
    if (!made) return units::fail(std::move(made.error()));
    const auto ready = std::make_shared<const outage::Ready>(std::move(*made));
    found.plan = outage::plan_outage(*ready);
    if (asked.members.value_or(1) == 0) {
        found.starts = starts_of_outage(found.scenario, found.plan);
        return found;
    }
    const auto members = sizing::members_of(found.scenario, folder, ready, how.seed, asked.members);
    found.chance =
        asked.more_packs
            ? chance_of_outage(found.scenario, members, found.plan.starts, how.threads)
            : first_chance_of_outage(found.scenario, members, found.plan.starts, how.threads);
    found.starts = starts_of_outage(found.scenario, found.plan, found.chance->starts);
    return found;
}

}  // namespace questions
