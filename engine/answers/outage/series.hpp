// The outage as tables and as the chart of its days.
#pragma once

#include <optional>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/fan.hpp"
#include "sizing/sun_return.hpp"

namespace answers {

// "hours" (one row an hour: what flowed in it, what is stored at its end), "events", "loads" and
// "sun_days", in this order.
//   sun   adds the range of each day's sun to "sun_days"
//   fan   adds what is stored over the members to "hours"; at least one moment an hour
[[nodiscard]] std::vector<Series> outage_series(const scenario::Scenario& scenario,
                                                const outage::Plan& plan,
                                                const std::optional<sizing::SunReturn>& sun = {},
                                                const std::optional<sizing::Fan>& fan = {});

// What each load draws, how often, and how that is known.
[[nodiscard]] Series loads_table(const std::vector<outage::LoadUse>& loads);

// Curves at the ends of the course's intervals, at most 961 points; its hours; nights; markers of
// what switches or runs out.
// Where nobody knows how long the outage lasts no more days are shown than tell something.
//   fan             its ends are the curves beside the likely one; without it there is no band
//   lasts_at_best   one time in ten the unit lasts longer
[[nodiscard]] DaysChart days_chart(const scenario::Scenario& scenario, const outage::Plan& plan,
                                   const std::optional<sizing::Fan>& fan = {},
                                   std::optional<units::Duration> lasts_at_best = {});

// Between sunset and sunrise, by the events of a course.
//   end   h after the start, to which they are shown
[[nodiscard]] std::vector<DaysChart::Span> nights_of(const std::vector<outage::Event>& events,
                                                     double end);

// What flowed in an hour of a course; what is stored over the members is left to fill in.
[[nodiscard]] DaysChart::Hour hour_of(const outage::Interval& interval);

}  // namespace answers
