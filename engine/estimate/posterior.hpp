// The members after all that was read: the plan's own members, moved by the meters in closed form,
// and weighted by what was read of packs and sun; where too few of them would count, moved first to
// where the readings put them. method.md (2), (5) to (8a)
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "estimate/lives.hpp"
#include "estimate/members.hpp"
#include "estimate/weighing/contradiction.hpp"
#include "scenario/scenario.hpp"

namespace estimate {

inline constexpr int blocks_with_readings = 16;  // of 64 members

// What one reading is to the plan.
//   entry      its place in the log
//   surprise   how far it lies from what the plan expected, in standard deviations of both;
//              above 0 where more was read
//   load       of a meter: its place in the scenario
struct Read {
    std::size_t entry = 0;
    double surprise = 0.0;
    std::optional<std::size_t> load = {};
};

//   now       one a member: what it has at the moment that is asked about
//   without_weights   the readings contradict each other, and the plan is kept as wide as it was
//   ends      one a member: how its outage ends
struct Posterior {
    Members members;
    std::vector<Read> reads;
    std::optional<Contradiction> contradiction;
    std::vector<State> now;
    bool without_weights = false;
    std::vector<chance::MemberEnd> ends;
};

struct Asked {
    units::Duration now{};  // after the start of the outage
    std::uint64_t seed = 1;
    int blocks = blocks_with_readings;
    unsigned threads = 0;
};

//   lives   of this scenario and this story
[[nodiscard]] Posterior posterior_of(const scenario::Scenario& scenario, const Story& story,
                                     const Lives& lives, const Asked& asked);

// The same beside what it was without the reading that came last, of fewer members.
//   before   nothing where nothing was read
struct Posteriors {
    Posterior after;
    std::optional<Posterior> before;
};
[[nodiscard]] Posteriors posteriors_of(const scenario::Scenario& scenario, const Story& story,
                                       const Lives& lives, const Asked& asked);

}  // namespace estimate
