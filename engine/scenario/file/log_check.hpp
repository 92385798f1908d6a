// What the entries of the log must be to one another and to the rest of the file.
#pragma once

#include "scenario/file/reading.hpp"
#include "scenario/scenario.hpp"

namespace scenario {

// Refuses, each with its line: a pack or load that is not in the file, a time before the outage,
// what cannot both be, a pack that comes back without having left, sun without panels, a strike
// that strikes nothing. Warns of what counts for nothing: entries after the outage or after the
// supply came back, a load that is switched off twice.
void check_log(Reading& reading, const Spot& root, const Scenario& scenario);

}  // namespace scenario
