#include "battery/charge_efficiency.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <boost/math/quadrature/gauss_kronrod.hpp>

namespace battery {

using namespace units;

namespace {

constexpr Efficiency most{0.95};   // [IEC 61427] least below half charge (from memory)
constexpr Efficiency least{0.20};  // ours: what would lie below is all but gassing

// Ours: closer where the law bends.
constexpr StateOfCharge edges[] = {StateOfCharge(0.75), StateOfCharge(0.85), StateOfCharge(0.90),
                                   StateOfCharge(0.94), StateOfCharge(0.97), StateOfCharge(0.99)};

Current ten_hour_current(const Kinetics& kinetics) {
    constexpr Duration ten_hours = 10.0 * hour;
    return capacity_over(kinetics, ten_hours) / ten_hours;
}

// What the bound well still draws while the available one is kept full, both together being this
// much below full. (9)
Current absorbed(const Kinetics& kinetics, Charge removed) {
    return kinetics.rate * kinetics.available.value() * removed;
}

// Harmonic mean: charge divided by it is the integral of charge over the law.
Efficiency mean_between(const Kinetics& kinetics, Charge rated, StateOfCharge low,
                        StateOfCharge high) {
    const auto per_stored = [&](double charge) {
        return 1.0 / lead_acid_efficiency(kinetics, rated, StateOfCharge(charge)).value();
    };
    constexpr unsigned halvings = 12;  // the law has corners where its bounds begin
    const double charge = boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
        per_stored, low.value(), high.value(), halvings, 1e-10);
    return Efficiency(std::min(most.value(), (high.value() - low.value()) / charge));
}

}  // namespace

ChargeEfficiency::ChargeEfficiency(std::span<const StateOfCharge> between,
                                   std::span<const Efficiency> values)
    : count_(static_cast<int>(values.size())) {
    assert(values.size() == between.size() + 1 && values.size() <= of_piece_.size());
    assert(std::ranges::is_sorted(between));
    assert(between.empty() ||
           (between.front() > StateOfCharge(0.0) && between.back() < StateOfCharge(1.0)));
    std::ranges::copy(between, ends_.begin());
    ends_[between.size()] = StateOfCharge(1.0);
    std::ranges::copy(values, of_piece_.begin());
}

Efficiency charge_efficiency(StateOfCharge charge, Current charging, Current ten_hour) {
    return Efficiency(
        1.0 - std::exp(-20.73 / (charging / ten_hour + 0.55) * charge.complement().value()));
}

Efficiency lead_acid_efficiency(const Kinetics& kinetics, Charge rated, StateOfCharge charge) {
    const Current ten_hour = ten_hour_current(kinetics);
    const bool one_well = !(kinetics.available < Share(1.0));
    const Current charging =
        one_well ? ten_hour
                 : std::min(ten_hour, absorbed(kinetics, rested_with(rated, charge).removed));
    return std::clamp(charge_efficiency(charge, charging, ten_hour), least, most);
}

ChargeEfficiency lead_acid_efficiency(const Kinetics& kinetics, Charge rated) {
    std::array<Efficiency, std::size(edges) + 1> values;
    std::array<StateOfCharge, std::size(edges)> fills;
    StateOfCharge low = std::min(StateOfCharge(0.0), lowest_charge(kinetics, rated));
    for (std::size_t piece = 0; piece < values.size(); ++piece) {
        const StateOfCharge high = piece < std::size(edges) ? edges[piece] : StateOfCharge(1.0);
        if (piece < std::size(edges)) fills[piece] = fill_with(kinetics, rated, high);
        values[piece] = mean_between(kinetics, rated, low, high);
        low = high;
    }
    return ChargeEfficiency(fills, values);
}

}  // namespace battery
