#include "demand/hours.hpp"

#include <set>

#include <gtest/gtest.h>

namespace {

using demand::Span;
using demand::Spans;
using units::day;
using units::hour;
using units::minute;

constexpr units::LocalTime at(int hours) {
    return units::LocalTime(20'000.0 * day + static_cast<double>(hours) * hour);
}

Span span(double from, double until) {
    return {.from = from * hour, .until = until * hour};
}

units::DailySpan daily(double from, double until) {
    return {.from = from * hour, .until = until * hour};
}

TEST(demand_hours, no_hours_and_no_days_is_the_whole_outage) {
    EXPECT_EQ(demand::daily_spans({}, {}, at(18), 30.0 * hour), (Spans{span(0, 30)}));
}

TEST(demand_hours, hours_count_from_local_midnight) {
    // The outage starts at 18:00; 06:00 to 07:00 comes 12 hours later.
    EXPECT_EQ(demand::daily_spans({daily(6, 7)}, {}, at(18), 48.0 * hour),
              (Spans{span(12, 13), span(36, 37)}));
}

TEST(demand_hours, a_night_runs_over_midnight_and_one_may_have_begun_before) {
    EXPECT_EQ(demand::daily_spans({daily(22, 6)}, {}, at(2), 48.0 * hour),
              (Spans{span(0, 4), span(20, 28), span(44, 48)}));
}

TEST(demand_hours, a_night_belongs_to_the_day_it_begins_on) {
    EXPECT_EQ(demand::daily_spans({daily(22, 6)}, {1}, at(2), 96.0 * hour), (Spans{span(20, 28)}));
    EXPECT_EQ(demand::daily_spans({}, {2}, at(18), 96.0 * hour), (Spans{span(6, 30)}));
}

TEST(demand_hours, hours_that_touch_or_overlap_are_one_span) {
    EXPECT_EQ(demand::daily_spans({daily(8, 10), daily(9, 11), daily(11, 12)}, {}, at(0), day),
              (Spans{span(8, 12)}));
    EXPECT_EQ(demand::daily_spans({daily(0, 24)}, {}, at(7), 3.0 * day), (Spans{span(0, 72)}));
}

TEST(demand_hours, a_cycle_has_run_before_the_outage_too) {
    const Spans spans =
        demand::cycle_spans({span(0, 2)}, 15.0 * minute, 45.0 * minute, 40.0 * minute);
    // On at -5 min (cut to 0), 40 min and 85 min.
    ASSERT_EQ(spans.size(), 3U);
    EXPECT_EQ(spans[0], (Span{0.0 * minute, 10.0 * minute}));
    EXPECT_EQ(spans[1], (Span{40.0 * minute, 55.0 * minute}));
    EXPECT_EQ(spans[2], (Span{85.0 * minute, 100.0 * minute}));
}

TEST(demand_hours, a_cycle_keeps_its_phase_across_hours_off) {
    const Spans spans = demand::cycle_spans({span(0, 1), span(3, 3.5)}, 20.0 * minute,
                                            60.0 * minute, 10.0 * minute);
    EXPECT_EQ(spans, (Spans{{10.0 * minute, 30.0 * minute}, {190.0 * minute, 210.0 * minute}}));
}

TEST(demand_hours, a_cycle_that_never_stops_is_its_hours) {
    EXPECT_EQ(demand::cycle_spans({span(1, 5)}, hour, hour, 7.0 * minute), (Spans{span(1, 5)}));
}

TEST(demand_hours, a_month_of_cycles_does_not_drift) {
    // 7 s of every 13 s: the last of 199,385 cycles starts where integers say.
    const Spans spans = demand::cycle_spans({{.from = {}, .until = 30.0 * day}},
                                            7.0 * units::second, 13.0 * units::second, {});
    const auto last = static_cast<double>((30LL * 86400 - 1) / 13 * 13);
    EXPECT_EQ(spans.back().from, last * units::second);
}

TEST(demand_hours, removing_and_keeping_make_the_whole) {
    const Spans a{span(0, 4), span(6, 9), span(12, 13)};
    const Spans b{span(1, 2), span(3, 7), span(8, 12.5)};
    EXPECT_EQ(demand::common(a, b),
              (Spans{span(1, 2), span(3, 4), span(6, 7), span(8, 9), span(12, 12.5)}));
    EXPECT_EQ(demand::without(a, b), (Spans{span(0, 1), span(2, 3), span(7, 8), span(12.5, 13)}));
    EXPECT_EQ(demand::either(a, b), (Spans{span(0, 13)}));
    EXPECT_EQ(demand::total(a) / hour, 8.0);
}

TEST(demand_hours, a_gap_may_cover_several_spans_and_a_span_several_gaps) {
    EXPECT_EQ(demand::without({span(0, 1), span(2, 3), span(4, 6)}, {span(0.5, 5)}),
              (Spans{span(0, 0.5), span(5, 6)}));
    EXPECT_EQ(demand::without({span(0, 10)}, {span(1, 2), span(3, 4)}),
              (Spans{span(0, 1), span(2, 3), span(4, 10)}));
}

TEST(demand_hours, phases_are_spread_by_name_and_stay_within_the_cycle) {
    std::set<double> phases;
    for (const char* name :
         {"fridge", "freezer", "fridge 2", "freezer 2", "pump", "pump 2", "a", "b", "c", "d"}) {
        const units::Duration phase = demand::usual_phase(name, 45.0 * minute);
        EXPECT_GE(phase, 0.0 * minute);
        EXPECT_LT(phase, 45.0 * minute);
        EXPECT_EQ(phase, demand::usual_phase(name, 45.0 * minute));
        phases.insert(phase.value());
    }
    EXPECT_EQ(phases.size(), 10U);
    EXPECT_GT(*phases.rbegin() - *phases.begin(), 0.5 * 2700.0);
}

}  // namespace
