// Loads of the file that the packs do not feed.
#pragma once

#include <cstddef>
#include <string>

#include "scenario/scenario.hpp"

namespace scenario {

// Whether set_aside would change it.
[[nodiscard]] bool has_set_aside(const Scenario& scenario);

// Takes out the loads of which there are none (count = 0), moves those that run on a generator to
// `on_generator`, and lets the others know at which place of the file they stand. Done twice, it
// changes nothing the second time.
void set_aside(Scenario& scenario);

// The key of a load, such as "load[2]".
//   index  among the scenario's loads as they are now
[[nodiscard]] std::string key_of(const Load& load, std::size_t index);

}  // namespace scenario
