#include "models/plan_text.hpp"

#include "models/days_view_of.hpp"

#include "outage/plan.hpp"
#include "report/outage_answer.hpp"
#include "scenario/read.hpp"

namespace touch {

DaysView plan_text(const QString& text) {
    const auto read = scenario::read_scenario(text.toStdString(), std::string());
    if (!read) return refusal(read.error());
    const auto plan = outage::plan_outage(read->scenario);
    if (!plan) return refusal(plan.error());
    return days_view_of(report::outage_answer(read->scenario, *plan, plan->more_packs));
}

}  // namespace touch
