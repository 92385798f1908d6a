// Rested voltage against the fill of a well, or against the charge left: straight lines between at
// most 32 knots. While charge goes in, however slowly, a nearly full lithium pack stands above it:
// method.md (64).
#pragma once

#include <array>
#include <span>

#include "battery/cell/two_well.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"

namespace battery {

//   above  by how much more than this the charging voltage stands without current; at least zero
struct Knot {
    units::StateOfCharge fill;
    units::Voltage voltage{};
    units::Voltage above{};
};

// One straight piece in plain numbers, for the inner loop: voltage = at_zero + slope * fill (V),
// valid for low <= fill <= high. While charging that is at_zero + above_at_zero + (slope + steeper)
// * fill.
struct Piece {
    double at_zero = 0.0;
    double slope = 1.0;
    double low = 0.0;
    double high = 1.0;
    double above_at_zero = 0.0;
    double steeper = 0.0;
};

// The whole table. Beyond 0 and 1 the end pieces go on straight: fills go there only by rounding.
class OpenCircuit {
  public:
    static constexpr int most_knots = 32;

    // A flat-free single piece, 1 V to 2 V: a value to assign over.
    OpenCircuit();

    //   fails  at "open_circuit" unless there are 2 to 32 knots from fill 0 to fill 1 in order, with
    //          positive voltages that rise from each to the next, and none that charging lowers
    [[nodiscard]] static units::Result<OpenCircuit> through(std::span<const Knot> knots);

    // Of a table over the charge left (percent.hpp), the same over the fill of a well: fill 0 is
    // the lowest charge, below 1, to which the table goes on along its last two rows (never below
    // half the voltage of charge 0) or where it is cut. method.md (49)
    [[nodiscard]] OpenCircuit from_lowest(units::StateOfCharge lowest) const;

    // Every voltage times this factor, above 0: two in series are 2.
    [[nodiscard]] OpenCircuit scaled(double factor) const;

    [[nodiscard]] units::Voltage voltage(units::StateOfCharge fill) const {
        const Piece& piece = pieces_[piece_of(fill.value())];
        return (piece.at_zero + piece.slope * fill.value()) * units::volt;
    }
    // The same while charge goes in, before any resistance.
    [[nodiscard]] units::Voltage charging_voltage(units::StateOfCharge fill) const {
        const Piece& piece = pieces_[piece_of(fill.value())];
        return voltage(fill) + (piece.above_at_zero + piece.steeper * fill.value()) * units::volt;
    }
    // Fill up to which the two are the same; 1 where they are everywhere.
    [[nodiscard]] units::StateOfCharge charges_as_rested_to() const;
    // Volts for the whole fill from 0 to 1, were it all this steep.
    [[nodiscard]] units::Voltage slope(units::StateOfCharge fill) const {
        return pieces_[piece_of(fill.value())].slope * units::volt;
    }
    // Fill at which the voltage stands; below 0 or above 1 where the table does not reach it.
    [[nodiscard]] units::StateOfCharge fill_at(units::Voltage voltage) const;
    // Mean voltage times fill from empty to here: energy per full charge. method.md (14)
    [[nodiscard]] units::Voltage integral(units::StateOfCharge fill) const {
        const double s = fill.value();
        const int index = piece_of(s);
        const Piece& piece = pieces_[index];
        const double from = s - piece.low;
        const double low_voltage = piece.at_zero + piece.slope * piece.low;
        return (integrals_[index] + from * (low_voltage + 0.5 * piece.slope * from)) * units::volt;
    }

    [[nodiscard]] int pieces() const { return count_; }
    [[nodiscard]] const Piece& piece(int index) const { return pieces_[index]; }
    [[nodiscard]] int piece_of(double fill) const {
        const int cell = !(fill > 0.0) ? 0
                         : fill >= 1.0 ? cells - 1
                                       : static_cast<int>(fill * cells);
        int index = first_[cell];
        while (index + 1 < count_ && fill > pieces_[index].high)
            ++index;
        return index;
    }

  private:
    static constexpr int cells = 32;  // the piece at the low end of each 32nd of the fill
    std::array<Piece, most_knots - 1> pieces_{};
    std::array<double, most_knots - 1> integrals_{};  // up to the low end of each piece
    std::array<unsigned char, cells> first_{};
    int count_ = 1;

    void prepare();
};

// Energy that a very slow discharge would give, each well at its own fill: a function of state.
// method.md (15)
[[nodiscard]] inline units::Energy stored_energy(const Kinetics& kinetics,
                                                 const OpenCircuit& open_circuit,
                                                 const Wells& wells) {
    const units::Share width = kinetics.available;
    const units::Energy available =
        kinetics.total * width.value() * open_circuit.integral(available_fill(kinetics, wells));
    if (!(width.value() < 1.0)) return available;
    return available + kinetics.total * width.complement().value() *
                           open_circuit.integral(bound_fill(kinetics, wells));
}

}  // namespace battery
