// Until when from now, after what was written down?
#pragma once

#include "estimate/outlook.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "units/result.hpp"

namespace questions {

struct NowFound {
    scenario::Scenario scenario;
    units::LocalTime at;
    estimate::Outlook outlook;
};

//   takes   a moment within the outage
//   fails   as outage::make_ready and estimate::outlook_of
[[nodiscard]] units::Result<NowFound> find(const scenario::ReadScenario& read,
                                           const NowAsked& asked, const How& how);

}  // namespace questions
