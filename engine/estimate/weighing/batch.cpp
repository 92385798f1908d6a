#include "estimate/weighing/batch.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "outage/in_threads.hpp"

namespace estimate {

using units::Duration;

namespace {

template <class Of>
void move_behind(std::vector<Of>& one, std::vector<Of>& other) {
    one.insert(one.end(), std::make_move_iterator(other.begin()),
               std::make_move_iterator(other.end()));
}

// By member, how much more frequent it is in the plan than in the mixture, as a logarithm.
void find_rarer(Batch& batch) {
    const auto count = double(batch.scores.rows());
    batch.rarer.assign(batch.scores.rows(), 0.0);
    if (batch.laws.size() == 1 && batch.laws.front().unknowns.empty()) return;
    std::vector<double> logs(batch.laws.size());
    for (std::size_t i = 0; i < batch.rarer.size(); ++i) {
        for (std::size_t law = 0; law < logs.size(); ++law)
            logs[law] = std::log(double(batch.drawn[law]) / count) +
                        batch.laws[law].against_plan(batch.scores.row(i));
        const double most = *std::ranges::max_element(logs);
        double sum = 0.0;
        for (const double one : logs)
            sum += std::exp(one - most);
        batch.rarer[i] = -most - std::log(sum);
    }
}

}  // namespace

void append(Batch& batch, Batch&& other) {
    Matrix scores(batch.scores.rows() + other.scores.rows(), batch.scores.columns());
    std::copy_n(batch.scores.row(0), batch.scores.rows() * scores.columns(), scores.row(0));
    std::copy_n(other.scores.row(0), other.scores.rows() * scores.columns(),
                scores.row(0) + batch.scores.rows() * scores.columns());
    batch.scores = std::move(scores);
    move_behind(batch.members.values, other.members.values);
    move_behind(batch.members.own, other.members.own);
    const std::size_t count = batch.members.values.size();
    batch.members.weights.assign(count, 1.0 / double(count));
    move_behind(batch.shown, other.shown);
    move_behind(batch.now, other.now);
    move_behind(batch.ends, other.ends);
    batch.members.rounds = std::max(batch.members.rounds, other.members.rounds);
    // Of one law drawn again.
    for (std::size_t law = 0; law < other.laws.size(); ++law) {
        const auto same = std::ranges::find(batch.laws, other.laws[law]);
        if (same != batch.laws.end()) {
            batch.drawn[std::size_t(same - batch.laws.begin())] += other.drawn[law];
            continue;
        }
        batch.laws.push_back(std::move(other.laws[law]));
        batch.drawn.push_back(other.drawn[law]);
    }
    find_rarer(batch);
}

std::vector<double> log_weights(const Batch& batch) {
    std::vector<double> sums = batch.rarer;
    for (std::size_t i = 0; i < sums.size(); ++i)
        for (const Compared& one : batch.shown[i])
            sums[i] += log_likelihood(one);
    return sums;
}

Matrix off_of(const std::vector<std::vector<Compared>>& shown) {
    Matrix off(shown.size(), shown.front().size());
    for (std::size_t i = 0; i < shown.size(); ++i)
        for (std::size_t j = 0; j < shown[i].size(); ++j)
            off(i, j) = expected_above(shown[i][j]);
    return off;
}

Cloud cloud_of(const Batch& batch) {
    return {.scores = batch.scores, .off = off_of(batch.shown)};
}

Runner::Runner(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
               Duration now, unsigned threads)
    : scenario_(scenario),
      story_(story),
      lives_(lives),
      threads_(threads),
      packs_(packs_read(lives.world().ready())) {
    for (const std::size_t place : story.readings) {
        const auto& entry = scenario.log[place];
        moments_.push_back(
            {.at = entry.at - scenario.outage.starts, .voltages = entry.reads && !entry.rested});
    }
    moments_.push_back(
        {.at = std::max(now, moments_.empty() ? now : moments_.back().at), .voltages = false});
}

std::vector<Compared> Runner::compared_with(const std::vector<State>& states,
                                            const OwnErrors& own) const {
    std::vector<Compared> made;
    made.reserve(story_.readings.size());
    for (std::size_t j = 0; j < story_.readings.size(); ++j)
        made.push_back(
            compared(scenario_.log[story_.readings[j]], states[j], packs_, own, moments_[j].at));
    return made;
}

void Runner::run(Batch& batch) const {
    const std::size_t count = batch.members.values.size();
    batch.shown.resize(count);
    batch.now.resize(count);
    batch.ends.resize(count);
    // Nothing may change where nothing was read: ends are those of the plan, to the last bit.
    if (story_.readings.empty()) {
        batch.ends = lives_.ends(batch.members.values, threads_);
        outage::for_each_number(static_cast<int>(count), threads_, [&](int number) {
            const auto i = std::size_t(number);
            batch.now[i] =
                lives_.states(batch.members.values[i], std::span(&moments_.back().at, 1)).back();
        });
        return;
    }
    const auto whole = lives_.whole(batch.members.values, moments_, threads_);
    for (std::size_t i = 0; i < count; ++i) {
        batch.shown[i] = compared_with(whole[i].states, batch.members.own[i]);
        batch.now[i] = whole[i].states.back();
        batch.ends[i] = whole[i].end;
    }
}

std::vector<std::vector<Compared>> Runner::shown_by(const Members& members) const {
    const auto states =
        lives_.states(members.values, std::span(moments_).first(story_.readings.size()), threads_);
    std::vector<std::vector<Compared>> shown;
    for (std::size_t i = 0; i < states.size(); ++i)
        shown.push_back(compared_with(states[i], members.own[i]));
    return shown;
}

}  // namespace estimate
