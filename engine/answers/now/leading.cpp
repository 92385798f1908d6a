#include "answers/now/leading.hpp"

#include <algorithm>

#include "demand/power.hpp"

namespace answers {

std::size_t leading_sentences(const scenario::Scenario& scenario, units::LocalTime now,
                              const estimate::Outlook& outlook) {
    if (outlook.story.supply_back && *outlook.story.supply_back <= now) return 1;
    const bool act_first = !outlook.figures.meets_the_goal() &&
                           std::ranges::any_of(scenario.loads, demand::is_medical);
    return act_first ? 4 : 3;
}

}  // namespace answers
