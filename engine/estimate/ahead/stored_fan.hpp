// What the packs hold over the whole outage, as the members have it that the readings leave: how it
// burnt so far, and how it may go on. method.md (22)
#pragma once

#include <vector>

#include "estimate/lives.hpp"
#include "estimate/posterior.hpp"
#include "outage/course.hpp"

namespace estimate {

//   at      after the outage starts, from 0 to its end
//   low     what nine members in ten have stored at least, one a moment
//   high    what one in ten has at least, never less than low
//   likely  the member that stays nearest to the middle of all, whole: its intervals end at `at`
struct StoredFan {
    std::vector<units::Duration> at;
    std::vector<units::Energy> low;
    std::vector<units::Energy> high;
    outage::Course likely;
};

//   lives     of the scenario and its story
//   members   weighted; the heavier, the more often one is run
//   gives     the same bits for any number of threads
[[nodiscard]] StoredFan stored_fan(const Lives& lives, const Members& members,
                                   units::Duration lasts, unsigned threads = 0);

}  // namespace estimate
