// A real, or as many as go abreast, with its unit. Boost's quantity does the same for one double;
// here a comparison may be a mask, and every operation is inlined whatever the compiler thinks of
// it, since lanes must stay in registers. The algebra of units is Boost's.
#pragma once

#include <boost/units/get_dimension.hpp>

#include "battery/step/real.hpp"
#include "units/quantities.hpp"

namespace battery::step {

template <class Unit, class Real>
struct Dimensioned {
    Real value;
};

namespace dimensioned_detail {

template <class Unit>
inline constexpr bool without_dimension =
    std::is_same_v<typename boost::units::get_dimension<Unit>::type,
                   boost::units::dimensionless_type>;

template <class Unit, class Real>
[[gnu::always_inline]] constexpr auto with(const Real& value) {
    if constexpr (without_dimension<Unit>)
        return value;
    else
        return Dimensioned<Unit, Real>{value};
}
template <class A, class B>
using Times = typename boost::units::multiply_typeof_helper<A, B>::type;
template <class A, class B>
using Over = typename boost::units::divide_typeof_helper<A, B>::type;
using None = boost::units::si::dimensionless;

template <class T>
inline constexpr bool dimensioned = false;
template <class Unit, class Real>
inline constexpr bool dimensioned<Dimensioned<Unit, Real>> = true;

}  // namespace dimensioned_detail

// A plain number, or lanes of them.
template <class T>
concept Number = !dimensioned_detail::dimensioned<T>;

template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator+(const Dimensioned<U, A>& a,
                                                           const Dimensioned<U, B>& b) {
    return dimensioned_detail::with<U>(a.value + b.value);
}
template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator-(const Dimensioned<U, A>& a,
                                                           const Dimensioned<U, B>& b) {
    return dimensioned_detail::with<U>(a.value - b.value);
}
template <class U, class A>
[[nodiscard, gnu::always_inline]] constexpr auto operator-(const Dimensioned<U, A>& a) {
    return dimensioned_detail::with<U>(-a.value);
}
template <class U, class V, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator*(const Dimensioned<U, A>& a,
                                                           const Dimensioned<V, B>& b) {
    return dimensioned_detail::with<dimensioned_detail::Times<U, V>>(a.value * b.value);
}
template <class U, class A, Number B>
[[nodiscard, gnu::always_inline]] constexpr auto operator*(const Dimensioned<U, A>& a, const B& b) {
    return dimensioned_detail::with<U>(a.value * b);
}
template <Number A, class U, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator*(const A& a, const Dimensioned<U, B>& b) {
    return dimensioned_detail::with<U>(a * b.value);
}
template <class U, class V, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator/(const Dimensioned<U, A>& a,
                                                           const Dimensioned<V, B>& b) {
    return dimensioned_detail::with<dimensioned_detail::Over<U, V>>(a.value / b.value);
}
template <class U, class A, Number B>
[[nodiscard, gnu::always_inline]] constexpr auto operator/(const Dimensioned<U, A>& a, const B& b) {
    return dimensioned_detail::with<U>(a.value / b);
}

template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator<(const Dimensioned<U, A>& a,
                                                           const Dimensioned<U, B>& b) {
    return a.value < b.value;
}
template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator<=(const Dimensioned<U, A>& a,
                                                            const Dimensioned<U, B>& b) {
    return a.value <= b.value;
}
template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator>(const Dimensioned<U, A>& a,
                                                           const Dimensioned<U, B>& b) {
    return a.value > b.value;
}
template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] constexpr auto operator>=(const Dimensioned<U, A>& a,
                                                            const Dimensioned<U, B>& b) {
    return a.value >= b.value;
}

template <class Mask, class U, class A, class B>
[[nodiscard, gnu::always_inline]] inline auto select(const Mask& mask, const Dimensioned<U, A>& a,
                                                     const Dimensioned<U, B>& b) {
    return dimensioned_detail::with<U>(select(mask, a.value, b.value));
}
// Nothing of anything.
template <class U, class A>
[[nodiscard, gnu::always_inline]] constexpr Dimensioned<U, A> nothing_of(const Dimensioned<U, A>&) {
    return {A{}};
}
template <class U, class A>
[[nodiscard, gnu::always_inline]] inline auto magnitude(const Dimensioned<U, A>& a) {
    if constexpr (one<A>)
        return Dimensioned<U, A>{std::abs(a.value)};
    else
        return Dimensioned<U, A>{a.value < 0.0 ? -a.value : a.value};
}
template <class U, class A, class B>
[[nodiscard, gnu::always_inline]] inline auto lower(const Dimensioned<U, A>& a,
                                                    const Dimensioned<U, B>& b) {
    return select(a < b, a, b);
}
template <class U, class A>
[[nodiscard, gnu::always_inline]] inline auto root_of(const Dimensioned<U, A>& a) {
    return dimensioned_detail::with<
        typename boost::units::root_typeof_helper<U, boost::units::static_rational<2>>::type>(
        root_of(a.value));
}

template <class Real>
using Volts = Dimensioned<units::si::electric_potential, Real>;
template <class Real>
using SquareVolts = Dimensioned<
    dimensioned_detail::Times<units::si::electric_potential, units::si::electric_potential>, Real>;
template <class Real>
using Amperes = Dimensioned<units::si::current, Real>;
template <class Real>
using Ohms = Dimensioned<units::si::resistance, Real>;
template <class Real>
using Watts = Dimensioned<units::si::power, Real>;
template <class Real>
using Joules = Dimensioned<units::si::energy, Real>;
template <class Real>
using Coulombs = Dimensioned<units::si::electric_charge, Real>;
template <class Real>
using Seconds = Dimensioned<units::si::time, Real>;
template <class Real>
using PerSecond = Dimensioned<units::si::frequency, Real>;
template <class Real>
using PerCoulomb =
    Dimensioned<dimensioned_detail::Over<dimensioned_detail::None, units::si::electric_charge>,
                Real>;
template <class Real>
using PerAmpere =
    Dimensioned<dimensioned_detail::Over<dimensioned_detail::None, units::si::current>, Real>;

// A value of this unit, of any real.
template <class T, template <class> class Unit>
concept In = requires(T value) {
    requires std::is_same_v<T, Unit<decltype(value.value)>>;
};

}  // namespace battery::step
