#include "answers/outage/series.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <limits>

#include "answers/clock_words.hpp"
#include "answers/columns.hpp"
#include "answers/outage/findings.hpp"
#include "chance/open_end.hpp"
#include "outage/told/account.hpp"
#include "units/clock.hpp"
#include "units/text.hpp"

namespace answers {

namespace {

using outage::Course;
using outage::EventKind;
using outage::Ledger;
using outage::Plan;
using scenario::Scenario;
using units::Duration;
using words::Said;
using words::said;

Said events_between(const Plan& plan, Duration from, Duration to) {
    std::vector<Said> events;
    for (const auto& event : plan.likely.events) {
        if (event.at >= from && event.at < to) events.push_back(words_for(plan, event));
    }
    return words::joined(std::move(events), words::List::Joint::semicolon);
}

Code date_time(units::LocalTime time) {
    std::string text = time_in_iso(time);
    text[10] = ' ';
    return {.code = text.substr(0, 16), .said = date_and_time(time), .is_time = true};
}

// What so large a share of the members has at least, at a moment; what the likely course has where
// there is no fan.
class Stored {
  public:
    Stored(const Plan& plan, const std::optional<sizing::Fan>& fan) : plan_(plan), fan_(fan) {}

    [[nodiscard]] units::Energy nine_in_ten(Duration at) const { return of(0, at); }
    [[nodiscard]] units::Energy three_in_four(Duration at) const { return of(1, at); }
    [[nodiscard]] units::Energy one_in_four(Duration at) const {
        return of(sizing::fan_shares.size() - 2, at);
    }
    [[nodiscard]] units::Energy one_in_ten(Duration at) const {
        return of(sizing::fan_shares.size() - 1, at);
    }
    [[nodiscard]] bool has_fan() const { return fan_ && !fan_->at.empty(); }

  private:
    const Plan& plan_;
    const std::optional<sizing::Fan>& fan_;

