// What do the panels give back?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "outage/plan.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "sizing/panel_counts.hpp"
#include "solar/placement_comparison.hpp"
#include "solar/recharge.hpp"
#include "solar/sun_setup.hpp"
#include "units/result.hpp"

namespace questions {

// The unit behind the panels, where the file describes one that can be planned.
//   counts       empty where they were not asked for
//   enough       of them; absent where the last still helps
//   each_helps   each panel beyond those of the file
struct SunAndUnit {
    outage::Plan plan;
    chance::Figures figures;
    sizing::SunReturn sun;
    std::vector<sizing::PanelCount> counts;
    std::optional<sizing::EnoughPanels> enough = {};
    bool each_helps = false;
};

// What the place gets on one day, before any panel.
//   outside     on level ground above the air
//   clearness   mean of the month
struct SunOfThePlace {
    units::Angle declination{};
    units::Duration above_horizon{};
    units::Irradiation outside{};
    solar::Clearness clearness;
};

// Power through one whole day on a dull, a likely and a bright sky.
struct SunDayCurves {
    units::LocalTime midnight;
    solar::SunSeries low;
    solar::SunSeries likely;
    solar::SunSeries high;
};

struct SunResults {
    solar::SunSetup setup;
    solar::Recharge recharge;  // taken, and of the whole outage kept; offered where no unit is
    SunDayCurves day;
    SunOfThePlace place;                                // of that day
    std::vector<units::Temperature> cells_in_full_sun;  // of each group, in air of 0 degC
    std::vector<solar::PlacementYield> placements;      // of that day
    std::optional<SunAndUnit> unit;
    words::Said why_no_unit;  // where there is none
};

struct SunFound {
    scenario::Scenario scenario;
    SunResults results;
};

// All groups together.
[[nodiscard]] int panels_in(const scenario::Scenario& scenario);

//   fails  where the place or the weather file cannot be used; a unit that cannot be planned is
//          left out, with the reason
[[nodiscard]] units::Result<SunFound> find(const scenario::ReadScenario& read,
                                           const SunAsked& asked, const How& how);

}  // namespace questions
