// When loads may run: spans of time after the outage starts, from daily hours and duty cycles.
#pragma once

#include <string_view>
#include <vector>

#include "units/clock.hpp"
#include "units/quantities.hpp"
#include "units/time.hpp"

namespace demand {

// From `from`, which counts, until `until`, which does not; after the outage starts.
struct Span {
    units::Duration from{};
    units::Duration until{};

    friend bool operator==(const Span&, const Span&) = default;
};

// Ascending; no two overlap or touch; none is empty.
using Spans = std::vector<Span>;

// The hours of the listed days within the outage.
//   takes      hours, empty for all hours; days, 1 for the calendar day in which the outage starts,
//              empty for every day. Hours that run over midnight belong to the day they begin on,
//              so "22:00-06:00" on days 1 and 2 is two whole nights
[[nodiscard]] Spans daily_spans(const std::vector<units::DailySpan>& hours,
                                const std::vector<int>& days, units::LocalTime starts,
                                units::Duration lasts);

// The on-times of a cycle: phase + k every, for all whole k, cut to `within`. Each time is one
// product, so a month of cycles does not drift.
//   takes      0 < on <= every
[[nodiscard]] Spans cycle_spans(const Spans& within, units::Duration on, units::Duration every,
                                units::Duration phase);

[[nodiscard]] Spans common(const Spans& a, const Spans& b);
[[nodiscard]] Spans either(const Spans& a, const Spans& b);
[[nodiscard]] Spans without(const Spans& spans, const Spans& removed);
[[nodiscard]] units::Duration total(const Spans& spans);

// The phase of a load that states none: spread over the cycle by whatever words tell it from others,
// in whole seconds, so that equal cycles do not all start together.
[[nodiscard]] units::Duration usual_phase(std::string_view name, units::Duration every);

}  // namespace demand
