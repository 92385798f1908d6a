// The decay of head differences in as many lanes as go abreast, each at a rate of its own: to the
// bits of battery::decay.
#pragma once

#include <cstddef>

#include "battery/decay.hpp"
#include "battery/step/real.hpp"

namespace battery::step {

// What a step needs of a Decay.
template <class Real>
struct Decays {
    Real left;
    Real once;
    Real twice;
};

// Alike in every lane.
template <class Real>
[[nodiscard, gnu::always_inline]] inline Decays<Real> alike(const Decay& decay) {
    return {all<Real>(decay.left), all<Real>(decay.once), all<Real>(decay.twice)};
}

//   x   rate times time in each lane, not negative. Where one lane is beyond the series, all go one
//       by one: for the exponential there is one double's, and its bits.
template <class Real>
[[nodiscard, gnu::always_inline]] inline Decays<Real> decays(const Real& x) {
    Decays<Real> made;
    bool beyond = false;
    for (std::size_t lane = 0; lane < lanes_of<Real>; ++lane)
        beyond |= !(x[lane] < decay_detail::series_below);
    if (!beyond) {
        const Real thrice = decay_detail::series(x);
        made.twice = 0.5 - x * thrice;
        made.once = 1.0 - x * made.twice;
        made.left = 1.0 - x * made.once;
        return made;
    }
    for (std::size_t lane = 0; lane < lanes_of<Real>; ++lane) {
        const Decay here = decay(x[lane]);
        made.left[lane] = here.left;
        made.once[lane] = here.once;
        made.twice[lane] = here.twice;
    }
    return made;
}

}  // namespace battery::step
