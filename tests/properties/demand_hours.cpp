// Hours over midnight against a reading of the wall clock, minute by minute.
#include <random>

#include <gtest/gtest.h>

#include "demand/hours.hpp"

namespace {

using units::day;
using units::minute;

units::Duration minutes(int count) {
    return static_cast<double>(count) * minute;
}

struct Schedule {
    int starts = 0;                          // minutes after midnight
    int lasts = 0;                           // minutes
    std::vector<std::pair<int, int>> hours;  // minutes after midnight
    std::vector<int> days;
};

Schedule any_schedule(std::mt19937& random) {
    const auto between = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    Schedule schedule{
        .starts = between(0, 1439), .lasts = between(1, 4 * 1440), .hours = {}, .days = {}};
    for (int i = between(0, 3); i > 0; --i) {
        const int from = between(0, 1439);
        const int until = between(0, 9) == 0 ? 1440 : between(0, 1439);
        if (from != until) {
            schedule.hours.emplace_back(from, until);
        }
    }
    for (int i = between(0, 2); i > 0; --i) {
        schedule.days.push_back(between(1, 6));
    }
    return schedule;
}

bool listed(const Schedule& schedule, int number) {
    if (schedule.days.empty()) {
        return true;
    }
    for (const int each : schedule.days) {
        if (each == number) {
            return true;
        }
    }
    return false;
}

// What a person with a clock and a calendar would say at that minute.
bool runs_by_the_clock(const Schedule& schedule, int minutes_into_outage) {
    const int of_first_day = schedule.starts + minutes_into_outage;
    const int today = of_first_day / 1440 + 1;
    const int clock = of_first_day % 1440;
    if (schedule.hours.empty()) {
        return listed(schedule, today);
    }
    for (const auto& [from, until] : schedule.hours) {
        const bool over_midnight = until < from;
        if (!over_midnight && from <= clock && clock < until && listed(schedule, today)) {
            return true;
        }
        if (over_midnight && clock >= from && listed(schedule, today)) {
            return true;
        }
        if (over_midnight && clock < until && listed(schedule, today - 1)) {
            return true;
        }
    }
    return false;
}

demand::Spans spans_of(const Schedule& schedule) {
    std::vector<units::DailySpan> hours;
    for (const auto& [from, until] : schedule.hours) {
        hours.push_back({.from = minutes(from), .until = minutes(until)});
    }
    return demand::daily_spans(hours, schedule.days,
                               units::LocalTime(19'000.0 * day + minutes(schedule.starts)),
                               minutes(schedule.lasts));
}

// Whether each minute from `first` on, up to `end`, lies in a span.
std::vector<bool> minute_by_minute(const demand::Spans& spans, int first, int end) {
    std::vector<bool> inside;
    std::size_t span = 0;
    const double length = minute / units::second;
    for (int now = first; now < end; ++now) {
        while (span < spans.size() && spans[span].until.value() / length <= now) {
            ++span;
        }
        inside.push_back(span < spans.size() && spans[span].from.value() / length <= now);
    }
    return inside;
}

TEST(demand_properties, ten_thousand_schedules_run_when_the_clock_says) {
    std::mt19937 random(20260114);
    for (int i = 0; i < 10'000; ++i) {
        const Schedule schedule = any_schedule(random);
        const demand::Spans spans = spans_of(schedule);
        const std::vector<bool> inside = minute_by_minute(spans, 0, schedule.lasts);
        for (int now = 0; now < schedule.lasts; ++now) {
            if (inside[static_cast<std::size_t>(now)] != runs_by_the_clock(schedule, now)) {
                FAIL() << "schedule " << i << " at minute " << now;
            }
        }
        ASSERT_TRUE(spans.empty() || spans.back().until <= minutes(schedule.lasts));
    }
}

TEST(demand_properties, ten_thousand_cycles_run_when_a_stopwatch_says) {
    std::mt19937 random(7);
    const auto between = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    for (int i = 0; i < 10'000; ++i) {
        const int every = between(1, 400);
        const int on = between(1, every);
        const int phase = between(0, 800);
        const int from = between(0, 1000);
        const int until = from + between(1, 2000);
        const demand::Spans spans = demand::cycle_spans(
            {{minutes(from), minutes(until)}}, minutes(on), minutes(every), minutes(phase));
        const std::vector<bool> inside = minute_by_minute(spans, from, until);
        for (int now = from; now < until; ++now) {
            if (inside[static_cast<std::size_t>(now - from)] !=
                ((now + 1000 * every - phase) % every < on)) {
                FAIL() << "cycle " << i << " at minute " << now;
            }
        }
    }
}

}  // namespace
