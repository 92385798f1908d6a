// What a weather file of one year leaves open of a chance. method.md (12)
#pragma once

#include <span>

#include "chance/figures.hpp"
#include "scenario/scenario.hpp"

namespace chance {

// Of the spread of the members' verdicts, the share that hangs on their start dates; from 0 to 1.
// On the cautious side where members or verdicts of one kind are few.
//   takes  outcomes of equal weight, and the date of each
[[nodiscard]] double share_between_dates(std::span<const Outcome> outcomes,
                                         std::span<const int> dates);

// As many members of all years say as much as these do; at least 1, at most as many as there are.
[[nodiscard]] double worth_in_all_years(std::span<const Outcome> outcomes, const StartDates& dates);

// The dates that `of` names, worth what solar::independent_start_dates says of the outage; of one
// whose length nobody knows, of the longest time that a member lasts.
[[nodiscard]] StartDates start_dates_of(std::span<const int> of, const scenario::Outage& outage,
                                        std::span<const Outcome> outcomes);

}  // namespace chance
