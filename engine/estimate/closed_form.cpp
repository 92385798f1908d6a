#include "estimate/closed_form.hpp"

#include <cassert>
#include <cmath>

#include <boost/math/distributions/chi_squared.hpp>

namespace estimate {

Updated updated(const Normal& before, double read, double error) {
    const double s = std::hypot(before.deviation, error);
    if (!std::isfinite(s) || !(s > 0.0)) return {.after = before, .surprise = 0.0};
    const double residual = read - before.mean;
    const double gain = before.deviation * before.deviation / (s * s);
    return {
        .after = {.mean = before.mean + gain * residual, .deviation = before.deviation * error / s},
        .surprise = residual / s};
}

JointUpdated updated(const Joint& before, std::span<const double> weights, double read,
                     double error) {
    const std::size_t count = before.mean.size();
    assert(weights.size() == count);
    std::vector<double> with_reading(count, 0.0);  // covariance of each unknown with the sum
    double expected = 0.0;
    double variance = error * error;
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = 0; j < count; ++j)
            with_reading[i] += before.covariance[i][j] * weights[j];
        expected += weights[i] * before.mean[i];
    }
    for (std::size_t i = 0; i < count; ++i)
        variance += weights[i] * with_reading[i];
    JointUpdated made{.after = before, .surprise = 0.0};
    if (!std::isfinite(variance) || !(variance > 0.0)) return made;
    made.surprise = (read - expected) / std::sqrt(variance);
    for (std::size_t i = 0; i < count; ++i) {
        made.after.mean[i] += with_reading[i] / variance * (read - expected);
        for (std::size_t j = 0; j < count; ++j)
            made.after.covariance[i][j] -= with_reading[i] * with_reading[j] / variance;
    }
    return made;
}

double deviation_after(double variance, double covariance, double read_variance, double error) {
    const double of_reading = read_variance + error * error;
    if (!(of_reading > 0.0)) return std::sqrt(std::max(0.0, variance));
    return std::sqrt(std::max(0.0, variance - covariance * covariance / of_reading));
}

double deviation_of_mean(double own_error, double of_one, int readings) {
    return std::sqrt(own_error * own_error + of_one * of_one / double(readings));
}

double largest_sum_of_squares(int readings, double beyond) {
    const boost::math::chi_squared of(double(std::max(1, readings)));
    return boost::math::quantile(boost::math::complement(of, beyond));
}

bool fit_together(std::span<const double> surprises, double beyond) {
    double sum = 0.0;
    for (const double surprise : surprises)
        sum += surprise * surprise;
    return surprises.empty() || sum <= largest_sum_of_squares(int(surprises.size()), beyond);
}

double counter_error(double through, double share, double missed_current, double time) {
    return std::hypot(share * through, missed_current * time);
}

}  // namespace estimate
