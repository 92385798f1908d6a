#include "estimate/weighing/moving.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

#include "chance/draw.hpp"
#include "estimate/weights.hpp"

namespace estimate {

namespace {

constexpr int blocks = 4;
constexpr std::size_t members = std::size_t(blocks) * chance::lanes;
constexpr int times = 3;
constexpr double kept = 0.7;  // of a member's scores, each time; ours

// None for more than the root of how many there are makes of it: one that stands alone in a corner
// that was drawn too seldom must not stand for all. [Ionides 2008]
std::vector<double> capped(std::vector<double> weights) {
    const double most = 1.0 / std::sqrt(double(weights.size()));
    double sum = 0.0;
    for (double& weight : weights)
        sum += weight = std::min(weight, most);
    for (double& weight : weights)
        weight /= sum;
    return weights;
}

void copy(const Batch& from, std::size_t member, Batch& to, std::size_t place) {
    to.members.values[place] = from.members.values[member];
    to.members.own[place] = from.members.own[member];
    to.shown[place] = from.shown[member];
    to.now[place] = from.now[member];
    to.ends[place] = from.ends[member];
    std::copy_n(from.scores.row(member), from.scores.columns(), to.scores.row(place));
}

Batch taken(const Batch& from, const std::vector<std::size_t>& places, const Law& law) {
    const std::size_t count = places.size();
    Batch made{.members = {.names = from.members.names,
                           .values = std::vector<std::vector<double>>(count),
                           .own = std::vector<OwnErrors>(count),
                           .weights = std::vector<double>(count, 1.0 / double(count)),
                           .rounds = from.members.rounds},
               .scores = Matrix(count, from.scores.columns()),
               .laws = {law},
               .drawn = {count},
               .rarer = std::vector<double>(count),
               .shown = std::vector<std::vector<Compared>>(count),
               .now = std::vector<State>(count),
               .ends = std::vector<chance::MemberEnd>(count)};
    for (std::size_t i = 0; i < count; ++i) {
        copy(from, places[i], made, i);
        made.rarer[i] = -law.against_plan(made.scores.row(i));
    }
    return made;
}

// Copies of one member that none of the moves took anywhere are one.
void put_together(Members& of, const std::vector<std::size_t>& places,
                  const std::vector<bool>& moved) {
    std::size_t first = 0;  // of the copies
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (moved[i]) continue;
        if (moved[first] || places[first] != places[i]) {
            first = i;
            continue;
        }
        if (first == i) continue;
        of.weights[first] += of.weights[i];
        of.weights[i] = 0.0;
    }
}

}  // namespace

Batch moved_on(const Batch& all, const Law& law, const Unknowns& unknowns, const Runner& runner,
               std::uint64_t seed, int first) {
    const auto places = drawn_again(capped(weights_of(log_weights(all))), members);
    Batch at = taken(all, places, law);
    at.members.rounds = std::max(1, at.members.rounds);
    auto logs = log_weights(at);
    std::vector<bool> moved(members, false);
    for (int time = 0; time < times; ++time, first += blocks) {
        Matrix scores = unknowns.drawn(seed, first, blocks).scores;
        std::vector<double> from(scores.columns());
        for (std::size_t i = 0; i < members; ++i) {
            std::copy_n(at.scores.row(i), from.size(), from.begin());
            law.move_from(from, kept, scores.row(i));
        }
        Batch to{.members = unknowns.with(scores), .scores = std::move(scores), .rarer = {}};
        for (std::size_t i = 0; i < members; ++i)
            to.rarer.push_back(-law.against_plan(to.scores.row(i)));
        runner.run(to);
        const auto then = log_weights(to);
        for (std::size_t i = 0; i < members; ++i) {
            const auto block = std::uint32_t(first) + std::uint32_t(i) / chance::lanes;
            const double drawn =
                chance::drawn({.seed = seed, .number = block}, "estimate/move")[i % chance::lanes];
            if (!(std::log(drawn) < then[i] - logs[i])) continue;
            copy(to, i, at, i);
            at.rarer[i] = to.rarer[i];
            logs[i] = then[i];
            moved[i] = true;
        }
    }
    put_together(at.members, places, moved);
    return at;
}

}  // namespace estimate
