// "What do my panels give back?" in finished words and numbers.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "outage/plan.hpp"
#include "scenario/scenario.hpp"
#include "sizing/panel_counts.hpp"
#include "solar/placement_comparison.hpp"
#include "solar/recharge.hpp"
#include "solar/sun_setup.hpp"

namespace answers {

// The unit behind the panels, where the file describes one that can be planned.
struct SunAndUnit {
    outage::Plan plan;
    chance::Figures figures;
    sizing::SunReturn sun;
    std::vector<sizing::PanelCount> counts;
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
    std::vector<solar::PlacementYield> placements;  // of that day
    std::optional<SunAndUnit> unit;
    std::string why_no_unit;  // in words, where there is none
};

// What each day gives back with its range, what other placements and other counts of panels would,
// and where adding panels stops helping.
//   gives   `defect` set when the energy account does not close
[[nodiscard]] Answer sun_answer(const scenario::Scenario& scenario, const SunResults& results);

}  // namespace answers
