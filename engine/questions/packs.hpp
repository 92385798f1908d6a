// How many packs, and panels, to build?
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "outage/ready.hpp"
#include "questions/asked.hpp"
#include "scenario/file/read.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/ration.hpp"
#include "sizing/what_matters.hpp"
#include "units/result.hpp"

namespace questions {

// What the motors ask of the number of packs.
//   packs   with which every motor surely starts by itself
//   load    which asks for most of them
//   never   those that no number of packs makes sure
struct StartNeeds {
    int packs = 1;
    std::string load;
    std::vector<std::string> never;
};

inline constexpr int usual_most_packs = 16;
inline constexpr int usual_most_panels = 12;

// Builds that were looked at.
//   fewer   than is usual, for the time that it takes
struct LookedAt {
    int packs = usual_most_packs;
    int panels = usual_most_panels;
    bool fewer = false;
};

//   of_the_file    the unit as it is; nothing where it lies beyond the grid
//   packs, panels  as the scenario has them
struct PacksFound {
    scenario::Scenario scenario = {};
    std::shared_ptr<const outage::Ready> ready = {};
    sizing::Grid grid = {};
    sizing::Builds builds = {};
    std::optional<sizing::Build> of_the_file = {};
    std::optional<StartNeeds> starts = {};
    std::vector<sizing::Influence> influences = {};
    sizing::Ladder ladder = {};
    int packs = 1;
    int panels = 0;
    LookedAt looked_at = {};
    std::uint64_t seed = 1;
};

//   fails   without a load; as outage::make_ready and planned_starts; where it would take too long
//           and nobody named a number of members; where it is stopped before its end
[[nodiscard]] units::Result<PacksFound> find(const scenario::ReadScenario& read,
                                             const PacksAsked& asked, const How& how);

}  // namespace questions
