#include "estimate/weighing/linear.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace estimate {

namespace {

constexpr double by_chance = 3.0;  // deviations of a correlation that is not there
constexpr double nearest = 0.4;    // share of the members that count in full for a reading; ours
constexpr double near = 1.5;       // deviations; whoever is as near does so in any case; ours
constexpr std::size_t members_an_unknown = 6;  // at least; ours
constexpr int most_passes = 5;                 // of choosing unknowns by what is left

// By member, by reading, how much the one counts for the other: those that come near to it more than
// those that are far off, so that the form is that of where it will be used.
Matrix weights_of(const Matrix& off) {
    Matrix weights(off.rows(), off.columns());
    std::vector<double> far(off.rows());
    for (std::size_t j = 0; j < off.columns(); ++j) {
        for (std::size_t k = 0; k < off.rows(); ++k)
            far[k] = std::abs(off(k, j));
        const auto at = far.begin() + std::ptrdiff_t(nearest * double(far.size()));
        std::ranges::nth_element(far, at);
        const double scale = std::max(near, *at);
        for (std::size_t k = 0; k < off.rows(); ++k) {
            const double root = 1.0 + std::pow(off(k, j) / scale, 2);
            weights(k, j) = 1.0 / (root * root);
        }
    }
    return weights;
}

// Of one reading, a line through weighted members.
//   unknowns   that it hangs on, by their places
//   left       by member, what the line leaves, times the root of its weight
//   counted    members that say as much, less those that the line takes up
struct Line {
    std::vector<std::size_t> unknowns;
    double at_nought = 0.0;
    std::vector<double> per_score;
    std::vector<double> left;
    double counted = 0.0;
};

class LineFit {
  public:
    LineFit(const Cloud& cloud, const Matrix& weights, std::size_t reading)
        : scores_(cloud.scores), means_(cloud.scores.columns(), 0.0) {
        double squares = 0.0;
        for (std::size_t k = 0; k < scores_.rows(); ++k) {
            const double weight = weights_.emplace_back(weights(k, reading));
            sum_ += weight;
            squares += weight * weight;
            mean_off_ += weight * cloud.off(k, reading);
            const double* scores = scores_.row(k);
            for (std::size_t i = 0; i < means_.size(); ++i)
                means_[i] += weight * scores[i];
        }
        members_ = sum_ * sum_ / squares;
        mean_off_ /= sum_;
        for (double& mean : means_)
            mean /= sum_;
        for (std::size_t k = 0; k < scores_.rows(); ++k)
            off_.push_back(cloud.off(k, reading) - mean_off_);
    }

    // Unknowns are taken in by what the ones before leave, until none is seen any more.
    [[nodiscard]] Line line() const {
        Line line;
        std::vector<double> left = off_;
        for (int pass = 0; pass < most_passes; ++pass) {
            const auto more = seen(left, line.unknowns);
            if (more.empty()) break;
            line.unknowns.insert(line.unknowns.end(), more.begin(), more.end());
            left = fit(line);
        }
        line.at_nought = mean_off_;
        for (std::size_t i = 0; i < line.unknowns.size(); ++i)
            line.at_nought -= line.per_score[i] * means_[line.unknowns[i]];
        for (std::size_t k = 0; k < left.size(); ++k)
            line.left.push_back(left[k] * std::sqrt(weights_[k]));
        const double taken_up = double(line.unknowns.size() + 1) / members_;
        line.counted = std::max(1.0, sum_ * (1.0 - taken_up));
        return line;
    }

  private:
    const Matrix& scores_;
    std::vector<double> weights_;
    std::vector<double> means_;
    std::vector<double> off_;
    double sum_ = 0.0;
    double mean_off_ = 0.0;
    double members_ = 0.0;

    // The slopes; gives what is left.
    std::vector<double> fit(Line& line) const {
        constexpr double hair = 1e-3;  // lest an unknown that no member varies has any slope
        const auto& unknowns = line.unknowns;
        line.per_score.assign(unknowns.size(), 0.0);
        Matrix squares(unknowns.size(), unknowns.size());
        std::vector<double> row(unknowns.size());
        for (std::size_t k = 0; k < off_.size(); ++k) {
            const double* scores = scores_.row(k);
            for (std::size_t i = 0; i < row.size(); ++i)
                row[i] = scores[unknowns[i]] - means_[unknowns[i]];
            for (std::size_t i = 0; i < row.size(); ++i) {
                const double weighted = weights_[k] * row[i];
                line.per_score[i] += weighted * off_[k];
                double* to = squares.row(i);
                for (std::size_t l = 0; l <= i; ++l)
                    to[l] += weighted * row[l];
            }
        }
        for (std::size_t i = 0; i < row.size(); ++i)
            squares(i, i) += hair;
        const Matrix root = root_of(squares);
        solve_down(root, line.per_score.data());
        solve_up(root, line.per_score.data());
        std::vector<double> left = off_;
        for (std::size_t k = 0; k < left.size(); ++k) {
            const double* scores = scores_.row(k);
            for (std::size_t i = 0; i < row.size(); ++i)
                left[k] -= line.per_score[i] * (scores[unknowns[i]] - means_[unknowns[i]]);
        }
        return left;
    }

