// "How long does it last?" in finished words and numbers.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "outage/plan.hpp"
#include "outage/weathers.hpp"
#include "report/answer.hpp"
#include "scenario/scenario.hpp"

namespace report {

// The fewest more packs like the last that last through as many weathers as the goal asks for.
//   more   0: none of those tried does
struct SurerPacks {
    int more = 0;
    int tried = 0;
    units::Probability of_lasting;
};

// What many likely weathers make of the same outage.
struct Chances {
    units::Duration p10{};  // nine outages in ten last longer
    units::Duration p50{};
    units::Duration p90{};  // one outage in ten lasts longer
    units::Probability of_lasting;
    units::Probability low;              // of_lasting may be as low as this, 19 times in 20
    units::Probability high;             // and as high as this
    int outages = 0;                     // that were tried
    std::string of = "chance weathers";  // or what else differed between them
    std::optional<SurerPacks> surer;     // where the chance is below the goal
};

//   takes      at least one ending
//   gives      percentiles by nearest rank; the interval of [Wilson 1927] for the chance
[[nodiscard]] Chances chances_of(std::vector<outage::Ending> endings);

// The endings of the unit as it is; and `surer`, should the chance be below what sizing::goal_of
// asks for: where packs differ, counted over the first 64 of the weathers.
//   weathers   at least 1
[[nodiscard]] Chances chances_in_weathers(const scenario::Scenario& scenario,
                                          const outage::Ready& ready, int weathers,
                                          std::uint64_t seed);

// "Of 200 chance weathers it lasts through 84 % (78 to 89 in a hundred); one more pack through
// 97 %.": never a bare percentage, but how many were tried, and the spread that so few leave.
[[nodiscard]] std::string chance_sentence(const Chances& chances);

// The whole answer of the outage question.
//   takes      more: what 1, 2, … more packs give; empty when not asked for
//              chances, recharge: absent gives null with a reason
//   gives      `defect` set when the energy account of any course does not close
[[nodiscard]] Answer outage_answer(const scenario::Scenario& scenario, const outage::Plan& plan,
                                   const std::vector<outage::MorePacks>& more,
                                   const std::optional<Chances>& chances = {},
                                   const std::optional<solar::Recharge>& recharge = {});

}  // namespace report
