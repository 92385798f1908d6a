#include "command_line/ask_read.hpp"

#include "outage/plan.hpp"
#include "report/read_answer.hpp"

namespace command_line {

units::Result<report::Answer> ask_read(const scenario::ReadScenario& read, const Request&) {
    const auto plan = outage::plan_outage(read.scenario);
    return report::read_answer(read, plan ? plan->loads : std::vector<outage::LoadUse>{});
}

}  // namespace command_line
