// A pump, an inverter of 3 kW and packs of 100 Ah, for tests of starts.
#pragma once

#include "motor/code_letter.hpp"
#include "starting/start.hpp"

namespace made_start {

using namespace starting;
using units::ampere;
using units::exactly;
using units::ohm;
using units::PowerFactor;
using units::second;
using units::volt;
using units::watt;

inline scenario::Inverter three_kilowatts() {
    return {.continuous = 3000.0 * watt,
            .surge = 6000.0 * watt,
            .surge_lasts = 5.0 * second,
            .cutoff_voltage = 10.5 * volt,
            .cutoff_delay = 0.0 * second};
}

inline InverterSide side_of(const scenario::Inverter& inverter) {
    return *inverter_side(inverter, 12.8 * volt);
}

inline StartingMotor pump(const InverterSide& side, double plate_amperes, bool soft_start = false) {
    const scenario::Load load{
        .name = "pump",
        .motor = scenario::Motor{.kind = scenario::MotorKind::split_phase,
                                 .locked_rotor_current = plate_amperes * ampere,
                                 .horsepower = motor::horsepower / 3.0,
                                 .voltage = 120.0 * volt,
                                 .soft_start = soft_start}};
    return *starting_motor(load, "load[0]",
                           {.real = exactly(500.0 * watt), .factor = PowerFactor(0.6)}, side);
}

inline DirectSource packs(int count, double volts = 13.2) {
    return {.branches = {{.name = "pack",
                          .emf = volts * volt,
                          .path = exactly(0.005 * ohm),
                          .count = count,
                          .limits = {.continuous = 100.0 * ampere,
                                     .pulse = {{200.0 * ampere, 5.0 * second}}}}},
            .shared = 0.001 * ohm};
}

}  // namespace made_start
