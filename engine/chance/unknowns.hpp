// What is not known of one load, one pack, the inverter and the sun: how far from its likely value
// each may lie. method.md (3)
#pragma once

#include <limits>

#include "demand/power.hpp"
#include "scenario/inverter.hpp"
#include "scenario/load.hpp"
#include "scenario/pack.hpp"
#include "units/quantities.hpp"

namespace chance {

// Standard deviations of the logarithm of a factor around its median 1, on its greater and its
// smaller side.
//   most    the factor is never more
struct Sides {
    double above = 0.0;
    double below = 0.0;
    double most = std::numeric_limits<double>::infinity();
};

// The factor at a score of the standard normal distribution.
[[nodiscard]] double factor_at(const Sides& sides, double score);

// Score that so much of a standard normal distribution lies below.
//   drawn   in the open interval 0 to 1
[[nodiscard]] double score_of(double drawn);

// So much that a range of +- width is met four times in five.
[[nodiscard]] double deviation_of_width(double width);

// Of a load's draw while it runs.
//   load    its `like` applied
[[nodiscard]] Sides draw_of(const scenario::Load& load, const demand::LoadPower& power);

// What the warmth of a day does to a load.
enum class DayKind {
    own,   // nothing: each day is its own
    warm,  // a compressor, with all other compressors
    cold,  // heating and its blowers, together
};

//   load    its `like` applied
[[nodiscard]] DayKind day_kind_of(const scenario::Load& load);
[[nodiscard]] double day_deviation(DayKind kind);

[[nodiscard]] double idle_deviation(const scenario::Inverter& inverter);
[[nodiscard]] double capacity_deviation(const scenario::Pack& pack);
inline constexpr double resistance_deviation = 0.30;  // common practice, no source
inline constexpr double charging_deviation = 0.32;    // four in five within 0.66 and 1.51; ours
// Of an AGM pack whose label tells one row: how much less it gives the faster it is drawn, for
// battery::with_softness; its ends are met or passed once in ten each. The hard end is the hungry
// one.
[[nodiscard]] double softness_at(double score);
inline constexpr double panels_deviation = 0.10;  // common practice, no source

// Of the packs' temperature.
//   told    the file gives it
[[nodiscard]] units::TemperatureDifference warmth_deviation(bool told);

}  // namespace chance
