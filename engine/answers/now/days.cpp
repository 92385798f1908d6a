#include "answers/now/days.hpp"

#include <algorithm>

#include "answers/columns.hpp"
#include "answers/outage/series.hpp"
#include "outage/told/account.hpp"
#include "units/clock.hpp"

namespace answers {

namespace {

using estimate::Outlook;
using estimate::StoredFan;
using units::Duration;
using units::hour;

// To the end; where nobody knows it, a little beyond the time that one member in ten lasts.
double hours_shown(const scenario::Outage& outage, const Outlook& outlook) {
    if (!outage.open_ended) return outage.lasts / hour;
    constexpr double a_little_more = 1.1;
    const double lasts = outage.lasts / hour;
    const double at_best = (outlook.now + a_little_more * outlook.figures.one_in_ten) / hour;
    return std::min<double>(lasts, std::max<double>(at_best, outlook.now / hour + 24.0));
}

void add_curves(DaysChart& chart, const StoredFan& fan) {
    const auto& intervals = fan.likely.intervals;
    for (std::size_t i = 0; i < fan.at.size(); ++i) {
        const double at = fan.at[i] / hour;
        if (at > chart.lasts + 1e-6) break;
        chart.at.push_back(at);
        chart.nine_in_ten.push_back(number(fan.low[i]));
        chart.likely.push_back(number(i == 0 ? intervals.front().flows.stored_at_start
                                             : intervals[i - 1].flows.stored_at_end));
        chart.one_in_ten.push_back(number(fan.high[i]));
        chart.top = std::max(chart.top, chart.one_in_ten.back());
    }
}

void add_hours(DaysChart& chart, const StoredFan& fan) {
    for (const auto& interval : outage::joined(fan.likely.intervals, 1.0 * hour)) {
        if (interval.to / hour > chart.lasts + 1e-6) break;
        const auto after = std::ranges::lower_bound(fan.at, interval.to - 1e-6 * units::second);
        const auto place = std::size_t(std::min(after, fan.at.end() - 1) - fan.at.begin());
        chart.hours.push_back(hour_of(interval));
        chart.hours.back().nine_in_ten = number(fan.low[place]);
        chart.hours.back().one_in_ten = number(fan.high[place]);
    }
}

}  // namespace

DaysChart now_days(const scenario::Scenario& scenario, const Outlook& outlook) {
    DaysChart chart{.starts = scenario.outage.starts,
                    .lasts = hours_shown(scenario.outage, outlook)};
    const auto until = [&](Duration from_now) { return (outlook.now + from_now) / hour; };
    chart.burns = {.nine_in_ten = until(outlook.figures.nine_in_ten),
                   .half = until(outlook.figures.half),
                   .one_in_ten = until(outlook.figures.one_in_ten)};
    if (scenario.outage.open_ended) chart.looked_at = double(scenario.outage.lasts / hour);
    if (!outlook.fan || outlook.fan->at.empty()) return chart;
    add_curves(chart, *outlook.fan);
    add_hours(chart, *outlook.fan);
    chart.usable = chart.likely.empty() ? 0.0 : chart.likely.front();
    chart.nights = nights_of(outlook.fan->likely.events, chart.lasts);
    return chart;
}

}  // namespace answers
