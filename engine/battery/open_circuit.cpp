#include "battery/open_circuit.hpp"

#include <cassert>
#include <cmath>

namespace battery {

using namespace units;

namespace {

bool can_be_used(std::span<const Knot> knots) {
    if (knots.size() < 2 || knots.size() > OpenCircuit::most_knots) return false;
    if (knots.front().fill.value() != 0.0 || knots.back().fill.value() != 1.0) return false;
    if (!(knots.front().voltage > Voltage{}) || !std::isfinite(knots.back().voltage / volt))
        return false;
    for (std::size_t index = 1; index < knots.size(); ++index)
        if (!(knots[index].fill > knots[index - 1].fill) ||
            !(knots[index].voltage > knots[index - 1].voltage))
            return false;
    for (const Knot& knot : knots)
        if (!(knot.above >= Voltage{}) || !std::isfinite(knot.above / volt)) return false;
    return true;
}

}  // namespace

OpenCircuit::OpenCircuit() {
    pieces_[0] = {.at_zero = 1.0, .slope = 1.0, .low = 0.0, .high = 1.0};
    prepare();
}

Result<OpenCircuit> OpenCircuit::through(std::span<const Knot> knots) {
    if (!can_be_used(knots))
        return fail(Error{.where = "open_circuit",
                          .found = "the table of voltage against charge cannot be used",
                          .remedy = "give 2 to 32 rows from 0 % to 100 %, voltages above zero and "
                                    "rising with charge"});
    OpenCircuit table;
    table.count_ = static_cast<int>(knots.size()) - 1;
    for (int index = 0; index < table.count_; ++index) {
        const Knot& low = knots[static_cast<std::size_t>(index)];
        const Knot& high = knots[static_cast<std::size_t>(index) + 1];
        const double slope =
            (high.voltage - low.voltage) / volt / (high.fill.value() - low.fill.value());
        const double steeper =
            (high.above - low.above) / volt / (high.fill.value() - low.fill.value());
        table.pieces_[index] = {.at_zero = low.voltage / volt - slope * low.fill.value(),
                                .slope = slope,
                                .low = low.fill.value(),
                                .high = high.fill.value(),
                                .above_at_zero = low.above / volt - steeper * low.fill.value(),
                                .steeper = steeper};
    }
    table.prepare();
    return table;
}

void OpenCircuit::prepare() {
    double sum = 0.0;
    for (int index = 0; index < count_; ++index) {
        const Piece& piece = pieces_[index];
        integrals_[index] = sum;
        const double middle = 0.5 * (piece.low + piece.high);
        sum += (piece.high - piece.low) * (piece.at_zero + piece.slope * middle);
    }
    int index = 0;
    for (int cell = 0; cell < cells; ++cell) {
        const double low = static_cast<double>(cell) / cells;
        while (index + 1 < count_ && low > pieces_[index].high)
            ++index;
        first_[cell] = static_cast<unsigned char>(index);
    }
}

OpenCircuit OpenCircuit::scaled(double factor) const {
    assert(factor > 0.0 && std::isfinite(factor));
    OpenCircuit result = *this;
    for (Piece& piece : result.pieces_) {
        piece.at_zero *= factor;
        piece.slope *= factor;
        piece.above_at_zero *= factor;
        piece.steeper *= factor;
    }
    result.prepare();
    return result;
}

StateOfCharge OpenCircuit::charges_as_rested_to() const {
    for (int index = 0; index < count_; ++index)
        if (pieces_[index].above_at_zero != 0.0 || pieces_[index].steeper != 0.0)
            return StateOfCharge(pieces_[index].low);
    return StateOfCharge(1.0);
}

StateOfCharge OpenCircuit::fill_at(Voltage voltage) const {
    int index = 0;
    while (index + 1 < count_ &&
           voltage / volt > pieces_[index].at_zero + pieces_[index].slope * pieces_[index].high)
        ++index;
    return StateOfCharge((voltage / volt - pieces_[index].at_zero) / pieces_[index].slope);
}

}  // namespace battery
