// "After months in storage, is it ready?" Charge lost to the packs themselves and to what is left
// switched on, on any date; and when it must be topped up.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "units/time.hpp"

namespace handling {

inline constexpr units::Duration month = 365.25 / 12.0 * units::day;  // 730.5 h

// What one pack loses.
//   start       charge (battery/cell/percent.hpp) when it was put away
//   a_month     part of what is left that it loses in a month at the storage temperature
//   drain       steady current out of it from what is left switched on
//   capacity    charge that 100 % is
struct Keeping {
    units::StateOfCharge start{1.0};
    units::Share a_month;
    units::Current drain{};
    units::Charge capacity{};
};

// dS/dt = -k S - drain/capacity, never below 0.    battery/method.md (41)
[[nodiscard]] units::StateOfCharge charge_after(const Keeping& keeping, units::Duration time);
// Until the charge has fallen to this; nothing where it never does, zero where it is there.
[[nodiscard]] std::optional<units::Duration> time_until(const Keeping& keeping,
                                                        units::StateOfCharge charge);

struct StoredPack {
    std::string name;
    int count = 1;
    scenario::Chemistry chemistry{};
    Keeping keeping;
    units::StateOfCharge now;          // on the date asked for
    units::StateOfCharge switch_open;  // the same with everything switched off
    units::StateOfCharge top_up_at;    // below it the pack suffers
    units::StateOfCharge ready_from;   // at least this much makes it ready
    units::LocalTime top_up_by;
    bool tops_up = true;  // `top_up_by` is within ten years
};

// What is left of all packs together after so many months, with and without what is left on.
struct StoredMonth {
    units::LocalTime on;
    units::StateOfCharge charge;
    units::StateOfCharge switch_open;
};

//   charge_now       of all packs together
//   months           from the day it was put away to three months after `on`, at most ten years
//   drained, self_discharged   lost to each since it was put away
struct Stored {
    units::LocalTime since;
    units::LocalTime on;
    units::Temperature temperature{};
    units::Current drain{};
    bool switch_open = false;
    bool maintained = false;
    std::vector<StoredPack> packs;
    units::StateOfCharge charge_now;
    units::StateOfCharge charge_switch_open;
    std::vector<StoredMonth> months;
    units::Charge drained{};
    units::Charge self_discharged{};
    bool ready = false;
    std::optional<units::LocalTime> top_up_by;
    std::optional<units::LocalTime> top_up_by_switch_open;
    scenario::Findings findings;
    scenario::Assumptions assumptions;
};

//   on       the date asked for; absent: when the outage starts
//   fails    without a [storage] table, or when `on` is before it was put away
[[nodiscard]] units::Result<Stored> storage(const scenario::Scenario& scenario,
                                            std::optional<units::LocalTime> on = {});

// The same scenario, every pack at the charge it has left on that date.
[[nodiscard]] scenario::Scenario after_storage(scenario::Scenario scenario, const Stored& stored);

}  // namespace handling
