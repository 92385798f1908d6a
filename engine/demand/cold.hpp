// A refrigerator or freezer among the loads: its pace in this room at each end of the range.
#pragma once

#include <array>
#include <optional>
#include <string>

#include "demand/kept_cold.hpp"
#include "scenario/assumption.hpp"
#include "scenario/load.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace demand {

// Draws are shares of the load's power.
struct ColdPace {
    ColdKeeper keeper;
    units::Duration on{};  // of each cycle, at its set point; zero where it states no cycle
    DrawRatio steady;      // while on, at its set point
    DrawRatio recovering;  // without pause, until it is back there
};

struct ColdPlan {
    scenario::KeepsCold kind{};
    units::Temperature room{};
    std::array<ColdPace, 3> paces;  // at less, likely and more draw by the warmth of the room
};

// Nothing for a load that keeps nothing cold.
//   takes      a load that load_power takes
//   assumes    the rooms and the kind where the file is silent; tells what the room does to the
//              draw
[[nodiscard]] std::optional<ColdPlan> cold_plan(const scenario::Load& load,
                                                const scenario::Outage& outage,
                                                const std::string& where,
                                                scenario::Assumptions& assumed);

// How warm it is inside.
[[nodiscard]] units::Temperature inside(const ColdPlan& plan, Warmed warmed);

}  // namespace demand
