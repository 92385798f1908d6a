#include "battery/softness.hpp"

#include <algorithm>
#include <cassert>

#include "battery/cell/chemistry.hpp"
#include "battery/cell/percent.hpp"

namespace battery {

using namespace units;
using scenario::Chemistry;

namespace {

struct End {
    Share available;
    Frequency rate;
};
// [AGM 100 Ah sheet], of which one exponent is 1.28 from 5 to 25 A of 100 Ah; and wells of 1.11, in
// the middle of what is published for AGM, [Peukert list].
const End hard{Share(0.380), 0.817 * per_hour};
const End soft{Share(0.683), 0.404 * per_hour};

}  // namespace

bool has_unknown_softness(const scenario::Pack& pack) {
    return pack.chemistry == Chemistry::agm && pack.rates.empty() && !pack.reserve &&
           !pack.two_well;
}

PackModel with_softness(PackModel model, const scenario::Pack& pack, double softness) {
    assert(has_unknown_softness(pack));
    const auto& defaults = defaults_of(Chemistry::agm);
    const End& end = softness < 0.0 ? hard : soft;
    const double part = std::min(1.0, std::abs(softness));
    const auto between = [&](auto from, auto to) { return from + part * (to - from); };
    Kinetics wells{
        .total = 1.0 * coulomb,
        .available = Share(between(defaults.available.value.value(), end.available.value())),
        .rate = between(defaults.rate.value, end.rate)};
    wells.total =
        model.capacity *
        (1.0 * coulomb / capacity_over(wells, pack.rated_over.value_or(defaults.rated_over.value)));
    const StateOfCharge full(1.0);
    const OpenCircuit& table = open_circuit_of(Chemistry::agm);
    const double series = model.at_rest.voltage(full) / table.voltage(full);
    const StateOfCharge lowest = lowest_charge(wells, model.capacity);
    model.kinetics = wells;
    model.at_rest = table.scaled(series).from_lowest(lowest);
    model.open_circuit = agm_level_while_drawn(lowest).scaled(series);
    model.at_start =
        rested_with(model.capacity, std::max(charge_left(model.capacity, model.at_start), lowest));
    return model;
}

}  // namespace battery
