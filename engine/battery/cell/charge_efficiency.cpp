#include "battery/cell/charge_efficiency.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "battery/cell/efficiency_pieces.hpp"

namespace battery {

using namespace units;

namespace {

constexpr Efficiency most{0.95};  // [IEC 61427] least below half charge (from memory)

}  // namespace

namespace efficiency_pieces {

Current ten_hour_current(const Kinetics& kinetics) {
    constexpr Duration ten_hours = 10.0 * hour;
    return capacity_over(kinetics, ten_hours) / ten_hours;
}

// What the bound well still draws while the available one is kept full. (9)
Current still_taken(const Kinetics& kinetics, Charge rated, StateOfCharge charge) {
    const Current ten_hour = ten_hour_current(kinetics);
    if (!(kinetics.available < Share(1.0))) return ten_hour;
    const Charge removed = rested_with(rated, charge).removed;
    return std::min<Current>(ten_hour, kinetics.rate * kinetics.available.value() * removed);
}

}  // namespace efficiency_pieces

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
    const auto flows = efficiency_pieces::still_taken(kinetics, rated, charge);
    const auto ten_hour = efficiency_pieces::ten_hour_current(kinetics);
    return std::clamp(charge_efficiency(charge, flows, ten_hour), efficiency_pieces::least, most);
}

ChargeEfficiency lead_acid_efficiency(const Kinetics& kinetics, Charge rated) {
    return efficiency_pieces::in_pieces(kinetics, rated, most, [&](StateOfCharge charge) {
        return lead_acid_efficiency(kinetics, rated, charge);
    });
}

}  // namespace battery
