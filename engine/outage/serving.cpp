#include "outage/serving.hpp"

#include <algorithm>

namespace outage {

using namespace units;

battery::Stops protection(const Bank& bank) {
    battery::Stops stops;
    stops.pack_cut_off = bank.cut_off;
    stops.current_above = first_limit(bank);
    stops.removed_above = bank.usable;
    stops.filled_to = counts_as_full * bank.rated;
    return stops;
}

battery::Prepared serving(const Unit& unit, bool through_inverter) {
    auto setup = unit.bank.setup;
    setup.stops = protection(unit.bank);
    if (through_inverter && unit.inverter) setup.stops.cut_off = unit.inverter->cutoff_voltage;
    return battery::prepare(setup);
}

Charge most_removed(const Bank& bank) {
    return std::min(bank.usable, bank.setup.reachable.value() * bank.setup.kinetics.total);
}

bool starts_empty(const Bank& bank) {
    return bank.at_start.removed >= most_removed(bank);
}

}  // namespace outage
