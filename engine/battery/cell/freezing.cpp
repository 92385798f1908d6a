#include "battery/cell/freezing.hpp"

#include <algorithm>
#include <iterator>

#include "battery/cell/chemistry.hpp"

namespace battery {

using namespace units;
using scenario::Chemistry;

namespace {

struct Row {
    double gravity;
    double fahrenheit;
};

// [Acid freezing], as printed in degF
constexpr Row rows[] = {{1.000, 32.0},  {1.050, 27.0},  {1.100, 19.0}, {1.150, 5.0},
                        {1.200, -16.0}, {1.250, -62.0}, {1.280, -90.0}};

// A cell rests at its gravity + 0.845 V, [Flooded 225 Ah sheet].
constexpr double offset = 0.845;

double celsius_of(double fahrenheit) {
    return (fahrenheit - 32.0) / 1.8;
}

// Straight between the rows.
double freezes_at_celsius(double gravity) {
    const auto high =
        std::upper_bound(std::begin(rows) + 1, std::end(rows) - 1, gravity,
                         [](double value, const Row& row) { return value < row.gravity; });
    const auto low = high - 1;
    const double part =
        std::clamp((gravity - low->gravity) / (high->gravity - low->gravity), 0.0, 1.0);
    return celsius_of(low->fahrenheit + part * (high->fahrenheit - low->fahrenheit));
}

}  // namespace

std::optional<Temperature> freezing_point(Chemistry chemistry, StateOfCharge charge) {
    if (chemistry == Chemistry::lifepo4) return std::nullopt;
    const double cell =
        open_circuit_of(chemistry).voltage(charge) / volt / defaults_of(chemistry).cells;
    return celsius(freezes_at_celsius(cell - offset));
}

std::optional<StateOfCharge> freezes_below(Chemistry chemistry, Temperature temperature) {
    const auto empty = freezing_point(chemistry, StateOfCharge(0.0));
    if (!empty || temperature > *empty) return std::nullopt;
    // It freezes the later the more is left; where the table has ended, as soon as it is not full.
    double frozen = 0.0;
    double liquid = 1.0;
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = 0.5 * (frozen + liquid);
        (temperature <= *freezing_point(chemistry, StateOfCharge(middle)) ? frozen : liquid) =
            middle;
    }
    return StateOfCharge(liquid);
}

}  // namespace battery
