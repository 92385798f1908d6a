#include "solar/weather/clearness_distribution.hpp"

namespace solar {

namespace {

using namespace units;

// Mean of the exponential on 0 to 1 as a function of x, and its slope. Rises from 0 to 1; 1/2 at 0,
// where both closed forms are 0/0.
struct MeanAndSlope {
    double mean;
    double slope;
};

MeanAndSlope mean_on_unit_interval(double x) {
    if (std::abs(x) < 1e-3) return {0.5 + x / 12.0 - x * x * x / 720.0, 1.0 / 12.0 - x * x / 240.0};
    const double e = -std::expm1(-std::abs(x));  // 1 - exp(-|x|), so nothing overflows
    const double inverse = 1.0 / std::abs(x);
    const double mean = 1.0 / e - inverse;
    const double slope = inverse * inverse - (1.0 - e) / (e * e);
    return {x > 0.0 ? mean : 1.0 - mean, slope};
}

// The x whose mean is wanted. Newton from the nearer of two limits, kept between bounds.
double scaled_steepness(double wanted) {
    double low = -1.0 / wanted - 1.0;  // mean(x) > -1/x for x < 0
    double high = 1.0 / (1.0 - wanted) + 1.0;
    double x = 12.0 * (wanted - 0.5);
    x = std::clamp(x, low, high);
    for (int turn = 0; turn < 100; ++turn) {
        const auto [mean, slope] = mean_on_unit_interval(x);
        const double off = mean - wanted;
        (off > 0.0 ? high : low) = x;
        if (std::abs(off) < 1e-15) break;
        double next = slope > 0.0 ? x - off / slope : low;
        if (!(next > low && next < high)) next = 0.5 * (low + high);
        if (std::abs(next - x) <= 1e-13 * std::max(1.0, std::abs(x))) return next;
        x = next;
    }
    return x;
}

}  // namespace

ClearnessDistribution::ClearnessDistribution(Clearness mean, Length elevation, Clearness darkest) {
    // The mean is kept off 0 and 1, where no such distribution exists; the lower bound gives way
    // to a mean near it, and the upper one stays 0.04 above it: ours.
    const double wanted = std::clamp(mean.value(), 0.002, 0.95);
    lowest_ = std::min(darkest.value(), 0.4 * wanted);
    width_ = std::max(clear_sky(elevation).value(), wanted + 0.04) - lowest_;
    scaled_ = scaled_steepness((wanted - lowest_) / width_);
}

Clearness ClearnessDistribution::mean() const {
    return Clearness(lowest_ + width_ * mean_on_unit_interval(scaled_).mean);
}

Clearness ClearnessDistribution::quantile(Probability below) const {
    const double u = std::clamp(below.value(), 0.0, 1.0);
    const double x = scaled_;
    double share = 0.0;  // of the width
    if (std::abs(x) < 1e-6)
        share = u * (1.0 + 0.5 * x * (1.0 - u));  // uniform, and its first correction
    else if (x > 0.0)
        share = 1.0 + std::log(u + (1.0 - u) * std::exp(-x)) / x;
    else
        share = std::log1p(u * std::expm1(x)) / x;
    return Clearness(lowest_ + width_ * std::clamp(share, 0.0, 1.0));
}

Probability ClearnessDistribution::below(Clearness clearness) const {
    const double share = std::clamp((clearness.value() - lowest_) / width_, 0.0, 1.0);
    const double x = scaled_;
    if (std::abs(x) < 1e-6) return Probability(share * (1.0 - 0.5 * x * (1.0 - share)));
    if (x > 0.0)  // both terms times exp(-x), so nothing overflows
        return Probability((std::exp(x * (share - 1.0)) - std::exp(-x)) / -std::expm1(-x));
    return Probability(std::expm1(x * share) / std::expm1(x));
}

}  // namespace solar
