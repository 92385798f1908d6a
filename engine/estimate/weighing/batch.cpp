#include "estimate/weighing/batch.hpp"

#include <algorithm>
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
    move_behind(batch.rarer, other.rarer);
    move_behind(batch.shown, other.shown);
    move_behind(batch.now, other.now);
    move_behind(batch.ends, other.ends);
}

std::vector<double> log_weights(const Batch& batch) {
    std::vector<double> sums = batch.rarer;
    for (std::size_t i = 0; i < sums.size(); ++i)
        for (const Compared& one : batch.shown[i])
            sums[i] += log_likelihood(one);
    return sums;
}

Cloud cloud_of(const Batch& batch) {
    Cloud cloud{.scores = batch.scores,
                .off = Matrix(batch.shown.size(), batch.shown.front().size())};
    for (std::size_t i = 0; i < batch.shown.size(); ++i)
        for (std::size_t j = 0; j < batch.shown[i].size(); ++j)
            cloud.off(i, j) = -distance(batch.shown[i][j]);
    return cloud;
}

Runner::Runner(const scenario::Scenario& scenario, const Story& story, const Lives& lives,
               Duration now, unsigned threads)
    : scenario_(scenario),
      story_(story),
      lives_(lives),
      threads_(threads),
      packs_(packs_read(lives.world().ready())) {
    for (const std::size_t place : story.readings)
        times_.push_back(scenario.log[place].at - scenario.outage.starts);
    times_.push_back(std::max(now, times_.empty() ? now : times_.back()));
}

std::vector<Compared> Runner::compared_with(const std::vector<State>& states,
                                            const OwnErrors& own) const {
    std::vector<Compared> made;
    made.reserve(story_.readings.size());
    for (std::size_t j = 0; j < story_.readings.size(); ++j)
        made.push_back(
            compared(scenario_.log[story_.readings[j]], states[j], packs_, own, times_[j]));
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
            batch.now[i] = lives_.states(batch.members.values[i], times_).back();
        });
        return;
    }
    const auto whole = lives_.whole(batch.members.values, times_, threads_);
    for (std::size_t i = 0; i < count; ++i) {
        batch.shown[i] = compared_with(whole[i].states, batch.members.own[i]);
        batch.now[i] = whole[i].states.back();
        batch.ends[i] = whole[i].end;
    }
}

std::vector<Compared> Runner::shown_by(const Members& one) const {
    return compared_with(lives_.states(one.values.front(), times_), one.own.front());
}

}  // namespace estimate
