#include "estimate/posterior.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "estimate/weights.hpp"

namespace estimate {

namespace {

constexpr int first_blocks = 4;  // run before it is known whether they are where they are needed
constexpr int most_laws = 6;     // fitted one after another
constexpr double enough = 0.25;  // of the members, of equal weight
constexpr double few_at_least = 0.09;  // likewise, whatever the readings say

// How far each reading lies from what all members of the plan expect, in deviations of both.
std::vector<double> surprises(const Batch& plan) {
    std::vector<double> found;
    const double count = double(plan.shown.size());
    for (std::size_t j = 0; j < plan.shown.front().size(); ++j) {
        double mean = 0.0;
        double squares = 0.0;
        double error = 0.0;
        for (const auto& of_member : plan.shown) {
            mean += of_member[j].expected / count;
            squares += of_member[j].expected * of_member[j].expected / count;
            error += of_member[j].error * of_member[j].error / count;
        }
        const double variance = std::max(0.0, squares - mean * mean) + error;
        found.push_back((plan.shown.front()[j].read - mean) / std::sqrt(variance));
    }
    return found;
}

class Weighing {
  public:
    //   first   members of the plan that were run already, with what they would have shown at these
    //           readings; nothing where none were
    Weighing(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
             const Asked& asked, std::optional<Batch> first = {})
        : story_(story),
          asked_(asked),
          meters_(metered(scenario, story, lives.world())),
          unknowns_(scenario, lives.world(), meters_),
          runner_(scenario, story, lives, asked.now, asked.threads),
          first_(std::move(first)) {}

    Posterior posterior() {
        Posterior found;
        for (const Metered& meter : meters_)
            found.reads.push_back(
                {.entry = meter.entry, .surprise = meter.surprise, .load = meter.load});
        if (story_.readings.empty()) {
            take(found, first_ ? *first_ : of_plan(0, asked_.blocks));
            return found;
        }
        if (!first_) first_ = of_plan(0, std::min(first_blocks, asked_.blocks));
        const auto far = surprises(*first_);
        for (std::size_t j = 0; j < far.size(); ++j)
            found.reads.push_back({.entry = story_.readings[j], .surprise = far[j]});
        if (do_count(*first_))
            where_they_are(found);
        else
            where_they_count(found);
        return found;
    }

    // The first members of the plan, as far as they were run, without the last reading.
    [[nodiscard]] std::optional<Batch> first_without_last() const {
        if (!first_ || story_.readings.empty()) return std::nullopt;
        Batch batch = *first_;
        for (auto& shown : batch.shown)
            shown.pop_back();
        return batch;
    }

  private:
    const Story& story_;
    const Asked& asked_;
    std::vector<Metered> meters_;
    Unknowns unknowns_;
    Runner runner_;
    std::optional<Batch> first_;

    static void take(Posterior& found, Batch&& batch) {
        found.members = std::move(batch.members);
        found.now = std::move(batch.now);
        found.ends = std::move(batch.ends);
    }
    static void weigh(Batch& batch) { batch.members.weights = weights_of(log_weights(batch)); }
    // Where too few count they are weighed less sharply, so that what is told is wider than what the
    // readings leave and not narrower.
    static void weigh_softly(Batch& batch) {
        const auto sums = log_weights(batch);
        const double wanted = few_at_least * double(sums.size());
        double low = 0.0;
        double high = 1.0;
        if (effective(weights_of(sums)) >= wanted) low = high;
        for (int halved = 0; halved < 40 && low < high; ++halved) {
            const double middle = 0.5 * (low + high);
            (effective(weights_of(sums, middle)) >= wanted ? low : high) = middle;
        }
        batch.members.weights = weights_of(sums, low);
    }
    static double share_that_counts(const Batch& batch) {
        return effective(weights_of(log_weights(batch))) / double(batch.shown.size());
    }
    static bool do_count(const Batch& batch) { return share_that_counts(batch) >= enough; }

