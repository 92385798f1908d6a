// Members that were run, and what each would have shown at every reading. method.md (5)
#pragma once

#include <vector>

#include "estimate/lives.hpp"
#include "estimate/members.hpp"
#include "estimate/story.hpp"
#include "estimate/weighing/law.hpp"
#include "estimate/weighing/linear.hpp"
#include "scenario/scenario.hpp"

namespace estimate {

//   scores   by member, by unknown
//   laws     of which they were drawn, the plan's own first; all as one mixture
//   drawn    by law, how many
//   rarer    by member: logarithm of how much more frequent it is in the plan than in the mixture
//   shown    by member, by reading
//   now      by member
//   ends     likewise, how its outage ends
struct Batch {
    Members members;
    Matrix scores;
    std::vector<Law> laws;
    std::vector<std::size_t> drawn;
    std::vector<double> rarer;
    std::vector<std::vector<Compared>> shown;
    std::vector<State> now;
    std::vector<chance::MemberEnd> ends;
};

// Puts the other's members behind one's own; the weights are all alike then. Each counts as drawn
// of the mixture of all laws, whichever it came from. method.md (7)
void append(Batch& batch, Batch&& other);

// Of the likelihood, and of how rare the member is.
[[nodiscard]] std::vector<double> log_weights(const Batch& batch);

// By member, by reading, how far above what was read.
[[nodiscard]] Matrix off_of(const std::vector<std::vector<Compared>>& shown);

[[nodiscard]] Cloud cloud_of(const Batch& batch);

// Runs members through the outage so far.
class Runner {
  public:
    //   now   after the start of the outage
    Runner(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
           units::Duration now, unsigned threads);

    // Fills shown, now and ends.
    void run(Batch& batch) const;

    // By member, what it shows at each reading.
    [[nodiscard]] std::vector<std::vector<Compared>> shown_by(const Members& members) const;

  private:
    const scenario::Scenario& scenario_;
    const Story& story_;
    const Lives& lives_;
    unsigned threads_;
    PacksRead packs_;
    std::vector<Moment> moments_;  // of the readings, and now

    [[nodiscard]] std::vector<Compared> compared_with(const std::vector<State>& states,
                                                      const OwnErrors& own) const;
};

}  // namespace estimate
