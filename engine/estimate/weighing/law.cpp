#include "estimate/weighing/law.hpp"

#include <algorithm>
#include <cmath>

namespace estimate {

namespace {

constexpr double wider = 1.5;      // of the variance; ours
constexpr double furthest = 6.0;   // of a score
constexpr double by_chance = 3.0;  // deviations of a correlation that is not there
constexpr std::size_t most_unknowns = 48;
constexpr std::size_t members_an_unknown = 6;  // at least

struct Column {
    double mean = 0.0;
    double deviation = 0.0;
};

std::vector<Column> columns_of(const Matrix& all) {
    std::vector<Column> columns(all.columns());
    const double count = double(all.rows());
    for (std::size_t k = 0; k < all.rows(); ++k)
        for (std::size_t i = 0; i < columns.size(); ++i)
            columns[i].mean += all(k, i) / count;
    for (std::size_t k = 0; k < all.rows(); ++k)
        for (std::size_t i = 0; i < columns.size(); ++i)
            columns[i].deviation += std::pow(all(k, i) - columns[i].mean, 2) / count;
    for (Column& column : columns)
        column.deviation = std::sqrt(column.deviation);
    return columns;
}

// Less their means.
Matrix centred(const Matrix& all, const std::vector<Column>& columns,
               const std::vector<std::size_t>& places) {
    Matrix made(all.rows(), places.size());
    for (std::size_t k = 0; k < all.rows(); ++k)
        for (std::size_t i = 0; i < places.size(); ++i)
            made(k, i) = all(k, places[i]) - columns[places[i]].mean;
    return made;
}

// Of two columns each, over the rows.
Matrix products(const Matrix& one, const Matrix& other) {
    Matrix sums(one.columns(), other.columns());
    for (std::size_t k = 0; k < one.rows(); ++k)
        for (std::size_t i = 0; i < one.columns(); ++i) {
            const double of = one(k, i);
            const double* from = other.row(k);
            double* to = sums.row(i);
            for (std::size_t j = 0; j < other.columns(); ++j)
                to[j] += of * from[j];
        }
    return sums;
}

std::vector<std::size_t> all_of(std::size_t count) {
    std::vector<std::size_t> places(count);
    for (std::size_t i = 0; i < count; ++i)
        places[i] = i;
    return places;
}

// Those whose scores go with a reading more than chance makes them, the nearest first.
std::vector<std::size_t> seen(const Cloud& cloud, const std::vector<Column>& scores,
                              const std::vector<Column>& off,
                              const std::vector<std::size_t>& also) {
    const double count = double(cloud.scores.rows());
    const Matrix together = products(centred(cloud.scores, scores, all_of(scores.size())),
                                     centred(cloud.off, off, all_of(off.size())));
    std::vector<std::pair<double, std::size_t>> order;
    for (std::size_t i = 0; i < scores.size(); ++i) {
        double most = 0.0;
        for (std::size_t j = 0; j < off.size(); ++j) {
            const double both = scores[i].deviation * off[j].deviation * count;
            if (both > 1e-9 * count) most = std::max(most, std::abs(together(i, j)) / both);
        }
        if (std::ranges::find(also, i) != also.end()) most += 1.0;
        if (most > by_chance / std::sqrt(count)) order.emplace_back(-most, i);
    }
    std::ranges::sort(order);
    const std::size_t room = std::max<std::size_t>(1, cloud.scores.rows() / members_an_unknown);
    order.resize(std::min({order.size(), most_unknowns, room}));
    std::vector<std::size_t> places;
    for (const auto& [nearness, place] : order)
        places.push_back(place);
    std::ranges::sort(places);
    return places;
}

// What the form leaves, and 1 for each reading's own error.
Matrix rest_of(const Matrix& scores, const Matrix& off, const Matrix& per_score) {
    Matrix left = off;
    for (std::size_t k = 0; k < left.rows(); ++k)
        for (std::size_t j = 0; j < left.columns(); ++j)
            for (std::size_t i = 0; i < scores.columns(); ++i)
                left(k, j) -= per_score(j, i) * scores(k, i);
    Matrix rest = products(left, left);
    const double free = std::max(1.0, double(left.rows()) - double(scores.columns()) - 1.0);
    for (std::size_t i = 0; i < rest.rows(); ++i)
        for (std::size_t j = 0; j < rest.columns(); ++j)
            rest(i, j) = rest(i, j) / free + (i == j ? 1.0 : 0.0);
    return rest;
}

}  // namespace

Linear linear_of(const Cloud& cloud, const std::vector<std::size_t>& also) {
    const auto of_scores = columns_of(cloud.scores);
    const auto of_off = columns_of(cloud.off);
    Linear made{.unknowns = seen(cloud, of_scores, of_off, also),
                .at_nought = {},
                .per_score = {},
                .rest = {}};
    const Matrix scores = centred(cloud.scores, of_scores, made.unknowns);
    const Matrix off = centred(cloud.off, of_off, all_of(of_off.size()));
    Matrix gram = products(scores, scores);
    for (std::size_t i = 0; i < gram.rows(); ++i)
        gram(i, i) += 1e-3;  // so that it has a root
    const Matrix root = root_of(gram);
    Matrix slopes = products(scores, off);  // by unknown, by reading
    made.per_score = Matrix(off.columns(), scores.columns());
    for (std::size_t j = 0; j < off.columns(); ++j) {
        double at_nought = of_off[j].mean;
        if (slopes.rows() > 0) {
            solve_down(root, slopes.row(0) + j, slopes.columns());
            solve_up(root, slopes.row(0) + j, slopes.columns());
        }
        for (std::size_t i = 0; i < scores.columns(); ++i) {
            made.per_score(j, i) = slopes(i, j);
            at_nought -= slopes(i, j) * of_scores[made.unknowns[i]].mean;
        }
        made.at_nought.push_back(at_nought);
    }
    made.rest = rest_of(scores, off, made.per_score);
    return made;
}

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

double Law::move(double* scores) const {
    std::vector<double> drawn;
    drawn.reserve(unknowns.size());
    double rarer = 0.0;
    for (const std::size_t place : unknowns) {
        drawn.push_back(scores[place]);
        rarer += 0.5 * scores[place] * scores[place];
    }
    solve_up(root, drawn.data());
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        const double moved = std::clamp(most_likely[i] + drawn[i], -7.0, 7.0);
        scores[unknowns[i]] = moved;
        rarer -= 0.5 * moved * moved;
    }
    return rarer;
}

}  // namespace estimate
