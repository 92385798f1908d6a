#include "sizing/members_of.hpp"

#include <algorithm>

#include "outage/clock/work.hpp"
#include "sizing/builds/builds.hpp"

namespace sizing {

namespace {

using namespace units;

// Steps that one question takes in all its runs: under five seconds, measured on two cores of an
// x86-64 machine at 0.1 to 0.2 us a step.
constexpr double most_steps = 30e6;

// What the question with most runs takes of each member: the staircase of packs and panels, what
// matters, and the ladder of loads.
constexpr double runs_of_a_member = 40.0;

}  // namespace

int usual_blocks(const scenario::Scenario& scenario, const outage::Ready& ready) {
    // 99 times in 100 of 256 rests on two members.
    const double wanted = goal_of(scenario) > Probability(0.95) ? 8.0 : 4.0;
    // Where nobody knows how long it lasts most runs end long before what is looked at.
    const double share_of_a_run = ready.outage.open_ended ? 0.25 : 1.0;
    const double of_a_block =
        outage::member_steps_of_a_run(ready) * share_of_a_run * runs_of_a_member * chance::lanes;
    return static_cast<int>(std::clamp(most_steps / of_a_block, 1.0, wanted));
}

chance::Members members_of(const scenario::Scenario& scenario, const std::string& folder,
                           std::shared_ptr<const outage::Ready> ready, std::uint64_t seed,
                           std::optional<int> wanted) {
    const int blocks =
        wanted ? (*wanted + chance::lanes - 1) / chance::lanes : usual_blocks(scenario, *ready);
    // `like` was applied when `ready` was made, so it names what is there.
    return {*chance::World::of(scenario, folder, std::move(ready)), seed, std::max(1, blocks)};
}

}  // namespace sizing
