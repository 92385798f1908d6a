// Which kind of quantity a type holds, and its bare SI value: what text needs to know of a type.
#pragma once

#include <concepts>

#include "units/quantities.hpp"
#include "words/dimension.hpp"

namespace units {

using words::Dimension;

template <class Quantity>
struct DimensionOf;

template <Dimension of>
struct IsDimension {
    static constexpr Dimension value = of;
};

template <>
struct DimensionOf<Power> : IsDimension<Dimension::power> {};
template <>
struct DimensionOf<ApparentPower> : IsDimension<Dimension::apparent_power> {};
template <>
struct DimensionOf<ReactivePower> : IsDimension<Dimension::reactive_power> {};
template <>
struct DimensionOf<Energy> : IsDimension<Dimension::energy> {};
template <>
struct DimensionOf<Charge> : IsDimension<Dimension::charge> {};
template <>
struct DimensionOf<Voltage> : IsDimension<Dimension::voltage> {};
template <>
struct DimensionOf<Current> : IsDimension<Dimension::current> {};
template <>
struct DimensionOf<Resistance> : IsDimension<Dimension::resistance> {};
template <>
struct DimensionOf<Temperature> : IsDimension<Dimension::temperature> {};
template <>
struct DimensionOf<TemperatureDifference> : IsDimension<Dimension::temperature_difference> {};
template <>
struct DimensionOf<Duration> : IsDimension<Dimension::duration> {};
template <>
struct DimensionOf<Length> : IsDimension<Dimension::length> {};
template <>
struct DimensionOf<Area> : IsDimension<Dimension::area> {};
template <>
struct DimensionOf<Volume> : IsDimension<Dimension::volume> {};
template <>
struct DimensionOf<Mass> : IsDimension<Dimension::mass> {};
template <>
struct DimensionOf<Angle> : IsDimension<Dimension::angle> {};
template <>
struct DimensionOf<Irradiance> : IsDimension<Dimension::irradiance> {};
template <>
struct DimensionOf<Irradiation> : IsDimension<Dimension::irradiation> {};
template <>
struct DimensionOf<Frequency> : IsDimension<Dimension::frequency> {};
template <>
struct DimensionOf<AngularVelocity> : IsDimension<Dimension::angular_velocity> {};
template <>
struct DimensionOf<Torque> : IsDimension<Dimension::torque> {};
template <>
struct DimensionOf<Inertia> : IsDimension<Dimension::inertia> {};
template <>
struct DimensionOf<Force> : IsDimension<Dimension::force> {};
template <class Meaning>
struct DimensionOf<Fraction<Meaning>> : IsDimension<Dimension::fraction> {};
template <>
struct DimensionOf<Probability> : IsDimension<Dimension::probability> {};
template <>
struct DimensionOf<PowerFactor> : IsDimension<Dimension::power_factor> {};
template <>
struct DimensionOf<Price> : IsDimension<Dimension::price> {};

// Every type that can be read and printed as a number with a unit.
template <class Quantity>
concept Written = requires {
    { DimensionOf<Quantity>::value } -> std::convertible_to<Dimension>;
};

template <class Unit>
[[nodiscard]] constexpr double in_si(boost::units::quantity<Unit> quantity) {
    return quantity.value();
}
template <class Meaning, class Quantity>
[[nodiscard]] constexpr double in_si(Distinct<Meaning, Quantity> quantity) {
    return quantity.amount().value();
}
template <class Meaning>
[[nodiscard]] constexpr double in_si(Fraction<Meaning> fraction) {
    return fraction.value();
}
[[nodiscard]] constexpr double in_si(Temperature temperature) {
    return temperature.above_absolute_zero().value();
}
[[nodiscard]] constexpr double in_si(Price price) {
    return price.amount();
}

template <Written Quantity>
[[nodiscard]] constexpr Quantity from_si(double value) {
    if constexpr (std::same_as<Quantity, Temperature>) {
        return Temperature(value * kelvin);
    } else if constexpr (std::same_as<Quantity, ApparentPower> ||
                         std::same_as<Quantity, ReactivePower>) {
        return Quantity(value * watt);
    } else if constexpr (requires { Quantity::from_value(value); }) {
        return Quantity::from_value(value);
    } else {
        return Quantity(value);
    }
}

}  // namespace units
