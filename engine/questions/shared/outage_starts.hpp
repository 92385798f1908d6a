// Until when each motor still starts during an outage.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/start_states.hpp"
#include "starting/plan.hpp"
#include "units/result.hpp"

namespace questions {

// A start of the plan, and how the packs stand then.
struct StartMoment {
    outage::MotorStart start;
    sizing::StartState packs;
};

//   judged   at the low end of what the packs stand at
struct JudgedStart {
    StartMoment moment;
    starting::Judgement judged;
};

// How the starts of one load went.
//   load                 its index in the scenario
//   last_good            the last one before the first that fails; sure or doubtful
//   good_after_failure   a later one succeeds again, as after a charge
struct StartStory {
    std::size_t load = 0;
    int starts = 0;
    int failed = 0;
    int doubtful = 0;
    std::optional<StartMoment> last_good = {};
    std::optional<JudgedStart> first_failed = {};
    std::optional<JudgedStart> first_doubtful = {};
    bool good_after_failure = false;
};

//   stories            of the loads whose motor does not surely start every time
//   inverter, source   that they start on
//   not_known          plates that cannot be used, at their keys; no story then
struct OutageStarts {
    std::vector<StartStory> stories = {};
    std::optional<starting::InverterSide> inverter = {};
    starting::DirectSource source = {};
    units::Errors not_known = {};
};

// For each mix of loads that is on, the lowest rested voltage at which it starts is worked out
// once; every start of the plan is then compared with it. Over the members a start is sure where
// nine in ten of those that have supply start surely, and fails where fewer than one in ten of them
// may start. A cold pack gives less: the coldest day's packs are asked.
//   members   one for each of the plan's starts; empty: the likely course alone
//   gives     nothing where the scenario cannot be asked of starts
[[nodiscard]] OutageStarts starts_of_outage(const scenario::Scenario& scenario,
                                            const outage::Plan& plan,
                                            std::span<const sizing::StartState> members = {});

}  // namespace questions
