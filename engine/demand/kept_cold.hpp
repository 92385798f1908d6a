// Refrigerators and freezers: what they draw in a warm room, and what becomes of the cold while
// they are off. method.md (5) to (10).
#pragma once

#include <vector>

#include "demand/hours.hpp"
#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/range.hpp"

namespace demand {

// Of the mean draw in one room to that in another, or of one draw to another; may exceed 1.
using DrawRatio = units::Fraction<struct DrawRatioMeaning>;

// Which kind the load is: as it says or as what it is like; otherwise by its name, where that is one
// of the list of appliances; otherwise a refrigerator-freezer where its motor is a refrigeration
// compressor's, and nothing.
[[nodiscard]] scenario::KeepsCold keeps_cold(const scenario::Load& load);

// The room in which a yearly label's energy comes out, 24.5 degC by (5).
[[nodiscard]] units::Temperature room_of_labels();

// Mean draw always on in `room`, over that in `reference`; (5), with (6) as the end of the range
// that lies farther from it.
//   takes      a kind that keeps something cold; below 0 degC both rooms count as 0 degC
//   gives      never less the warmer the room
[[nodiscard]] units::Range<DrawRatio> draw_by_room(scenario::KeepsCold kind,
                                                   units::Temperature room,
                                                   units::Temperature reference);

// Where it keeps its food: 3 degC, a freezer -18 degC; common practice, no source.
[[nodiscard]] units::Temperature set_point_of(scenario::KeepsCold kind);

// In which the e-th part of the way to the room's warmth is left, with food in it: 25 h, a freezer
// 38 h; method.md, Assumptions.
[[nodiscard]] units::Duration time_constant_of(scenario::KeepsCold kind);

// How far it has warmed: 0 at its set point, 1 as warm as its room.
using Warmed = units::Fraction<struct WarmedMeaning>;

struct ColdKeeper {
    units::Duration time_constant{};
    DrawRatio capacity;  // power while on over the mean power always on, in this room; above 0
};

// After a time switched off; (7).
[[nodiscard]] Warmed warmed_after(const ColdKeeper& keeper, Warmed before, units::Duration off);

// Time on until it is back at its set point; infinite where its capacity does not reach; (8).
[[nodiscard]] units::Duration recovery_of(const ColdKeeper& keeper, Warmed before);

// After a time on and not yet back; (8).
[[nodiscard]] Warmed cooled_after(const ColdKeeper& keeper, Warmed before, units::Duration on);

struct OffStretch {
    Span off;
    Warmed before;
    Warmed after;
    units::Duration
        made_up_in{};  // of running; infinite where the time on that follows is too short
};

struct ColdCourse {
    Spans recovering;  // on without pause
    Spans steady;      // on, at its set point
    std::vector<OffStretch> stretches;
    Warmed warmest;
    Warmed at_end;
    // The mean of `warmed` over the outage times its length: what the walls let in less for it.
    units::Duration warm_time{};

    friend bool operator==(const ColdCourse&, const ColdCourse&) = default;
};

// From its set point, on in `served` and off otherwise, exact between switchings.
//   takes      served, within 0 to lasts
[[nodiscard]] ColdCourse cold_course(const ColdKeeper& keeper, const Spans& served,
                                     units::Duration lasts);

// Energy over the outage, in the time for which the mean power would run to draw as much: by its
// time on, (9), and by the heat that came in through its walls, (10). Equal but for rounding.
[[nodiscard]] units::Duration drawn_while_on(const ColdKeeper& keeper, const ColdCourse& course);
[[nodiscard]] units::Duration drawn_by_heat(const ColdKeeper& keeper, const ColdCourse& course,
                                            units::Duration lasts);

}  // namespace demand
