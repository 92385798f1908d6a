// How long an inverter holds more than its continuous rating. See overload.md.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/inverter.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"
#include "units/result.hpp"

namespace inverter {

// Apparent power over the continuous rating, or real power over the continuous real one.
using LoadMultiple = units::Fraction<struct LoadMultipleMeaning>;

struct OverloadPoint {
    LoadMultiple multiple;    // above 1
    units::Duration holds{};  // above 0
};

// In rising multiple and not rising time. Empty: nothing above the rating is held.
using OverloadCurve = std::vector<OverloadPoint>;

// The points in order of their multiple.
//   fails   at the point's place in rising multiple, [0] the first: a multiple of 1 or less, a time
//   of 0 or less, a multiple given
//           twice, a higher multiple held for longer
[[nodiscard]] units::Result<OverloadCurve> overload_curve(std::vector<OverloadPoint> points);

// Absent: forever, at a multiple of 1 and below. Between points the logarithm of the time is
// straight in the multiple; below the first point its time; above the last point 0.
[[nodiscard]] std::optional<units::Duration> hold_time(const OverloadCurve& curve,
                                                       LoadMultiple multiple);

// The last point, beyond which nothing is held; 1 of an empty curve.
[[nodiscard]] LoadMultiple largest_multiple(const OverloadCurve& curve);

// How much of what it holds is used up; trips at 1, which a start must not reach.
struct Strain {
    units::Share used;         // sum of time over hold time
    bool above_curve = false;  // some step was beyond the last point, and trips at once
    LoadMultiple largest;

    [[nodiscard]] bool trips() const { return above_curve || used.value() > 1.0; }
};

struct OverloadStep {
    LoadMultiple multiple;
    units::Duration lasts{};
};

// Straight sum over the steps; nothing recovers between them. A rest of at least
// `recovery_rest()` clears it.
[[nodiscard]] Strain strain_of(const OverloadCurve& curve, std::span<const OverloadStep> steps);

// 15 min: one maker's manual, [Inverter manuals].
[[nodiscard]] units::Duration recovery_rest();

struct OverloadCurves {
    units::Ends<OverloadCurve> curve{};  // low holds for the shortest time
    bool duration_known = false;         // false: a start that needs the surge is marginal at best
    LoadMultiple known_up_to{1.0};       // how far the times are, where they are not known further
    scenario::Assumptions assumptions{};
};

// From the surge and its duration where they are stated, otherwise from ranges that are told.
//   takes   an inverter with a positive continuous rating
[[nodiscard]] OverloadCurves overload_curves(const scenario::Inverter& inverter);

// A rating at a case temperature: all of it to 40 degC, then 1 % less for each degree, down to
// nothing; common practice, no source.
[[nodiscard]] units::Power derated(units::Power continuous, units::Temperature at_the_case);
[[nodiscard]] units::ApparentPower derated(units::ApparentPower continuous,
                                           units::Temperature at_the_case);

}  // namespace inverter
