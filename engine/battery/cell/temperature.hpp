// What the temperature of the cells does: how much charge comes out, how fast it may go in and out,
// how much more the pack resists. Outside its table a value goes on along the last two rows (never
// to the better) and says so.
#pragma once

#include <optional>

#include "scenario/pack.hpp"
#include "units/quantities.hpp"
#include "words/said.hpp"

namespace battery {

struct TemperatureFactor {
    double factor = 1.0;
    bool within_table = true;
    words::Said source;
};

// Part of the charge at 25 degC that can be drawn, above 0 to 1: slowly, of LiFePO4 at a third of
// the charge an hour; cold_lock.hpp has it by the rate. Above 25 degC no credit is taken.
[[nodiscard]] TemperatureFactor capacity_factor(scenario::Chemistry chemistry,
                                                units::Temperature temperature);

// Of AGM in half an hour to an hour, and in less. Source: [AGM temperature table].
struct FastCapacity {
    double in_an_hour = 1.0;
    double in_half_an_hour = 1.0;
};
[[nodiscard]] FastCapacity agm_fast_capacity(units::Temperature temperature);

// Resistance over that at 25 degC, at least 1.
[[nodiscard]] TemperatureFactor resistance_factor(scenario::Chemistry chemistry,
                                                  units::Temperature temperature);

// Largest current over capacity that LiFePO4 cells should be charged or discharged with; 0 is not
// at all. Nothing for lead-acid, which has no such grades. Source: [LiFePO4 48 V manual].
[[nodiscard]] std::optional<units::Frequency> graded_charge_rate(scenario::Chemistry chemistry,
                                                                 units::Temperature temperature);
[[nodiscard]] std::optional<units::Frequency> graded_discharge_rate(scenario::Chemistry chemistry,
                                                                    units::Temperature temperature);

// Sizing multiplier of vented lead-acid cells, at least 0.85 within its table of -3.9 to 51.7 degC.
//   source  [IEEE 485] table 1 (from memory)
[[nodiscard]] TemperatureFactor vented_sizing_multiplier(units::Temperature temperature);

}  // namespace battery
