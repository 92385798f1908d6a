// A law of the efficiency of charging over the charge, as the pieces that a step knows. (44)
#pragma once

#include <algorithm>
#include <array>
#include <iterator>

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include "battery/cell/charge_efficiency.hpp"

namespace battery::efficiency_pieces {

inline constexpr units::Efficiency least{0.20};  // ours: what would lie below is all but gassing

// Ours: closer where the laws bend.
inline constexpr units::StateOfCharge edges[] = {
    units::StateOfCharge(0.75), units::StateOfCharge(0.85), units::StateOfCharge(0.90),
    units::StateOfCharge(0.94), units::StateOfCharge(0.97), units::StateOfCharge(0.99)};

[[nodiscard]] units::Current ten_hour_current(const Kinetics& kinetics);

// What a pack with so much left still takes while absorption keeps its available well full, and no
// more than the ten-hour current; that, where there is one well. (43)
[[nodiscard]] units::Current still_taken(const Kinetics& kinetics, units::Charge rated,
                                         units::StateOfCharge charge);

// Harmonic mean: charge divided by it is the integral of charge over the law.
//   law   gives an Efficiency above 0 at each charge
template <class Law>
[[nodiscard]] units::Efficiency mean_between(units::StateOfCharge low, units::StateOfCharge high,
                                             units::Efficiency highest, Law law) {
    const auto per_stored = [&](double charge) {
        return 1.0 / law(units::StateOfCharge(charge)).value();
    };
    constexpr unsigned halvings = 12;  // a law has corners where its bounds begin
    const double charge = boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
        per_stored, low.value(), high.value(), halvings, 1e-10);
    return units::Efficiency(std::min(highest.value(), (high.value() - low.value()) / charge));
}

template <class Law>
[[nodiscard]] ChargeEfficiency in_pieces(const Kinetics& kinetics, units::Charge rated,
                                         units::Efficiency highest, Law law) {
    std::array<units::Efficiency, std::size(edges) + 1> values;
    std::array<units::StateOfCharge, std::size(edges)> fills;
    auto low = std::min(units::StateOfCharge(0.0), lowest_charge(kinetics, rated));
    for (std::size_t piece = 0; piece < values.size(); ++piece) {
        const auto high = piece < std::size(edges) ? edges[piece] : units::StateOfCharge(1.0);
        if (piece < std::size(edges)) fills[piece] = fill_with(kinetics, rated, high);
        values[piece] = mean_between(low, high, highest, law);
        low = high;
    }
    return ChargeEfficiency(fills, values);
}

}  // namespace battery::efficiency_pieces
