#include "estimate/posterior.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>
#include <utility>

#include "estimate/weighing/moving.hpp"
#include "estimate/weights.hpp"

namespace estimate {

namespace {

constexpr int first_blocks = 4;  // run before it is known whether they are where they are needed
constexpr int laws = 3;
constexpr int few_blocks = 2;    // of the first law, which need only come near
constexpr double enough = 0.25;  // of the members, of equal weight

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
        if (that_count(*first_) >= enough * double(first_->shown.size()))
            where_they_are(found);
        else
            where_they_count(found);
        return found;
    }

    // Without the last reading, of the members that were run with it; nothing where too few of them
    // count.
    [[nodiscard]] std::optional<Posterior> without_last() const {
        if (!run_) return std::nullopt;
        std::vector<double> logs = run_logs_;
        for (std::size_t i = 0; i < logs.size(); ++i)
            logs[i] -= log_likelihood(run_->shown[i].back());
        Batch batch = *run_;
        batch.members.weights = weights_of(logs);
        if (effective(batch.members.weights) < enough * first_blocks * chance::lanes)
            return std::nullopt;
        Posterior found;
        take(found, std::move(batch));
        return found;
    }

    // The first members of the plan, as far as they were run, likewise.
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
    std::optional<Batch> run_;  // all of those that were weighed

    std::vector<double> run_logs_;  // of their weights

    void keep(const Batch& batch, std::vector<double>&& logs) {
        run_ = batch;
        run_logs_ = std::move(logs);
    }
    static void take(Posterior& found, Batch&& batch) {
        found.members = std::move(batch.members);
        found.now = std::move(batch.now);
        found.ends = std::move(batch.ends);
    }
    static void weigh(Batch& batch) { batch.members.weights = weights_of(log_weights(batch)); }
    static double that_count(const Batch& batch) {
        return effective(weights_of(log_weights(batch)));
    }
    static int blocks_of(const Batch& batch) {
        return static_cast<int>(batch.shown.size()) / chance::lanes;
    }

    // Members of a law; of the plan, where it moves nothing.
    [[nodiscard]] Batch of_law(const Law& law, int round, int first, int blocks) const {
        auto drawn = unknowns_.drawn(asked_.seed, first, blocks);
        Batch batch{.members = std::move(drawn.members),
                    .scores = std::move(drawn.scores),
                    .laws = {law},
                    .drawn = {},
                    .rarer = {},
                    .shown = {},
                    .now = {},
                    .ends = {}};
        const std::size_t count = batch.members.values.size();
        batch.drawn = {count};
        batch.rarer.assign(count, 0.0);
        for (std::size_t i = 0; i < count && !law.unknowns.empty(); ++i) {
            law.move(batch.scores.row(i));
            unknowns_.put(batch.members, i, batch.scores.row(i), law.unknowns);
            batch.rarer[i] = -law.against_plan(batch.scores.row(i));
        }
        batch.members.rounds = round;
        runner_.run(batch);
        return batch;
    }

    [[nodiscard]] Batch of_plan(int first, int blocks) const {
        return of_law({}, 0, first, blocks);
    }

    // All members of the plan.
    [[nodiscard]] Batch whole_plan() const {
        Batch plan = *first_;
        const int run = blocks_of(plan);
        if (asked_.blocks > run) append(plan, of_plan(run, asked_.blocks - run));
        return plan;
    }

    // The readings leave enough of the plan's own members.
    void where_they_are(Posterior& found) {
        found.contradiction = contradiction_in(*first_, {}, unknowns_, runner_, story_);
        found.without_weights = found.contradiction.has_value();
        Batch plan = whole_plan();
        if (!found.contradiction) {
            weigh(plan);
            keep(plan, log_weights(plan));
        }
        take(found, std::move(plan));
    }

    // Three laws are drawn of, each nearer to where the readings put the members, until enough of
    // all that were drawn count; if they never do, those that count are moved on from.
    void where_they_count(Posterior& found) {
        const double wanted = enough * double(asked_.blocks) * chance::lanes;
        Batch all = *first_;
        std::vector<Linear> forms;
        Cloud last = cloud_of(all);
        for (int round = 1; round <= laws && that_count(all) < wanted; ++round) {
            forms.push_back(round == 1   ? linear_of(last)
                            : round == 2 ? about_likeliest(likeliest_of(all), what_is_shown())
                                         : linear_of(last, forms.back()));
            Batch drawn = of_law(law_of(forms.back()), round, blocks_of(all),
                                 round == 1 ? few_blocks : first_blocks);
            last = cloud_of(drawn);
            append(all, std::move(drawn));
        }
        std::ranges::reverse(forms);
        found.contradiction = contradiction_in(*first_, forms, unknowns_, runner_, story_);
        if (found.contradiction) {
            found.without_weights = true;
            take(found, whole_plan());
            return;
        }
        if (that_count(all) >= wanted) {
            weigh(all);
            keep(all, log_weights(all));
        } else {
            all = moved_on(all, all.laws.back(), unknowns_, runner_, asked_.seed, blocks_of(all));
            std::vector<double> logs = all.members.weights;
            for (double& one : logs)
                one = std::log(one);
            keep(all, std::move(logs));
        }
        take(found, std::move(all));
    }

    // The scores of the one that departs least from the plan and from what was read.
    static std::vector<double> likeliest_of(const Batch& batch) {
        const std::size_t unknowns = batch.scores.columns();
        std::size_t likeliest = 0;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < batch.shown.size(); ++i) {
            const double* scores = batch.scores.row(i);
            double sum = std::inner_product(scores, scores + unknowns, scores, 0.0);
            for (const Compared& one : batch.shown[i])
                sum += expected_above(one) * expected_above(one);
            if (!(sum < least)) continue;
            least = sum;
            likeliest = i;
        }
        const double* scores = batch.scores.row(likeliest);
        return {scores, scores + unknowns};
    }

    [[nodiscard]] Shown what_is_shown() const {
        return [this](const Matrix& scores) {
            return off_of(runner_.shown_by(unknowns_.with(scores)));
        };
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
    const auto at = [&](const std::vector<std::size_t>& places) {
        return scenario.log[places.back()].at;
    };
    // A meter moves all members, so that they must be run again without it.
    const bool was_meter =
        !story.meters.empty() && (story.readings.empty() || at(story.meters) > at(story.readings));
    if (!was_meter) made.before = weighing.without_last();
    if (made.before) return made;
    Story earlier = story;
    (was_meter ? earlier.meters : earlier.readings).pop_back();
    Asked fewer = asked;
    fewer.blocks = std::min(asked.blocks, first_blocks);
    made.before = Weighing(scenario, earlier, lives, fewer,
                           was_meter ? std::nullopt : weighing.first_without_last())
                      .posterior();
    return made;
}

}  // namespace estimate
