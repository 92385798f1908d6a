// Quantities that only wiring needs.
#pragma once

#include "units/quantities.hpp"

namespace wiring {

template <class A, class B>
using Quotient = typename boost::units::divide_typeof_helper<A, B>::type;
template <class A, class B>
using Product = typename boost::units::multiply_typeof_helper<A, B>::type;

using ResistancePerLength =
    boost::units::quantity<Quotient<units::si::resistance, units::si::length>>;  // ohm/m
using HeatTransfer = boost::units::quantity<
    Quotient<units::si::power, Product<units::si::area, units::si::temperature>>>;  // W/(m2 K)
using VolumeFlow = boost::units::quantity<Quotient<units::si::volume, units::si::time>>;  // m3/s

inline constexpr ResistancePerLength ohm_per_metre = ResistancePerLength::from_value(1.0);
inline constexpr HeatTransfer watt_per_square_metre_kelvin = HeatTransfer::from_value(1.0);
inline constexpr VolumeFlow cubic_metre_per_hour = VolumeFlow::from_value(1.0 / 3600.0);

}  // namespace wiring
