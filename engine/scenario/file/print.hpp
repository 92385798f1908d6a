// A scenario as the text of a file, for files that no person wrote: reading it gives the same
// values.
#pragma once

#include <string>

#include "scenario/scenario.hpp"

namespace scenario {

// Every key that has a value, tables in the order of the format. To change a file that a person
// wrote, use save.hpp, which keeps their words.
[[nodiscard]] std::string print(const Scenario& scenario);

}  // namespace scenario
