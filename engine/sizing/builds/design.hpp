// A scenario made ready for any number of packs and panels.
#pragma once

#include <limits>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "abreast/lanes.hpp"
#include "abreast/own.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "sizing/skies.hpp"
#include "units/result.hpp"

namespace sizing {

// The likely demand and the likely unit; only packs, panels and weather are varied.
//   lit, dark  the outage with and without panels: without, fewer instants matter
//   units          by count of packs, from one; needs: of each step of the demand, of any count
//   most_weathers  a weather file has only its start dates
struct Design {
    std::shared_ptr<const outage::Ready> ready;
    Skies skies;
    abreast::LaneWorld lit;
    abreast::LaneWorld dark;
    int most_packs = 16;
    int most_panels = 12;  // 0 where the scenario describes no panel
    int packs = 1;         // as the scenario has them
    int panels = 0;
    std::vector<outage::Unit> units;
    std::vector<abreast::Need> needs;
    int most_weathers = std::numeric_limits<int>::max();

    // Packs that share the current evenly are one in the lanes.
    [[nodiscard]] bool alike(int count) const {
        return units[static_cast<std::size_t>(count - 1)].others.empty();
    }
    [[nodiscard]] bool all_alike() const { return alike(most_packs); }
};

//   folder        as outage::make_ready takes it
//   most_packs    at least 1; most_panels at least 0; nothing is counted beyond them
//   fails         as outage::make_ready
[[nodiscard]] units::Result<Design> make_design(const scenario::Scenario& scenario,
                                                const std::string& folder, int most_packs,
                                                int most_panels);
[[nodiscard]] Design design_of(std::shared_ptr<const outage::Ready> ready, int most_packs,
                               int most_panels);

// Runs up to `lanes` outages, through the lanes or, where they cannot, by the clock; endings one a
// job. The sun of a job without panels is empty.
void run_outages(const Design& design, std::span<const abreast::LaneJob> jobs,
                 std::span<abreast::LaneEnding> endings, abreast::LaneCost* cost = nullptr);

}  // namespace sizing
