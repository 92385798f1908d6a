// From what is known of a load to the power it takes while it runs.
#pragma once

#include <string>

#include "scenario/assumption.hpp"
#include "scenario/load.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "words/said.hpp"

namespace demand {

// One item, while it runs, at its own plug. low <= likely <= high, all at least 0.
struct LoadPower {
    units::Power low{};
    units::Power likely{};
    units::Power high{};
    units::PowerFactor factor{1.0};    // lagging
    units::Efficiency converter{1.0};  // of a 12 V or USB adaptor; 1 behind the inverter
    words::Said from_what;             // "metered 1.9 kWh over 31 h"
};

//   takes      where, the load's key, such as "load[0]"
//   gives      running power. A meter and a yearly label tell a mean: with a duty cycle the running
//              power is mean x every / on. A nameplate is an upper bound: `high` is volts x amperes
//              x the highest power factor
//   fails      at keys below `where`: nothing known of the draw, a time or power factor of zero
//   assumes    evidence, power factor and adaptor efficiency where the file is silent
//   source     widths of 10, 25 and 50 %: method.md, Assumptions; a label by its age:
//              [Paul 2021]
[[nodiscard]] units::Result<LoadPower> load_power(const scenario::Load& load,
                                                  const std::string& where,
                                                  scenario::Assumptions& assumed);

// Stated so, or by its row in the list of appliances; never by its priority.
[[nodiscard]] bool is_medical(const scenario::Load& load);

// How long it stays on when charge is short, 1 the longest: its priority, and 1 for what is
// medical.
[[nodiscard]] int rank_of(const scenario::Load& load);

// Its compressor starts and stops by itself.
[[nodiscard]] bool has_compressor(const scenario::Load& load);

}  // namespace demand
