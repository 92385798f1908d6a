#include "outage/clock/serving.hpp"

#include <algorithm>
#include <cassert>
#include <limits>

#include "outage/clock/inverter_draw.hpp"
#include "outage/clock/overload.hpp"

namespace outage {

using namespace units;

Bank on_day(const Unit& unit, std::size_t bank, std::size_t day) {
    Bank made = bank == 0 ? unit.bank : unit.others[bank - 1];
    if (unit.days.empty()) return made;
    assert(day < unit.days.size() && bank < unit.days[day].banks.size());
    const BankOfDay& warm = unit.days[day].banks[bank];
    made.setup.inner = warm.inner;
    made.setup.reachable = warm.reachable;
    made.setup.locked = warm.locked;
    made.setup.charging = warm.charging;
    made.current_limit = warm.current_limit;
    made.pulse = warm.pulse;
    return made;
}

std::optional<Current> first_limit(const Bank& bank) {
    return Overload(bank).watched(0);
}

Power charge_borne(const Bank& bank) {
    const auto bears = Overload::of_charging(bank).watched();
    if (!bears) return std::numeric_limits<double>::infinity() * watt;
    // at no lower voltage than that of an empty pack
    return static_cast<double>(bank.count) * *bears *
           bank.setup.open_circuit->voltage(StateOfCharge(0.0));
}

bool main_fuse_may_open(const Unit& unit, std::span<const demand::DemandStep> steps) {
    if (!unit.main_fuse || !unit.inverter) return false;
    const auto bears = Overload(*unit.main_fuse).watched();
    return std::ranges::any_of(steps, [&](const demand::DemandStep& step) {
        return drawn_by_inverter(unit, step).at_terminals > *bears * unit.inverter->cutoff_voltage;
    });
}

battery::Stops protection(const Bank& bank) {
    battery::Stops stops;
    stops.pack_cut_off = bank.cut_off;
    stops.current_above = first_limit(bank);
    stops.removed_above = bank.usable;
    stops.filled_to = counts_as_full * bank.rated;
    return stops;
}

Voltage cut_off_of(bool through_inverter, Voltage lowest, Voltage needs) {
    return through_inverter ? std::max(lowest, needs) : lowest;
}

battery::Prepared serving(const Bank& bank, bool through_inverter, Voltage lowest, Voltage needs) {
    auto setup = bank.setup;
    setup.stops = protection(bank);
    setup.stops.cut_off = cut_off_of(through_inverter, lowest, needs);
    return battery::prepare(setup);
}

Charge most_removed(const Bank& bank) {
    return std::min(bank.usable, bank.setup.reachable.value() * bank.setup.kinetics.total);
}

bool starts_empty(const Bank& bank) {
    return bank.at_start.removed >= most_removed(bank);
}

}  // namespace outage
