// What all loads together draw, and when: the change points of the whole outage.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "demand/cold.hpp"
#include "demand/hours.hpp"
#include "demand/power.hpp"
#include "scenario/assumption.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace demand {

// Which end of every load's range.
enum class Case { low, likely, high };

// Holds from `from` until the next step's, the last until the outage ends.
struct DemandStep {
    units::Duration from{};              // after the outage starts
    units::Power ac{};                   // at the inverter's outlets
    units::ReactivePower ac_reactive{};  // lagging
    units::Power direct{};               // at the bus: 12 V and USB loads with their adaptors
    units::Power direct_useful{};        // the part of `direct` that reaches the loads
    units::Power in_branches{};          // the part of `direct` lost in the circuits to them
    units::Voltage lowest{};   // at the bus, below which the first of these 12 V loads goes out
    bool inverter_on = false;  // by its daily hours; `ac` is zero while it is off
    bool asleep = false;       // in search mode: switched on, and nothing wakes it
    units::Power charger{};    // offered at the bus by chargers other than the sun

    friend bool operator==(const DemandStep&, const DemandStep&) = default;
};

// Items of one load that switch at the same moments.
struct Strand {
    int items = 1;
    Spans on;
    DrawRatio of_power{1.0};  // what each draws, of the load's power
};

// Of a load that keeps food cold.
struct KeptCold {
    ColdPlan plan;
    ColdCourse course;  // at the likely draw
};

struct PlannedLoad {
    std::string name;
    scenario::Outlet from{};
    int priority = 3;
    int rank = 3;  // health is of the first, whatever priority the file gives it
    int count = 1;
    bool has_motor = false;  // which must come up to speed each time it is switched on
    LoadPower power;         // of one item
    std::optional<units::Voltage> lowest = {};  // of a 12 V or USB load, at its plug
    Spans may_run;                              // by hours and days alone
    bool usual_hours = false;     // those of its row of the appliance library, no more than a guess
    Spans refused;                // of may_run: the inverter is switched off
    Spans unwoken;                // of may_run: in search mode, all that runs does not wake it
    std::vector<Strand> strands;  // what is drawn; items of a cycling load follow one another
    // The same at the ends of the range, where the warmth of a room changes the hours; empty else.
    std::vector<Strand> strands_low;
    std::vector<Strand> strands_high;
    std::optional<KeptCold> cold;
};

struct Demand {
    units::Duration lasts{};
    Spans inverter_on;
    std::optional<units::Power> search_threshold;  // of the inverter; nothing without search mode
    std::vector<PlannedLoad> loads;                // in the file's order
    scenario::Assumptions assumptions;
};

// When each load of the scenario runs.
//   fails      at "outage.lasts" when it is not above zero; at "load[i].…" for what load_power
//              refuses, days below 1, a count below 1, a cycle of under a second; at "inverter"
//              when a load needs one and there is none
[[nodiscard]] units::Result<Demand> plan_demand(const scenario::Scenario& scenario);

// Sorted, the first at 0; changes at one instant are one step; equal neighbours are joined.
// The order of the loads does not matter, to the last bit.
[[nodiscard]] std::vector<DemandStep> demand_steps(const Demand& demand, Case which);

// What the load draws at this end; nothing where its `strands` were taken away.
[[nodiscard]] const std::vector<Strand>& strands_at(const PlannedLoad& load, Case which);

}  // namespace demand
