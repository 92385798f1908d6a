// How warm the packs are over the days of an outage, where they stand in a room that cools.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "units/quantities.hpp"

namespace outage {

// The packs take the mean of their room's day: a case of ten kilograms follows within hours.
struct PackWarmth {
    units::Temperature mean;               // of the outage
    std::vector<units::Temperature> days;  // of each local day, as far as the outage touches it
};

// Where outage.battery_follows_room is true and battery_temperature is not given; absent
// otherwise. With room_temperature the room is heated to it; without, it cools from 18 degC half
// way to the air outside. method.md (10)
//   folder       against which place.weather_file is taken
//   assumptions  added to: what the room is taken for where the file is silent
[[nodiscard]] std::optional<PackWarmth> warmth_of_packs(const scenario::Scenario& scenario,
                                                        const std::string& folder,
                                                        scenario::Assumptions& assumptions);

// The scenario for a question that knows one temperature alone: where its packs follow their room,
// with battery_temperature set and told; else as it is.
//   the first   to that of the coldest day, for what the cold makes worse
//   the second  to the mean of the outage from this moment on
[[nodiscard]] scenario::Scenario at_the_coldest(scenario::Scenario scenario,
                                                const std::string& folder,
                                                scenario::Assumptions& assumptions);
[[nodiscard]] scenario::Scenario at_the_mean_from(units::LocalTime from,
                                                  scenario::Scenario scenario,
                                                  const std::string& folder,
                                                  scenario::Assumptions& assumptions);

// Days on which a LiFePO4 pack of the scenario is at or below its coldest temperature for charging;
// one entry a day, empty without a warmth.
[[nodiscard]] std::vector<bool> days_too_cold_to_charge(const scenario::Scenario& scenario,
                                                        const std::optional<PackWarmth>& warmth);

// A caution when there are such days.
[[nodiscard]] scenario::Findings cold_room(const std::vector<bool>& too_cold,
                                           const std::optional<PackWarmth>& warmth);

}  // namespace outage
