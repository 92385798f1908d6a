// The kinds of quantity there are. A sentence holds a quantity as its kind and its value in SI, so
// that it can be shown in whatever units a reader likes.
#pragma once

namespace words {

enum class Dimension {
    power,
    apparent_power,
    reactive_power,
    energy,
    charge,
    voltage,
    current,
    resistance,
    temperature,
    temperature_difference,
    duration,
    length,
    area,
    volume,
    mass,
    angle,
    irradiance,
    irradiation,
    frequency,
    angular_velocity,
    torque,
    inertia,
    force,
    fraction,
    probability,
    power_factor,
    price,
};

}  // namespace words
