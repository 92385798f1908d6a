// Members that were run, and what each would have shown at every reading. method.md (5)
#pragma once

#include <vector>

#include "estimate/lives.hpp"
#include "estimate/members.hpp"
#include "estimate/story.hpp"
#include "estimate/weighing/law.hpp"
#include "scenario/scenario.hpp"

namespace estimate {

//   scores   by member, by unknown
//   rarer    by member: logarithm of how much more frequent it is in the plan than where it was
//            drawn, but for a constant
//   shown    by member, by reading
//   now      by member
//   ends     likewise, how its outage ends
//   moved    places of the unknowns whose scores are not drawn as the plan has them
struct Batch {
    Members members;
    Matrix scores;
    std::vector<double> rarer;
    std::vector<std::vector<Compared>> shown;
    std::vector<State> now;
    std::vector<chance::MemberEnd> ends;
    std::vector<std::size_t> moved = {};
};

// Puts the other's members behind one's own; the weights are all alike then.
void append(Batch& batch, Batch&& other);

// Of the likelihood, and of how rare the member is.
[[nodiscard]] std::vector<double> log_weights(const Batch& batch);

[[nodiscard]] Cloud cloud_of(const Batch& batch);

// Runs members through the outage so far.
class Runner {
  public:
    //   now   after the start of the outage
    Runner(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
           units::Duration now, unsigned threads);

    // Fills shown, now and ends.
    void run(Batch& batch) const;

    // By one member.
    [[nodiscard]] std::vector<Compared> shown_by(const Members& one) const;

  private:
    const scenario::Scenario& scenario_;
    const Story& story_;
    const Lives& lives_;
    unsigned threads_;
    PacksRead packs_;
    std::vector<units::Duration> times_;  // of the readings, and now

    [[nodiscard]] std::vector<Compared> compared_with(const std::vector<State>& states,
                                                      const OwnErrors& own) const;
};

}  // namespace estimate
