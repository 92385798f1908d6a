#include "battery/cell/cold_lock.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "battery/cell/temperature.hpp"

namespace battery {

using namespace units;
using scenario::Chemistry;

ColdLock::ColdLock(Share locked) {
    locked_[0] = locked.value();
}

ColdLock::ColdLock(std::span<const Knot> knots, Charge rated) : count_(knots.size()) {
    assert(!knots.empty() && knots.size() <= most_knots && rated > Charge{});
    for (std::size_t i = 0; i < knots.size(); ++i) {
        amperes_[i] = knots[i].rate * rated / ampere;
        locked_[i] = knots[i].locked.value();
        assert(i == 0 || (amperes_[i] > amperes_[i - 1] && locked_[i] >= locked_[i - 1]));
    }
}

namespace {

constexpr double most_locked = 0.95;  // as temperature.cpp has it

Share held(double locked) {
    return Share(std::clamp(locked, 0.0, most_locked));
}

// (20): in proportion to the rate, at 0.33 C as the table has it, up to one and a half times that.
ColdLock of_lithium(double out_at_a_third, Charge rated) {
    constexpr double table_rate = 0.33;
    constexpr double most = 1.5;
    const double locked = 1.0 - out_at_a_third;
    const std::array knots{ColdLock::Knot{Frequency{}, Share(0.0)},
                           ColdLock::Knot{most * table_rate * per_hour, held(most * locked)}};
    return {knots, rated};
}

// (21): 0.6 % a kelvin up to C/10, 1.0 % from C/3, between them by the logarithm of the rate.
// [Lead-acid support page] for the slow end; the fast one from memory
ColdLock of_gel(double out_slowly, Charge rated) {
    constexpr double slow = 0.1;
    constexpr double fast = 0.33;
    constexpr double fast_over_slow = 1.0 / 0.6;
    const double locked = 1.0 - out_slowly;
    std::array<ColdLock::Knot, 5> knots;
    for (std::size_t i = 0; i < knots.size(); ++i) {
        const double part = static_cast<double>(i) / (knots.size() - 1);
        knots[i] = {slow * std::pow(fast / slow, part) * per_hour,
                    held(locked * (1.0 + part * (fast_over_slow - 1.0)))};
    }
    return {knots, rated};
}

// (22): [AGM temperature table] for discharges of more than an hour, of half an hour to one, of less.
ColdLock of_agm(double out_slowly, double in_an_hour, double in_half_an_hour, Charge rated) {
    constexpr double step = 0.001;  // 1/h, as wide as a step is drawn here
    const std::array knots{ColdLock::Knot{0.6 * per_hour, held(1.0 - out_slowly)},
                           ColdLock::Knot{(0.6 + step) * per_hour, held(1.0 - in_an_hour)},
                           ColdLock::Knot{1.2 * per_hour, held(1.0 - in_an_hour)},
                           ColdLock::Knot{(1.2 + step) * per_hour, held(1.0 - in_half_an_hour)}};
    return {knots, rated};
}

}  // namespace

ColdLock cold_lock(Chemistry chemistry, Temperature temperature, Charge rated) {
    const double slowly = capacity_factor(chemistry, temperature).factor;
    // Warmth above 25 degC takes a little of LiFePO4's charge, at every rate.
    if (!(temperature < celsius(25.0))) return ColdLock(held(1.0 - slowly));
    switch (chemistry) {
        case Chemistry::flooded:
            break;
        case Chemistry::agm: {
            const auto [hour, half] = agm_fast_capacity(temperature);
            return of_agm(slowly, std::min(slowly, hour), std::min({slowly, hour, half}), rated);
        }
        case Chemistry::gel:
            return of_gel(slowly, rated);
        case Chemistry::lifepo4:
            return of_lithium(slowly, rated);
    }
    return ColdLock(held(1.0 - slowly));
}

}  // namespace battery
