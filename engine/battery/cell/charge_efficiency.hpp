// Part of the charge at the terminals that charging stores: one number for LiFePO4, less the fuller
// the pack for lead-acid, which gasses instead. method.md (42) to (45)
#pragma once

#include <array>
#include <span>

#include "battery/cell/percent.hpp"
#include "battery/cell/two_well.hpp"
#include "units/quantities.hpp"

namespace battery {

// Against the fill of both wells together, constant over each of at most eight pieces.
class ChargeEfficiency {
  public:
    static constexpr int most_pieces = 8;

    // The same at every fill; above 0 to 1.
    ChargeEfficiency(units::Efficiency everywhere = units::Efficiency(1.0)) {
        of_piece_[0] = everywhere;
    }
    //   edges   fills above 0 and below 1, rising, at which one piece ends and the next begins
    //   values  of each piece, above 0 to 1: one more than edges
    ChargeEfficiency(std::span<const units::StateOfCharge> edges,
                     std::span<const units::Efficiency> values);

    [[nodiscard]] int pieces() const { return count_; }
    [[nodiscard]] units::Efficiency of_piece(int piece) const { return of_piece_[piece]; }
    // Fill at which the piece ends; 1 for the last.
    [[nodiscard]] units::StateOfCharge end_of_piece(int piece) const { return ends_[piece]; }

  private:
    std::array<units::Efficiency, most_pieces> of_piece_{};
    std::array<units::StateOfCharge, most_pieces> ends_{units::StateOfCharge(1.0)};
    int count_ = 1;
};

// Of lead-acid, without any bounds: above 0.999 far from full, 0 when full. method.md (42)
//   charge     left of the rated charge
//   charging   current at the terminals, as a magnitude
//   ten_hour   current that empties the full pack in 10 h
//   source     [Copetti 1993] (from memory)
[[nodiscard]] units::Efficiency charge_efficiency(units::StateOfCharge charge,
                                                  units::Current charging, units::Current ten_hour);

// Of a lead-acid pack of these wells and this rated charge with so much of it left, at the ten-hour
// current or at what the wells still take while absorption holds their voltage, whichever is less;
// from 20 to 95 %. method.md (43)
[[nodiscard]] units::Efficiency lead_acid_efficiency(const Kinetics& kinetics, units::Charge rated,
                                                     units::StateOfCharge charge);

// The same in pieces of the fill: a steady current takes from edge to edge the time it takes by the
// law. (44)
[[nodiscard]] ChargeEfficiency lead_acid_efficiency(const Kinetics& kinetics, units::Charge rated);

}  // namespace battery
