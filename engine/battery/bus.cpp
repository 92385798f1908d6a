#include "battery/bus.hpp"

#include <cassert>

#include "battery/bus_solver.hpp"

namespace battery {

using namespace units;

namespace {

std::vector<Branch> branches_of(std::span<const PackOnBus> packs) {
    std::vector<Branch> branches;
    for (const auto& pack : packs) {
        assert(pack.giving > Resistance{} && pack.taking > Resistance{});
        branches.push_back({.rested = pack.rested / volt,
                            .giving = pack.gives ? 1.0 / pack.giving.value() : 0.0,
                            .taking = pack.takes ? 1.0 / pack.taking.value() : 0.0});
    }
    return branches;
}

SharedOut told(std::span<const Branch> branches, const BusPoint& point) {
    SharedOut out{.voltage = point.voltage * volt, .currents = {}, .possible = point.possible};
    for (const Branch& branch : branches)
        out.currents.push_back(branch.current_at(point.node) * ampere);
    if (!point.possible) out.at_most = point.voltage * point.current * watt;
    return out;
}

}  // namespace

SharedOut shared_at_power(std::span<const PackOnBus> packs, Power power, Resistance shared) {
    auto branches = branches_of(packs);
    const BusPoint point = bus_at_power(branches, power / watt, shared / ohm);
    return told(branches, point);
}

SharedOut shared_at_current(std::span<const PackOnBus> packs, Current current, Resistance shared) {
    auto branches = branches_of(packs);
    const BusPoint point = bus_at_current(branches, current / ampere, shared / ohm);
    return told(branches, point);
}

}  // namespace battery
