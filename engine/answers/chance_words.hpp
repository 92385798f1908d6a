// Chances, and the times that go with them, in words. chance/method.md (15)
#pragma once

#include <string>

#include "chance/figures.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace answers {

// In whole hundredths, downwards.
[[nodiscard]] int whole_hundredths(units::Probability of);

// "nine times in ten", "99 times in 100".
[[nodiscard]] words::Said goal_in_words(units::Probability goal);

// "if half of such outages are over within 24 h"; empty where it is known how long it lasts.
[[nodiscard]] words::Said if_half_are_over(const scenario::Outage& outage);

// "to the end, Sunday 18:00, 95 times in 100", "longer than the outage 67 times in 100, if half of
// such outages are over within 24 h".
//   so_often   the chance in words
[[nodiscard]] words::Said lasting_so_often(const scenario::Outage& outage,
                                           const words::Said& so_often);

// "to the end, Sunday 18:00", "longer than the outage".
[[nodiscard]] words::Said lasting_it(const scenario::Outage& outage);

// Whether what may be counted on is the whole outage; never where nobody knows how long it lasts.
[[nodiscard]] bool counted_on_to_the_end(const scenario::Outage& outage,
                                         const chance::Figures& figures);

// As end_in_words, never later than the end itself: what is counted on.
[[nodiscard]] words::Said counted_on_in_words(units::LocalTime starts, units::Duration lasts);

// "61 times in 100", "more than 99 times in 100", "fewer than once in 100"; downwards.
[[nodiscard]] words::Said times_in_100(units::Probability of);

// The same, or "about 6 times in ten" where it is not known to 3 in 100 either way; of what misses
// the goal never as much as the goal.
[[nodiscard]] words::Said chance_in_words(const chance::Figures& figures);
[[nodiscard]] words::Said chance_in_words(units::Probability of, const chance::Interval& interval,
                                          units::Probability goal);

// "61 times in 100 (57 to 65)": in brackets where it lies 19 times in 20.
[[nodiscard]] words::Said chance_and_interval(const chance::Figures& figures);

}  // namespace answers
