// What the members of the chance make of an outage.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "chance/members.hpp"
#include "scenario/scenario.hpp"
#include "sizing/fan.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/start_states.hpp"
#include "sizing/sun_return.hpp"

namespace questions {

//   limits     what ends most of those that end early, and of those that end at once; none where
//              nothing is of the majority
//   more       where the chance is below the goal
//   packs      in all, as they are
//   meet       of loads that cycle: share in which they ask for more together than the unit gives,
//              and by when in half of these
//   one_year   the sky is that of a weather file
//   bad, good  every unknown two standard deviations to its hungry and its frugal side at once
//   sun        what comes back from it; nothing without panels
//   fan        of the store; nothing where the outage is so long that it would take too long
//   starts     how the packs stand at each of the plan's starts
struct OutageChance {
    chance::Figures figures;
    outage::LimitedBy limits = outage::LimitedBy::none;
    outage::LimitedBy limits_at_once = outage::LimitedBy::none;
    std::optional<sizing::MorePacks> more = {};
    int packs = 0;
    units::Probability meet{};
    units::Duration meet_by{};
    bool one_year = false;
    chance::MemberEnd bad = {};
    chance::MemberEnd good = {};
    std::optional<sizing::Fan> fan = {};
    std::optional<sizing::SunReturn> sun = {};
    std::vector<sizing::StartState> starts = {};
};

// The chance of the unit as it is.
//   starts    of the plan
//   threads   0 takes as many as the machine has; the same figures for any number
[[nodiscard]] OutageChance chance_of_outage(const scenario::Scenario& scenario,
                                            const chance::Members& members,
                                            std::span<const outage::MotorStart> starts,
                                            unsigned threads = 0);

// The same without what more packs would do.
[[nodiscard]] OutageChance first_chance_of_outage(const scenario::Scenario& scenario,
                                                  const chance::Members& members,
                                                  std::span<const outage::MotorStart> starts,
                                                  unsigned threads = 0);

}  // namespace questions