    [[nodiscard]] units::Energy of(std::size_t share, Duration at) const {
        if (!fan_ || fan_->at.empty()) return likely(at);
        const auto after = std::ranges::lower_bound(fan_->at, at - 1e-6 * units::second);
        const auto place = std::min(after, fan_->at.end() - 1) - fan_->at.begin();
        return fan_->stored[share][std::size_t(place)];
    }
    [[nodiscard]] units::Energy likely(Duration at) const {
        for (const auto& interval : plan_.likely.intervals)
            if (interval.to >= at - 1e-6 * units::second)
                return at > Duration{} ? interval.flows.stored_at_end
                                       : interval.flows.stored_at_start;
        return plan_.likely.ledger.stored_at_end;
    }
};

using Hours = std::vector<outage::Interval>;

// What so many members in ten have stored, to be put beside what is likely.
std::vector<Column> columns_of_members(const Hours& hours, const Stored& stored) {
    return {
        column("stored_nine_in_ten", said<"stored at the end, nine times in ten at least">(),
               hours.size(), [&](std::size_t row) { return stored.nine_in_ten(hours[row].to); }),
        column("stored_one_in_ten", said<"stored at the end, one time in ten at least">(),
               hours.size(), [&](std::size_t row) { return stored.one_in_ten(hours[row].to); })};
}

std::vector<Column> columns_of_hours(const Hours& hours, const Scenario& scenario,
                                     const Plan& plan) {
    const auto rows = hours.size();
    const auto mean = [&hours](auto energy) {
        return [&hours, energy](std::size_t row) -> units::Power {
            return std::invoke(energy, hours[row].flows) / (hours[row].to - hours[row].from);
        };
    };
    const auto time = [&](Duration outage::Interval::*moment) {
        return [&, moment](std::size_t row) {
            return date_time(scenario.outage.starts + hours[row].*moment);
        };
    };
    return {
        column("from", said<"from, local standard time">(), rows, time(&outage::Interval::from)),
        column("to", said<"to">(), rows, time(&outage::Interval::to)),
        column("stored", said<"stored at the end">(), rows,
               [&](std::size_t row) { return hours[row].flows.stored_at_end; }),
        column("charge", said<"how full at the end">(), rows,
               [&](std::size_t row) { return hours[row].charge; }),
        column("voltage", said<"voltage at the end">(), rows,
               [&](std::size_t row) { return hours[row].voltage; }),
        column("wanted", said<"wanted by the loads, mean">(), rows, mean(&outage::wanted)),
        column("served", said<"served, mean">(), rows, mean(&Ledger::loads)),
        column("lost", said<"lost in inverter, wiring and packs, mean">(), rows,
               mean(&outage::lost)),
        column("sun_offered", said<"sun offered, mean">(), rows, mean(&Ledger::sun_offered)),
        column("sun_taken", said<"sun taken, mean">(), rows, mean(&outage::sun_taken)),
        column("charger_taken", said<"taken from other chargers, mean">(), rows,
               mean(&Ledger::charger_taken)),
        column("events", said<"what happens">(), rows, [&](std::size_t row) {
            return events_between(plan, hours[row].from, hours[row].to);
        })};
}

// The rows are the clock's own account of each hour, so the columns of means sum to the ledger.
Series hours_table(const Scenario& scenario, const Plan& plan,
                   const std::optional<sizing::Fan>& fan) {
    const auto hours = outage::joined(plan.likely.intervals, 1.0 * units::hour);
    Series series{.name = "hours",
                  .title = said<"Hour by hour">(),
                  .columns = columns_of_hours(hours, scenario, plan)};
    if (!fan) return series;
    const auto of_members = columns_of_members(hours, Stored(plan, fan));
    series.columns.insert(series.columns.begin() + 3, of_members.begin(), of_members.end());
    return series;
}

Series events_table(const Scenario& scenario, const Plan& plan) {
    const auto& events = plan.likely.events;
    Series series{.name = "events", .title = said<"What happens when">(), .columns = {}};
    series.columns = {
        column("time", said<"local standard time">(), events.size(),
               [&](std::size_t row) { return date_time(scenario.outage.starts + events[row].at); }),
        column("at", said<"after the start">(), events.size(),
               [&](std::size_t row) { return events[row].at; }),
        column("event", said<"event">(), events.size(),
               [&](std::size_t row) { return words_for(plan, events[row]); }),
        column("power", said<"asked for">(), events.size(),
               [&](std::size_t row) { return events[row].power; }),
        column("at_most", said<"possible at most">(), events.size(),
               [&](std::size_t row) { return events[row].at_most; }),
        column("current", said<"current of a pack">(), events.size(),
               [&](std::size_t row) { return events[row].current; })};
    return series;
}

Series sun_table(const Plan& plan, const std::optional<sizing::SunReturn>& sun) {
    const auto& days = plan.sun;
    Series series{.name = "sun_days", .title = said<"What the sun gives back">(), .columns = {}};
    series.columns = {column("day", said<"day of the outage">(), days.size(),
                             [&](std::size_t row) { return days[row].day; }),
                      column("offered", said<"offered">(), days.size(),
                             [&](std::size_t row) { return days[row].offered; }),
                      column("taken", said<"taken">(), days.size(),
                             [&](std::size_t row) { return days[row].taken; }),
                      column("unused", said<"not taken">(), days.size(),
                             [&](std::size_t row) { return days[row].unused; }),
                      column("clipped", said<"turned away by the controller">(), days.size(),
                             [&](std::size_t row) { return days[row].clipped; })};
    if (!sun || sun->days.size() < days.size()) {
        return series;
    }
    const auto offered = [&](units::Energy solar::DayRange::*end) {
        return [&, end](std::size_t row) { return sun->days[row].offered.*end; };
    };
    series.columns.push_back(column("low", said<"offered, nine times in ten at least">(),
                                    days.size(), offered(&solar::DayRange::low)));
    series.columns.push_back(column("middle", said<"offered, half the time">(), days.size(),
                                    offered(&solar::DayRange::likely)));
    series.columns.push_back(column("high", said<"offered, one time in ten more than">(),
                                    days.size(), offered(&solar::DayRange::high)));
    return series;
}

// ---- The chart.

// What is worth a mark; sunrise and sunset are shown as nights, and daily switching is no news.
std::optional<scenario::Severity> weight_of(EventKind kind) {
    switch (kind) {
        case EventKind::inverter_overload:
        case EventKind::packs_over_current:
        case EventKind::fuse_opens:
        case EventKind::main_fuse_opens:
        case EventKind::branch_fuse_opens:
        case EventKind::cannot_be_delivered:
            return scenario::Severity::stop;
        case EventKind::inverter_off_low_voltage:
        case EventKind::inverter_off_empty:
        case EventKind::load_off:
        case EventKind::packs_empty:
        case EventKind::packs_at_usable_limit:
        case EventKind::packs_cut_off:
            return scenario::Severity::caution;
        case EventKind::supply_back:
        case EventKind::packs_full:
            return scenario::Severity::note;
        default:
            return std::nullopt;
    }
}

// The first of each kind: a chart with every repetition could not be read.
std::vector<Marker> markers_of(const Scenario& scenario, const Plan& plan) {
    const Course& course = plan.likely;
    std::vector<Marker> markers;
    std::vector<EventKind> seen;
    for (const auto& event : course.events) {
        const auto weight = weight_of(event.kind);
        if (!weight || std::ranges::find(seen, event.kind) != seen.end()) {
            continue;
        }
        seen.push_back(event.kind);
        markers.push_back(
            {.at = event.at / units::hour,
             .sign = static_cast<char>('a' + static_cast<int>(markers.size())),
             .label = said<"{when} {what}">(weekday_and_time(scenario.outage.starts + event.at),
                                            words_for(plan, event)),
             .severity = *weight});
    }
    return markers;
}

// Energy in all packs when full, as the trace relates energy to charge.
double full_store(const Plan& plan, const std::optional<sizing::Fan>& fan) {
    double top = 0.0;
    for (const auto& point : plan.likely.trace) {
        top = std::max(top, number(point.stored));
    }
    if (fan) {
        for (const auto& stored : fan->stored.back()) {
            top = std::max(top, number(stored));
        }
    }
    const auto& start = plan.likely.trace.front();
    if (start.charge.value() > 0.05) {
        top = std::max(top, number(start.stored) / start.charge.value());
    }
    return top;
}

}  // namespace

std::vector<DaysChart::Span> nights_of(const std::vector<outage::Event>& events, double end) {
    std::vector<DaysChart::Span> nights;
    double sunset = 0.0;
    bool dark = true;  // until the first sunset says that the outage began by day
    bool known = false;
    for (const auto& event : events) {
        const double at = event.at / units::hour;
        if (event.kind == EventKind::sunset) {
            sunset = at;
            dark = known = true;
        } else if (event.kind == EventKind::sunrise) {
            if (dark && at > sunset) {
                nights.push_back({.from = sunset, .to = at});
            }
            dark = false;
            known = true;
        }
    }
    if (known && dark && end > sunset) {
        nights.push_back({.from = sunset, .to = end});
    }
    return nights;
}

DaysChart::Hour hour_of(const outage::Interval& interval) {
    const Ledger& flows = interval.flows;
    return {.from = interval.from / units::hour,
            .to = interval.to / units::hour,
            .stored_before = number(flows.stored_at_start),
            .sun_offered = number(flows.sun_offered),
            .sun_taken = number(outage::sun_taken(flows)),
            .charger_taken = number(flows.charger_taken),
            .wanted = number(outage::wanted(flows)),
            .served = number(flows.loads),
            .lost = number(outage::lost(flows)),
            .stored = number(flows.stored_at_end)};
}

std::vector<Series> outage_series(const Scenario& scenario, const Plan& plan,
                                  const std::optional<sizing::SunReturn>& sun,
                                  const std::optional<sizing::Fan>& fan) {
    std::vector<Series> series{hours_table(scenario, plan, fan), events_table(scenario, plan),
                               loads_table(plan.loads)};
    if (!plan.sun.empty()) {
        series.push_back(sun_table(plan, sun));
    }
    return series;
}

Series loads_table(const std::vector<outage::LoadUse>& loads) {
    Series series{.name = "loads", .title = said<"What each load takes">(), .columns = {}};
    series.columns = {column("name", said<"load">(), loads.size(),
                             [&](std::size_t row) { return loads[row].name; }),
                      column("count", said<"how many">(), loads.size(),
                             [&](std::size_t row) { return loads[row].count; }),
                      column("priority", said<"priority">(), loads.size(),
                             [&](std::size_t row) { return loads[row].priority; }),
                      column("running", said<"while on">(), loads.size(),
                             [&](std::size_t row) { return loads[row].running; }),
                      column("running_low", said<"while on, at least">(), loads.size(),
                             [&](std::size_t row) { return loads[row].running_low; }),
                      column("running_high", said<"while on, at most">(), loads.size(),
                             [&](std::size_t row) { return loads[row].running_high; }),
                      column("per_day", said<"on a mean day">(), loads.size(),
                             [&](std::size_t row) { return loads[row].per_day; }),
                      column("wanted", said<"over the outage">(), loads.size(),
                             [&](std::size_t row) { return loads[row].wanted; }),
                      column("on_time", said<"time on">(), loads.size(),
                             [&](std::size_t row) { return loads[row].on_time; }),
                      column("from_what", said<"known from">(), loads.size(),
                             [&](std::size_t row) { return loads[row].from_what; })};
    return series;
}

namespace {

std::vector<int> priorities_of(const std::vector<outage::LoadUse>& loads) {
    std::vector<int> priorities;
    for (const auto& load : loads)
        priorities.push_back(load.priority);
    std::ranges::sort(priorities);
    const auto repeated = std::ranges::unique(priorities);
    priorities.erase(repeated.begin(), repeated.end());
    return priorities;
}

std::vector<double> wanted_by(const std::vector<int>& priorities,
                              const std::vector<outage::LoadUse>& loads, std::size_t hour) {
    std::vector<double> wanted(priorities.size());
    for (const auto& load : loads) {
        const auto place = std::ranges::find(priorities, load.priority) - priorities.begin();
        if (hour < load.hours.size()) wanted[std::size_t(place)] += number(load.hours[hour]);
    }
    return wanted;
}

// The hours of the account, for whoever shows an hour's balance.
std::vector<DaysChart::Hour> hours_of(const Plan& plan, const Stored& stored,
                                      const std::vector<int>& priorities) {
    std::vector<DaysChart::Hour> hours;
    for (const auto& likely : outage::joined(plan.likely.intervals, 1.0 * units::hour)) {
        const auto row = hours.size();
        hours.push_back(hour_of(likely));
        hours.back().nine_in_ten = number(stored.nine_in_ten(likely.to));
        hours.back().one_in_ten = number(stored.one_in_ten(likely.to));
        hours.back().wanted_by = wanted_by(priorities, plan.loads, row);
    }
    return hours;
}

// Days enough to see most of such outages end, and most of the units' stores before that.
Duration days_shown(const scenario::Outage& outage, std::optional<Duration> lasts_at_best) {
    if (!outage.open_ended) return outage.lasts;
    constexpr double half = 0.5;
    constexpr double few = 0.1;
    constexpr double a_little_more = 1.1;
    Duration shown = 1.0 * units::day;
    for (; shown < outage.lasts; shown += 1.0 * units::day) {
        const double still_out = chance::still_out(outage, shown).value();
        const bool ended = lasts_at_best && a_little_more * *lasts_at_best < shown;
        if (still_out <= few || (ended && still_out <= half)) break;
    }
    return std::min(shown, outage.lasts);
}

// What is left of it within the days that are shown.
void cut_off(DaysChart& chart) {
    const auto beyond = [&](double at) { return at > chart.lasts + 1e-6; };
    std::erase_if(chart.hours, [&](const DaysChart::Hour& hour) { return beyond(hour.to); });
    std::erase_if(chart.markers, [&](const Marker& marker) { return beyond(marker.at); });
    std::erase_if(chart.nights, [&](const DaysChart::Span& night) { return beyond(night.from); });
    for (auto& night : chart.nights)
        night.to = std::min(night.to, chart.lasts);
}

}  // namespace

DaysChart days_chart(const Scenario& scenario, const Plan& plan,
                     const std::optional<sizing::Fan>& fan, std::optional<Duration> lasts_at_best) {
    constexpr std::size_t most_steps = 960;
    const Stored stored(plan, fan);
    DaysChart chart{.starts = scenario.outage.starts,
                    .lasts = days_shown(scenario.outage, lasts_at_best) / units::hour,
                    .top = full_store(plan, fan),
                    .usable = number(plan.usable_at_start)};
    const auto& intervals = plan.likely.intervals;
    const auto add_point = [&](Duration at, units::Energy likely) {
        chart.at.push_back(at / units::hour);
        chart.nine_in_ten.push_back(number(stored.nine_in_ten(at)));
        chart.likely.push_back(number(likely));
        chart.one_in_ten.push_back(number(stored.one_in_ten(at)));
        if (stored.has_fan()) {
            chart.three_in_four.push_back(number(stored.three_in_four(at)));
            chart.one_in_four.push_back(number(stored.one_in_four(at)));
        }
        if (scenario.outage.open_ended)
            chart.still_out.push_back(chance::still_out(scenario.outage, at).value());
    };
    add_point({}, plan.likely.ledger.stored_at_start);
    const auto shown = static_cast<std::size_t>(
        std::ceil(double(intervals.size()) * chart.lasts / (scenario.outage.lasts / units::hour)));
    const std::size_t together = (shown + most_steps - 1) / most_steps;
    const auto beyond = [&](std::size_t i) {
        return i >= intervals.size() || intervals[i].to / units::hour > chart.lasts + 1e-6;
    };
    for (std::size_t i = 0; !beyond(i); ++i)
        if ((i + 1) % together == 0 || beyond(i + 1))
            add_point(intervals[i].to, intervals[i].flows.stored_at_end);
    chart.empty = std::max(0.0, number(plan.likely.ledger.stored_at_start) - chart.usable);
    chart.priorities = priorities_of(plan.loads);
    chart.hours = hours_of(plan, stored, chart.priorities);
    chart.nights = nights_of(plan.likely.events, chart.lasts);
    chart.markers = markers_of(scenario, plan);
    cut_off(chart);
    return chart;
}

}  // namespace answers
