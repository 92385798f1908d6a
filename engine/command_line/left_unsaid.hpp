// What a scenario lacks without being wrong, so that an answer does not pass over it.
#pragma once

#include "scenario/file/read.hpp"

namespace command_line {

// Warnings: no load is described; a place that is not known and that nothing asks for.
void warn_of_what_is_left_unsaid(scenario::ReadScenario& read);

}  // namespace command_line
