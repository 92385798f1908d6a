#include "estimate/weights.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace estimate {

std::vector<double> weights_of(std::span<const double> log_likelihood, double exponent) {
    std::vector<double> weights(log_likelihood.size(), 0.0);
    const double most = log_likelihood.empty() ? 0.0 : *std::ranges::max_element(log_likelihood);
    double sum = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        // With none possible, all are equally impossible.
        weights[i] = std::isfinite(most) && exponent > 0.0
                         ? std::exp(exponent * (log_likelihood[i] - most))
                         : 1.0;
        sum += weights[i];
    }
    for (double& weight : weights)
        weight /= sum;
    return weights;
}

double effective(std::span<const double> weights) {
    double squares = 0.0;
    for (const double weight : weights)
        squares += weight * weight;
    return squares > 0.0 ? 1.0 / squares : 0.0;
}

std::vector<std::size_t> drawn_again(std::span<const double> weights, std::size_t count) {
    std::vector<std::size_t> places;
    places.reserve(count);
    double up_to = 0.0;
    std::size_t at = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double wanted = (double(i) + 0.5) / double(count);
        while (at + 1 < weights.size() && up_to + weights[at] <= wanted)
            up_to += weights[at++];
        places.push_back(at);
    }
    return places;
}

}  // namespace estimate
