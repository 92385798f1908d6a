#include "estimate/weighing/law.hpp"

#include <algorithm>
#include <cmath>

namespace estimate {

namespace {

constexpr double wider = 1.2;     // of the variance; ours
constexpr double furthest = 6.0;  // of a score

}  // namespace

Law law_of(const Linear& linear, std::optional<std::size_t> without) {
    const std::size_t unknowns = linear.unknowns.size();
    Law law{.unknowns = linear.unknowns, .most_likely = {}, .root = {}};
    Matrix rest = linear.rest;
    Matrix slopes = linear.per_score;
    std::vector<double> read(linear.at_nought.size());
    for (std::size_t j = 0; j < read.size(); ++j)
        read[j] = -linear.at_nought[j];
    if (without) {
        read[*without] = 0.0;
        for (std::size_t i = 0; i < unknowns; ++i)
            slopes(*without, i) = 0.0;
        for (std::size_t j = 0; j < read.size(); ++j)
            rest(*without, j) = rest(j, *without) = j == *without ? 1.0 : 0.0;
    }
    const Matrix root_of_rest = root_of(rest);
    for (std::size_t i = 0; i < unknowns; ++i)
        solve_down(root_of_rest, slopes.row(0) + i, unknowns);
    solve_down(root_of_rest, read.data());
    const Matrix told = products(slopes, slopes);
    Matrix exact = told;
    Matrix loose = told;
    law.most_likely.assign(unknowns, 0.0);
    for (std::size_t i = 0; i < unknowns; ++i) {
        for (std::size_t k = 0; k < unknowns; ++k)
            loose(i, k) = told(i, k) / wider + (i == k ? 1.0 : 0.0);
        exact(i, i) += 1.0;
        for (const Held& held : linear.held)
            if (held.unknown == law.unknowns[i]) {
                const double sharp = 1.0 / (held.deviation * held.deviation);
                exact(i, i) += sharp - 1.0;
                loose(i, i) += sharp - 1.0;
                law.most_likely[i] += sharp * held.at;
            }
        for (std::size_t j = 0; j < read.size(); ++j)
            law.most_likely[i] += slopes(j, i) * read[j];
    }
    const Matrix root = root_of(exact);
    solve_down(root, law.most_likely.data());
    solve_up(root, law.most_likely.data());
    for (double& score : law.most_likely)
        score = std::clamp(score, -furthest, furthest);
    law.root = root_of(loose);
    return law;
}

void Law::move(double* scores) const {
    std::vector<double> drawn;
    drawn.reserve(unknowns.size());
    for (const std::size_t place : unknowns)
        drawn.push_back(scores[place]);
    solve_up(root, drawn.data());
    for (std::size_t i = 0; i < unknowns.size(); ++i)
        scores[unknowns[i]] = std::clamp(most_likely[i] + drawn[i], -7.0, 7.0);
}

void Law::move_from(const std::vector<double>& from, double kept, double* scores) const {
    const double fresh = std::sqrt(1.0 - kept * kept);
    std::vector<double> drawn;
    drawn.reserve(unknowns.size());
    for (std::size_t i = 0; i < unknowns.size(); ++i)
        drawn.push_back(kept * own_score(from.data(), i) + fresh * scores[unknowns[i]]);
    for (std::size_t i = 0; i < from.size(); ++i)
        scores[i] = kept * from[i] + fresh * scores[i];
    solve_up(root, drawn.data());
    for (std::size_t i = 0; i < unknowns.size(); ++i)
        scores[unknowns[i]] = std::clamp(most_likely[i] + drawn[i], -7.0, 7.0);
}

double Law::own_score(const double* scores, std::size_t i) const {
    double drawn = 0.0;
    for (std::size_t k = i; k < unknowns.size(); ++k)
        drawn += root(k, i) * (scores[unknowns[k]] - most_likely[k]);
    return drawn;
}

double Law::against_plan(const double* scores) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        const double score = scores[unknowns[i]];
        const double drawn = own_score(scores, i);
        sum += 0.5 * (score * score - drawn * drawn) + std::log(root(i, i));
    }
    return sum;
}

}  // namespace estimate
