// How much work an outage is, so that every question answers within seconds by itself: what would
// take longer is either looked at under fewer weathers or refused. method.md, "How much is taken
// on"
#pragma once

#include "outage/ready.hpp"

namespace outage {

// Of one run of the clock: its changes of load, sun and warmth, as many times over as packs that
// differ make each of them cost (tests/bench/unlike_packs).
[[nodiscard]] double steps_of_a_run(const Ready& ready);

// The same for members side by side, in steps of lithium packs: those of lead, with two wells and an
// efficiency of charging that falls towards full, take more steps one by one.
[[nodiscard]] double member_steps_of_a_run(const Ready& ready);

// Length of the account's intervals: a quarter of an hour where a person looks closely, an hour in
// so long an outage that those would be a thousand.
[[nodiscard]] units::Duration interval_of(units::Duration lasts);

// As many weathers as a question would like, or fewer where a run is long.
//   runs       how many runs of the clock each weather takes, positive
//   gives      at least `fewest`
[[nodiscard]] int weathers_within_reach(const Ready& ready, int wanted, int fewest,
                                        double runs = 1.0);

}  // namespace outage
