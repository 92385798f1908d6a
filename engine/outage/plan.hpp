// The outage plan: the likely course, and an earliest and a latest one when inputs are uncertain.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "outage/clock/motor_starts.hpp"
#include "outage/course.hpp"
#include "outage/rated_leads.hpp"
#include "outage/told/load_uses.hpp"
#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace outage {

struct Ready;

// How long the loads of this rank and those before it last when the others are off from the start.
struct LadderStep {
    int priority = 1;
    units::Duration lasts{};
    bool survives = false;
};

// What the sun gives on each local day of the outage.
struct SunDay {
    int day = 1;
    units::Energy offered{};
    units::Energy taken{};  // into loads or packs, likely course
    units::Energy clipped{};
    units::Energy unused{};
};

// How long the likely course lasts with more packs of the same kind.
struct MorePacks {
    int packs = 0;  // all together
    units::Duration lasts{};
    bool survives = false;
};

struct Plan {
    Plan();
    Plan(const Plan& other);
    Plan(Plan&& other) noexcept;
    Plan& operator=(const Plan& other);
    Plan& operator=(Plan&& other) noexcept;
    ~Plan();

    Course likely;
    Course earliest;         // every uncertain input at its hungry end, sun at its dull end
    Course latest;           // every uncertain input at its frugal end, sun at its bright end
    bool uncertain = false;  // earliest and latest differ from likely
    std::vector<LoadUse> loads;
    std::vector<MotorStart> starts;  // in the likely course
    std::vector<SunDay> sun;
    units::Power inverter_idle{};
    std::vector<LadderStep> ladder;  // by rank; no later one lasts longer
    // Time in which something goes without, had the inverter the other restart than the file's;
    // when it went off at all.
    std::optional<units::Duration> without_otherwise;
    bool by_hand = true;  // that the inverter comes back
    // What more packs like these would do; empty when the likely course survives.
    std::vector<MorePacks> more_packs;
    int packs = 0;                          // all kinds together
    std::vector<std::string> bank_names;    // by Event::pack
    std::vector<RatedLead> leads;           // of the packs
    unit::Limits main_limits;               // of the way from the bus to the inverter
    std::vector<std::string> branch_names;  // by Event::branch
    units::Energy usable_at_start{};
    std::optional<units::Temperature> coldest;  // day of packs that follow their room
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

// Runs the clock over the outage three times.
//   fails      where the scenario cannot be planned: no pack, an unknown place with panels,
//              unlike chemistries on one bus; each at its key
//   folder     as make_ready takes it
//   source     method.md of this folder
[[nodiscard]] units::Result<Plan> plan_outage(const scenario::Scenario& scenario,
                                              const std::string& folder = {});
[[nodiscard]] Plan plan_outage(const Ready& ready);

// From one more pack up to `most`: those that had to be tried to find the fewest that survive,
// which comes last; when none does, the last is `most` more.
[[nodiscard]] std::vector<MorePacks> lasts_with_more_packs(const Ready& ready, int most);

}  // namespace outage
