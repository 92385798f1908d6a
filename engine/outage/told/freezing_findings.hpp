// Lead-acid packs that freeze while they are drawn empty in the cold.
#pragma once

#include <string>
#include <vector>

#include "outage/course.hpp"
#include "scenario/finding.hpp"
#include "scenario/pack.hpp"
#include "unit/built.hpp"
#include "units/time.hpp"

namespace outage {

// The packs of one chemistry of a unit, as warm as their days are.
//   warmth   the first from 0
struct InTheCold {
    words::Said where;  // "pack main"
    scenario::Chemistry chemistry{};
    std::vector<unit::TemperatureFrom> warmth;
};

// A stop where a pack freezes during the course, with its time; a caution where it comes within 5 K
// of it, or below 60 % under 0 degC. Nothing for LiFePO4.
//   course   with intervals, whose charge is that of all packs
[[nodiscard]] scenario::Findings freezing_findings(const InTheCold& packs, const Course& course,
                                                   units::LocalTime starts);

}  // namespace outage