    // Those whose scores go with what is left more than chance makes them, the nearest first, as
    // many as the members can tell apart.
    [[nodiscard]] std::vector<std::size_t> seen(const std::vector<double>& left,
                                                const std::vector<std::size_t>& known) const {
        std::vector<double> both(means_.size(), 0.0);
        std::vector<double> squares(means_.size(), 0.0);
        double of_left = 0.0;
        for (std::size_t k = 0; k < left.size(); ++k) {
            const double* scores = scores_.row(k);
            const double weighted = weights_[k] * left[k];
            of_left += weighted * left[k];
            for (std::size_t i = 0; i < means_.size(); ++i) {
                const double off = scores[i] - means_[i];
                both[i] += weighted * off;
                squares[i] += weights_[k] * off * off;
            }
        }
        std::vector<std::pair<double, std::size_t>> order;
        for (std::size_t i = 0; i < means_.size(); ++i) {
            if (!(squares[i] > 1e-9 * sum_) || !(of_left > 1e-6 * sum_)) continue;
            const double with = std::abs(both[i]) / std::sqrt(squares[i] * of_left);
            if (with > by_chance / std::sqrt(members_) &&
                std::ranges::find(known, i) == known.end())
                order.emplace_back(-with, i);
        }
        std::ranges::sort(order);
        const std::size_t room = std::max<std::size_t>(1, left.size() / members_an_unknown);
        order.resize(std::min(order.size(), room - std::min(room, known.size())));
        std::vector<std::size_t> places;
        for (const auto& [with, place] : order)
            places.push_back(place);
        return places;
    }
};

double value_of(const Linear& linear, const double* scores, std::size_t reading) {
    double value = linear.at_nought[reading];
    for (std::size_t i = 0; i < linear.unknowns.size(); ++i)
        value += linear.per_score(reading, i) * scores[linear.unknowns[i]];
    return value;
}

std::size_t place_in(const std::vector<std::size_t>& unknowns, std::size_t unknown) {
    return std::size_t(std::ranges::lower_bound(unknowns, unknown) - unknowns.begin());
}

// Puts a form and the lines through what it leaves together.
Linear sum_of(const Linear& earlier, const std::vector<Line>& lines) {
    Linear made;
    made.held = earlier.held;
    made.unknowns = earlier.unknowns;
    for (const Line& line : lines)
        made.unknowns.insert(made.unknowns.end(), line.unknowns.begin(), line.unknowns.end());
    std::ranges::sort(made.unknowns);
    const auto twice = std::ranges::unique(made.unknowns);
    made.unknowns.erase(twice.begin(), twice.end());
    made.per_score = Matrix(lines.size(), made.unknowns.size());
    for (std::size_t j = 0; j < lines.size(); ++j) {
        const Line& line = lines[j];
        made.at_nought.push_back(line.at_nought +
                                 (earlier.at_nought.empty() ? 0.0 : earlier.at_nought[j]));
        for (std::size_t i = 0; i < line.unknowns.size(); ++i)
            made.per_score(j, place_in(made.unknowns, line.unknowns[i])) += line.per_score[i];
        for (std::size_t i = 0; i < earlier.unknowns.size(); ++i)
            made.per_score(j, place_in(made.unknowns, earlier.unknowns[i])) +=
                earlier.per_score(j, i);
    }
    return made;
}

}  // namespace

Linear linear_of(const Cloud& cloud, const Linear& earlier) {
    const Matrix weights = weights_of(cloud.off);
    const std::size_t members = cloud.scores.rows();
    const std::size_t readings = cloud.off.columns();
    Cloud left_over = cloud;
    if (!earlier.at_nought.empty())
        for (std::size_t k = 0; k < members; ++k)
            for (std::size_t j = 0; j < readings; ++j)
                left_over.off(k, j) -= value_of(earlier, cloud.scores.row(k), j);
    std::vector<Line> lines;
    Matrix left(members, readings);
    for (std::size_t j = 0; j < readings; ++j) {
        const Line& line = lines.emplace_back(LineFit(left_over, weights, j).line());
        for (std::size_t k = 0; k < members; ++k)
            left(k, j) = line.left[k] / std::sqrt(line.counted);
    }
    Linear made = sum_of(earlier, lines);
    made.rest = products(left, left);
    for (std::size_t j = 0; j < readings; ++j)
        made.rest(j, j) += 1.0;
    return made;
}

}  // namespace estimate
