// The integrals of a decaying exponential that the two wells need, for any rate times time from 0
// to beyond where the exponential underflows.
#pragma once

#include <cmath>

namespace battery {

// With x = rate * time >= 0:
//   left  = exp(-x)                 what is left of a head difference
//   once  = (1 - left) / x          its mean over the time; 1 at x = 0
//   twice = (1 - once) / x          1/2 at x = 0
//   thrice = (1/2 - twice) / x      1/6 at x = 0
// Each is accurate to a few units in the last place: the quotients lose digits as x falls, so
// below 1/4 they come from the power series of the last one, upwards.
struct Decay {
    double left = 1.0;
    double once = 1.0;
    double twice = 0.5;
    double thrice = 1.0 / 6.0;
};

namespace decay_detail {

inline constexpr double series_below = 0.25;

// sum of (-x)^n / (n + 3)!, n = 0..10; the first term left out is below 2e-17 of the sum
template <class Real>
[[gnu::always_inline]] inline Real series(const Real& x) {
    constexpr double term[] = {1.0 / 6.0,         1.0 / 24.0,        1.0 / 120.0,
                               1.0 / 720.0,       1.0 / 5040.0,      1.0 / 40320.0,
                               1.0 / 362880.0,    1.0 / 3628800.0,   1.0 / 39916800.0,
                               1.0 / 479001600.0, 1.0 / 6227020800.0};
    const Real x2 = x * x;
    const Real x4 = x2 * x2;
    const Real low = (term[0] - x * term[1]) + x2 * (term[2] - x * term[3]);
    const Real middle = (term[4] - x * term[5]) + x2 * (term[6] - x * term[7]);
    const Real high = (term[8] - x * term[9]) + x2 * term[10];
    return low + x4 * (middle + x4 * high);
}

}  // namespace decay_detail

[[nodiscard, gnu::always_inline]] inline Decay decay(double x) {
    Decay result;
    if (x < decay_detail::series_below) {
        result.thrice = decay_detail::series(x);
        result.twice = 0.5 - x * result.thrice;
        result.once = 1.0 - x * result.twice;
        result.left = 1.0 - x * result.once;
        return result;
    }
    result.left = std::exp(-x);
    result.once = (1.0 - result.left) / x;
    result.twice = (1.0 - result.once) / x;
    result.thrice = (0.5 - result.twice) / x;
    return result;
}

}  // namespace battery
