// The members after all that was read: the plan's own members, moved by the meters in closed form,
// weighted by what was read of packs and sun, and drawn together where too few of them count.
// method.md (2), (5) to (9)
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "estimate/closed_form.hpp"
#include "estimate/likelihood.hpp"
#include "estimate/lives.hpp"
#include "outage/ready.hpp"
#include "scenario/scenario.hpp"
#include "units/result.hpp"

namespace estimate {

inline constexpr int blocks_with_readings = 16;  // of 64 members

//   values   one a member: of each name, as chance::Values has them
//   own      likewise
//   weights  sum to 1
struct Members {
    std::vector<std::string> names;
    std::vector<std::vector<double>> values;
    std::vector<OwnErrors> own;
    std::vector<double> weights;
    int rounds = 0;  // in which they were drawn together

    [[nodiscard]] double effective() const;
    [[nodiscard]] bool are_alike() const;  // all of one weight
};

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

// Readings that cannot be true together with the others.
//   odd       places in the log of each whose absence lets the others be true; all of them where
//             none does
struct Contradiction {
    std::vector<std::size_t> odd;
    bool one_of_them = false;  // leaving out one of these is enough
};

//   now       one a member: what it has at the moment that is asked about
//   before    the plan's own mean and deviation of each unknown's score: 0 and 1, but of those
//             that a meter tells
//   without_weights   the readings contradict each other, and the plan is kept as wide as it was
struct Posterior {
    Members members;
    std::vector<Read> reads;
    std::optional<Contradiction> contradiction;
    std::vector<State> now;
    bool without_weights = false;
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

// The values of these members for another world of the same scenario, by name.
[[nodiscard]] std::vector<std::vector<double>> values_for(const chance::World& world,
                                                          const Members& members);

}  // namespace estimate
