#include "estimate/ahead/narrowing.hpp"

#include <cmath>

#include "support/three_packs.hpp"

namespace {

using namespace units;
using namespace three_packs;

std::vector<chance::Outcome> lasting(const std::vector<double>& hours) {
    std::vector<chance::Outcome> outcomes;
    for (const double each : hours)
        outcomes.push_back({.lasts = each * hour, .weight = 1.0 / double(hours.size())});
    return outcomes;
}

// Of 1 to 100 h, each once, the tenth and the ninetieth in a hundred are 80 h apart.
TEST(narrowing, the_width_is_four_times_in_five) {
    std::vector<double> hours;
    for (int i = 100; i > 0; --i)
        hours.push_back(i);
    EXPECT_NEAR(estimate::width_of(lasting(hours)) / hour, 80.0, 1.0);
    EXPECT_EQ(estimate::width_of({}), Duration{});
}

// Members that differ in their charge alone, by s = 0.2, and last 100 h times it. A reading of it
// off by 0.05 leaves 0.2 x 0.05 / sqrt(0.2^2 + 0.05^2) = 0.0485 of 0.2: 0.2425 of the width. Loads
// that say nothing of the time are not offered.
TEST(narrowing, a_reading_of_the_charge_leaves_what_its_own_error_does) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto world = chance::World::of(scenario, "", ready).value();
    estimate::Posterior posterior;
    posterior.members.names = world.names();
    std::vector<double> hours;
    for (const double charge : {0.3, 0.7, 0.3, 0.7}) {
        posterior.now.push_back({.charge = StateOfCharge(charge)});
        posterior.members.values.emplace_back(world.names().size(), 0.5);
        hours.push_back(100.0 * charge);
    }
    const auto outcomes = lasting(hours);
    const auto found =
        estimate::narrowings(scenario, estimate::story_of(scenario, *read_local_time(start)), world,
                             posterior, outcomes, 1.0 * hour);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].what, estimate::NextRead::charge);
    EXPECT_NEAR(found[0].width_after / estimate::width_of(outcomes), 0.2425, 1e-4);
}

}  // namespace
