#include "inverter/loss_fit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace inverter {

namespace {

using Column = std::vector<double>;

double dot(const Column& a, const Column& b) {
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        sum += a[i] * b[i];
    }
    return sum;
}

void subtract(Column& from, double times, const Column& column) {
    for (std::size_t i = 0; i < from.size(); ++i) {
        from[i] -= times * column[i];
    }
}

// Modified Gram-Schmidt: as exact as the system allows, also where it is square.
std::optional<Column> least_squares(std::vector<Column> columns, Column target) {
    const std::size_t unknowns = columns.size();
    std::vector<Column> upper(unknowns, Column(unknowns, 0.0));
    Column projected(unknowns, 0.0);
    for (std::size_t j = 0; j < unknowns; ++j) {
        const double before = std::sqrt(dot(columns[j], columns[j]));
        for (std::size_t k = 0; k < j; ++k) {
            upper[k][j] = dot(columns[k], columns[j]);
            subtract(columns[j], upper[k][j], columns[k]);
        }
        upper[j][j] = std::sqrt(dot(columns[j], columns[j]));
        if (upper[j][j] <= 1e-9 * before) {
            return std::nullopt;  // this column says nothing that the earlier ones do not
        }
        for (double& entry : columns[j]) {
            entry /= upper[j][j];
        }
        projected[j] = dot(columns[j], target);
        subtract(target, projected[j], columns[j]);
    }
    for (std::size_t j = unknowns; j-- > 0;) {
        for (std::size_t k = j + 1; k < unknowns; ++k) {
            projected[j] -= upper[j][k] * projected[k];
        }
        projected[j] /= upper[j][j];
    }
    return projected;
}

// An error of loss counts as the error of efficiency it causes: d(eta) = -(eta^2/p) d(loss).
double weight(const CurvePoint& point) {
    return point.efficiency * point.efficiency / point.share;
}

// Solves for the constants named in `free`; the others are nought, or the known idle.
std::optional<LossShares> solve(const std::vector<CurvePoint>& points,
                                std::optional<double> idle_share, const std::vector<int>& free) {
    LossShares shares{idle_share.value_or(0.0), 0.0, 0.0};
    std::vector<Column> columns(free.size());
    Column target;
    for (const CurvePoint& point : points) {
        for (std::size_t j = 0; j < free.size(); ++j) {
            columns[j].push_back(weight(point) * std::pow(point.share, free[j]));
        }
        target.push_back(weight(point) * (stated_loss_share(point) - shares[0]));
    }
    const std::optional<Column> found = least_squares(std::move(columns), std::move(target));
    if (!found) {
        return std::nullopt;
    }
    for (std::size_t j = 0; j < free.size(); ++j) {
        shares[static_cast<std::size_t>(free[j])] = (*found)[j];
    }
    return shares;
}

double squared_miss(const LossShares& shares, const std::vector<CurvePoint>& points) {
    double sum = 0.0;
    for (const CurvePoint& point : points) {
        const double miss =
            weight(point) * (loss_share_at(shares, point.share) - stated_loss_share(point));
        sum += miss * miss;
    }
    return sum;
}

}  // namespace

double loss_share_at(const LossShares& shares, double share) {
    return shares[0] + share * (shares[1] + share * shares[2]);
}

double stated_loss_share(const CurvePoint& point) {
    return point.share / point.efficiency - point.share;
}

double worst_miss(const LossShares& shares, const std::vector<CurvePoint>& points) {
    double worst = 0.0;
    for (const CurvePoint& point : points) {
        const double fitted = point.share / (point.share + loss_share_at(shares, point.share));
        worst = std::max(worst, std::abs(fitted - point.efficiency));
    }
    return worst;
}

bool is_sound(const LossShares& shares) {
    const auto [idle, linear, quadratic] = shares;
    if (idle < 0.0 || quadratic < 0.0 || linear <= -1.0) {
        return false;
    }
    // A falling start is sound while the parabola stays above nought.
    return linear >= 0.0 || linear * linear < 4.0 * idle * quadratic;
}

std::optional<LossShares> nearest(const std::vector<CurvePoint>& points,
                                  std::optional<double> idle_share) {
    const std::vector<int> free = idle_share ? std::vector<int>{1, 2} : std::vector<int>{0, 1, 2};
    if (points.size() < free.size()) {
        return std::nullopt;
    }
    return solve(points, idle_share, free);
}

LossShares nearest_not_negative(const std::vector<CurvePoint>& points,
                                std::optional<double> idle_share) {
    // With three unknowns the best solution under "none below nought" is the best of the
    // unhindered solutions over all choices of which constants are nought.
    LossShares best{idle_share.value_or(0.0), 0.0, 0.0};
    double best_miss = squared_miss(best, points);
    for (int choice = 1; choice < 8; ++choice) {
        std::vector<int> free;
        for (int which = 0; which < 3; ++which) {
            if ((choice >> which & 1) != 0) {
                free.push_back(which);
            }
        }
        if (free.size() > points.size() || (idle_share && free.front() == 0)) {
            continue;
        }
        const std::optional<LossShares> found = solve(points, idle_share, free);
        if (!found || std::ranges::any_of(*found, [](double share) { return share < 0.0; })) {
            continue;
        }
        const double miss = squared_miss(*found, points);
        if (miss < best_miss) {
            best = *found;
            best_miss = miss;
        }
    }
    return best;
}

}  // namespace inverter
