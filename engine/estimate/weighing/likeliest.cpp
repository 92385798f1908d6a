#include <algorithm>
#include <cmath>
#include <utility>

#include "estimate/weighing/law.hpp"
#include "estimate/weighing/linear.hpp"

namespace estimate {

namespace {

constexpr int most_places = 2;         // where slopes are taken
constexpr std::size_t on_the_way = 8;  // points that are tried between two places
constexpr double first_change = 0.5;   // of a score
constexpr double least_change = 0.1;
constexpr double largest_change = 0.7;
// Readings that move by so much more to one side than to the other are beyond a step.
constexpr double of_a_step = 4.0;    // their errors; ours
constexpr double to_one_side = 0.7;  // of the change; ours
constexpr double held_to = 0.4;      // of a score; ours

double sum_of_squares(const double* of, std::size_t count) {
    double sum = 0.0;
    for (std::size_t i = 0; i < count; ++i)
        sum += of[i] * of[i];
    return sum;
}

// The less, the likelier.
double unlikely(const Matrix& scores, const Matrix& off, std::size_t row) {
    return sum_of_squares(scores.row(row), scores.columns()) +
           sum_of_squares(off.row(row), off.columns());
}

// Shifts a form of all unknowns so that it has what is shown at a place.
void go_through(Linear& linear, const std::vector<double>& place, const double* off) {
    for (std::size_t j = 0; j < linear.at_nought.size(); ++j) {
        linear.at_nought[j] = off[j];
        for (std::size_t i = 0; i < place.size(); ++i)
            linear.at_nought[j] -= linear.per_score(j, i) * place[i];
    }
}

// Slopes about a place, by changing each unknown up and down.
//   bends    second differences, by reading, by unknown
//   unlikely   the place itself
struct About {
    Linear linear;
    Matrix bends;
    double unlikely = 0.0;
};

About about(const std::vector<double>& place, const std::vector<double>& change,
            const Shown& shown) {
    const std::size_t unknowns = place.size();
    Matrix scores(1 + 2 * unknowns, unknowns);
    for (std::size_t row = 0; row < scores.rows(); ++row)
        std::ranges::copy(place, scores.row(row));
    for (std::size_t i = 0; i < unknowns; ++i) {
        scores(1 + 2 * i, i) += change[i];
        scores(2 + 2 * i, i) -= change[i];
    }
    const Matrix off = shown(scores);
    const std::size_t readings = off.columns();
    About made{.linear = {}, .bends = Matrix(readings, unknowns), .unlikely = 0.0};
    made.unlikely = unlikely(scores, off, 0);
    Linear& linear = made.linear;
    linear.per_score = Matrix(readings, unknowns);
    for (std::size_t i = 0; i < unknowns; ++i) {
        linear.unknowns.push_back(i);
        bool is_step = false;
        for (std::size_t j = 0; j < readings; ++j) {
            const double up = off(1 + 2 * i, j) - off(0, j);
            const double down = off(2 + 2 * i, j) - off(0, j);
            is_step = is_step ||
                      std::abs(up + down) > std::max(of_a_step, to_one_side * std::abs(up - down));
            linear.per_score(j, i) = (up - down) / (2.0 * change[i]);
            made.bends(j, i) = (up + down) / (change[i] * change[i]);
        }
        if (!is_step) continue;
        linear.held.push_back({.unknown = i, .at = place[i], .deviation = held_to});
        for (std::size_t j = 0; j < readings; ++j)
            linear.per_score(j, i) = made.bends(j, i) = 0.0;
    }
    linear.at_nought.resize(readings);
    go_through(linear, place, off.row(0));
    linear.rest = Matrix(readings, readings);
    for (std::size_t j = 0; j < readings; ++j)
        linear.rest(j, j) = 1.0;
    return made;
}

// Of each unknown's score, in the law.
std::vector<double> deviations(const Law& law) {
    const std::size_t unknowns = law.unknowns.size();
    std::vector<double> squares(unknowns, 0.0);
    for (std::size_t i = 0; i < unknowns; ++i) {
        std::vector<double> one(unknowns, 0.0);
        one[i] = 1.0;
        solve_up(law.root, one.data());
        for (std::size_t k = 0; k < unknowns; ++k)
            squares[k] += one[k] * one[k];
    }
    for (double& one : squares)
        one = std::sqrt(one);
    return squares;
}

}  // namespace

Linear about_likeliest(std::vector<double> start, const Shown& shown) {
    std::vector<double> place = std::move(start);
    std::vector<double> change(place.size(), first_change);
    std::vector<double> spread;
    About here;
    for (int found = 0; found < most_places; ++found) {
        here = about(place, change, shown);
        const Law law = law_of(here.linear);
        spread = deviations(law);
        std::ranges::transform(spread, change.begin(), [](double deviation) {
            return std::clamp(deviation, least_change, largest_change);
        });
        Matrix tried(on_the_way, place.size());
        for (std::size_t k = 0; k < on_the_way; ++k)
            for (std::size_t i = 0; i < place.size(); ++i)
                tried(k, i) =
                    place[i] + (law.most_likely[i] - place[i]) * double(k + 1) / double(on_the_way);
        const Matrix off = shown(tried);
        double least = here.unlikely;
        for (std::size_t k = 0; k < on_the_way; ++k) {
            if (!(unlikely(tried, off, k) < least)) continue;
            least = unlikely(tried, off, k);
            std::copy_n(tried.row(k), place.size(), place.begin());
            go_through(here.linear, place, off.row(k));
        }
    }
    // What bends is no line: it counts as not known.
    for (std::size_t j = 0; j < here.bends.rows(); ++j)
        for (std::size_t i = 0; i < place.size(); ++i)
            here.linear.rest(j, j) += 0.5 * std::pow(here.bends(j, i) * spread[i] * spread[i], 2);
    return here.linear;
}

}  // namespace estimate
