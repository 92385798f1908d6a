// What did this outage teach of the loads, the packs and the sun?
#pragma once

#include "estimate/learnt.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

struct LearntFound {
    scenario::Scenario scenario;
    estimate::Learnt learnt;
};

//   fails   as outage::make_ready and estimate::learnt_of
[[nodiscard]] units::Result<LearntFound> find(const scenario::ReadScenario& read,
                                              const LearntAsked& asked, const How& how);

}  // namespace questions
