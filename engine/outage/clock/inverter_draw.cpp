#include "outage/clock/inverter_draw.hpp"

#include <algorithm>

#include "wiring/power_behind.hpp"

namespace outage {

using namespace units;

namespace {

// What the packs' own resistance leaves of their rested voltage: about the nominal one; ours.
constexpr double under_load = 0.97;

Voltage half_full(const Unit& unit) {
    return under_load * unit.bank.setup.open_circuit->voltage(StateOfCharge(0.5));
}

}  // namespace

InverterDraw drawn_by_inverter(const Unit& unit, const demand::DemandStep& step) {
    if (!unit.inverter || !step.inverter_on) return {};
    const auto& inverter = *unit.inverter;
    InverterDraw draw;
    if (step.asleep) {
        draw.at_terminals = inverter.asleep;
    } else {
        const auto apparent = inverter::apparent(step.ac, step.ac_reactive);
        draw.at_terminals = inverter::dc_power(inverter, step.ac, apparent);
        draw.carried = inverter::carries(inverter, step.ac, apparent);
    }
    draw.needs = wiring::needed_before(unit.main_path, draw.at_terminals, inverter.cutoff_voltage);
    if (unit.main_path > Resistance{}) {
        const Current current =
            current_in_main(unit, draw.at_terminals, std::max(half_full(unit), draw.needs));
        draw.in_main = current * current * unit.main_path;
    }
    return draw;
}

Current current_in_main(const Unit& unit, Power at_terminals, Voltage bus) {
    return wiring::current_into(at_terminals, unit.main_path, bus);
}

}  // namespace outage
