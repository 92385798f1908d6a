#include "battery/cell/open_circuit.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <vector>

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
        return fail(
            Error{.where = "open_circuit",
                  .found = words::said<"the table of voltage against charge cannot be used">(),
                  .remedy = words::said<"give 2 to 32 rows from 0 % to 100 %, voltages above "
                                        "zero and rising with charge">()});
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

OpenCircuit OpenCircuit::from_lowest(StateOfCharge lowest) const {
    assert(lowest < StateOfCharge(1.0) && std::isfinite(lowest.value()));
    // What rounding leaves of 0, where the wells hold the rated charge and no more.
    constexpr double hair = 1e-12;
    if (std::abs(lowest.value()) < hair) return *this;
    const auto fill_of = [&](double charge) {
        return StateOfCharge((charge - lowest.value()) / lowest.complement().value());
    };
    const Voltage at_nothing = voltage(StateOfCharge(0.0));
    constexpr double least = 0.5;  // ours; a cell so low is of no use
    const bool held = voltage(lowest) < least * at_nothing;
    const auto above = [&](int index, double charge) {
        const Piece& piece = pieces_[index];
        return std::max(0.0, piece.above_at_zero + piece.steeper * charge) * volt;
    };
    std::vector<Knot> knots{{.fill = StateOfCharge(0.0),
                             .voltage = std::max(voltage(lowest), least * at_nothing),
                             .above = above(piece_of(lowest.value()), lowest.value())}};
    if (held && count_ < most_knots - 1) knots.push_back({fill_of(0.0), at_nothing, above(0, 0.0)});
    for (int index = 0; index < count_; ++index) {
        const double high = pieces_[index].high;
        if (high - lowest.value() < hair) continue;
        knots.push_back({fill_of(high),
                         pieces_[index].at_zero * volt + pieces_[index].slope * high * volt,
                         above(index, high)});
    }
    knots.back().fill = StateOfCharge(1.0);
    const auto made = through(knots);
    assert(made.has_value());
    return *made;
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