    [[nodiscard]] Batch of_plan(int first, int blocks) const {
        auto drawn = unknowns_.drawn(asked_.seed, first, blocks);
        Batch batch{.members = std::move(drawn.members),
                    .scores = std::move(drawn.scores),
                    .rarer = {},
                    .shown = {},
                    .now = {},
                    .ends = {}};
        batch.rarer.assign(batch.members.values.size(), 0.0);
        runner_.run(batch);
        return batch;
    }

    [[nodiscard]] Batch of_law(const Law& law, int round, int first, int blocks) const {
        auto drawn = unknowns_.drawn(asked_.seed, first, blocks);
        Batch batch{.members = std::move(drawn.members),
                    .scores = std::move(drawn.scores),
                    .rarer = {},
                    .shown = {},
                    .now = {},
                    .ends = {}};
        for (std::size_t i = 0; i < batch.members.values.size(); ++i) {
            batch.rarer.push_back(law.move(batch.scores.row(i)));
            unknowns_.put(batch.members, i, batch.scores.row(i), law.unknowns);
        }
        batch.members.rounds = round;
        batch.moved = law.unknowns;
        runner_.run(batch);
        return batch;
    }

    // All members of the plan.
    [[nodiscard]] Batch whole_plan() const {
        Batch plan = *first_;
        const int run = static_cast<int>(plan.shown.size()) / chance::lanes;
        if (asked_.blocks > run) append(plan, of_plan(run, asked_.blocks - run));
        return plan;
    }

    // The readings leave enough of the plan's own members.
    void where_they_are(Posterior& found) const {
        found.contradiction = contradiction_in(*first_, {}, unknowns_, runner_, story_);
        found.without_weights = found.contradiction.has_value();
        Batch plan = whole_plan();
        if (!found.contradiction) weigh(plan);
        take(found, std::move(plan));
    }

    // Laws are fitted one after another, each where the last one put the members, until enough of
    // them count; then all are drawn of it.
    void where_they_count(Posterior& found) const {
        const int few = static_cast<int>(first_->shown.size()) / chance::lanes;
        std::vector<Linear> fitted{linear_of(cloud_of(*first_))};
        Batch best;
        Law law;
        double most = -1.0;
        for (int round = 1; round <= most_laws; ++round) {
            const Law tried = law_of(fitted.back());
            Batch moved = of_law(tried, round, 0, few);
            const double share = share_that_counts(moved);
            const bool goes_on = share < enough && round < most_laws;
            if (goes_on) fitted.push_back(linear_of(cloud_of(moved), tried.unknowns));
            if (share >= most) {
                most = share;
                law = tried;
                best = std::move(moved);
            }
            if (!goes_on) break;
        }
        found.contradiction = contradiction_in(*first_, fitted, unknowns_, runner_, story_);
        if (found.contradiction) {
            found.without_weights = true;
            take(found, whole_plan());
            return;
        }
        if (asked_.blocks > few)
            append(best, of_law(law, best.members.rounds, few, asked_.blocks - few));
        weigh_softly(best);
        take(found, std::move(best));
    }
};

}  // namespace

Posterior posterior_of(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
                       const Asked& asked) {
    return Weighing(scenario, story, lives, asked).posterior();
}

Posteriors posteriors_of(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
                         const Asked& asked) {
    Weighing weighing(scenario, story, lives, asked);
    Posteriors made{.after = weighing.posterior(), .before = {}};
    if (story.readings.empty() && story.meters.empty()) return made;
    Story earlier = story;
    const auto at = [&](const std::vector<std::size_t>& places) {
        return scenario.log[places.back()].at;
    };
    const bool was_meter = !earlier.meters.empty() &&
                           (earlier.readings.empty() || at(earlier.meters) > at(earlier.readings));
    (was_meter ? earlier.meters : earlier.readings).pop_back();
    Asked fewer = asked;
    fewer.blocks = std::min(asked.blocks, first_blocks);
    // A meter moves all members, so that they must be run again without it.
    made.before = Weighing(scenario, earlier, lives, fewer,
                           was_meter ? std::nullopt : weighing.first_without_last())
                      .posterior();
    return made;
}

}  // namespace estimate
