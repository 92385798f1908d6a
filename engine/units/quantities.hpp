// The quantities of the engine: one SI unit for each dimension, so that values of one dimension
// add without conversion and a value of another dimension does not compile.
// Ampere-hours, watt-hours and degrees Celsius exist only where text is read or printed.
#pragma once

#include <compare>

#include <boost/units/cmath.hpp>
#include <boost/units/limits.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>
#include <fmt/core.h>

namespace units {

namespace si = boost::units::si;

using Power = boost::units::quantity<si::power>;                       // real power, W
using Energy = boost::units::quantity<si::energy>;                     // J
using Charge = boost::units::quantity<si::electric_charge>;            // C
using Voltage = boost::units::quantity<si::electric_potential>;        // V
using Current = boost::units::quantity<si::current>;                   // A
using Resistance = boost::units::quantity<si::resistance>;             // ohm
using Duration = boost::units::quantity<si::time>;                     // s
using Length = boost::units::quantity<si::length>;                     // m
using Area = boost::units::quantity<si::area>;                         // m2
using Volume = boost::units::quantity<si::volume>;                     // m3
using Mass = boost::units::quantity<si::mass>;                         // kg
using Angle = boost::units::quantity<si::plane_angle>;                 // rad
using Frequency = boost::units::quantity<si::frequency>;               // 1/s
using AngularVelocity = boost::units::quantity<si::angular_velocity>;  // rad/s
using Torque = boost::units::quantity<si::torque>;                     // N m/rad
using Inertia = boost::units::quantity<si::moment_of_inertia>;         // kg m2/rad2
using Force = boost::units::quantity<si::force>;                       // N
using Irradiance =
    boost::units::quantity<boost::units::divide_typeof_helper<si::power, si::area>::type>;  // W/m2
using Irradiation =
    boost::units::quantity<boost::units::divide_typeof_helper<si::energy, si::area>::type>;  // J/m2
using TemperatureDifference = boost::units::quantity<si::temperature>;                       // K
using Dimensionless = boost::units::quantity<si::dimensionless>;

inline constexpr Power watt = Power::from_value(1.0);
inline constexpr Energy joule = Energy::from_value(1.0);
inline constexpr Energy watt_hour = Energy::from_value(3600.0);
inline constexpr Charge coulomb = Charge::from_value(1.0);
inline constexpr Charge ampere_hour = Charge::from_value(3600.0);
inline constexpr Voltage volt = Voltage::from_value(1.0);
inline constexpr Current ampere = Current::from_value(1.0);
inline constexpr Resistance ohm = Resistance::from_value(1.0);
inline constexpr Duration second = Duration::from_value(1.0);
inline constexpr Duration minute = Duration::from_value(60.0);
inline constexpr Duration hour = Duration::from_value(3600.0);
inline constexpr Duration day = Duration::from_value(86400.0);
inline constexpr Length metre = Length::from_value(1.0);
inline constexpr Area square_metre = Area::from_value(1.0);
inline constexpr Mass kilogram = Mass::from_value(1.0);
inline constexpr Angle radian = Angle::from_value(1.0);
inline constexpr Angle degree = Angle::from_value(3.14159265358979323846 / 180.0);
inline constexpr Frequency hertz = Frequency::from_value(1.0);
inline constexpr Frequency per_hour = Frequency::from_value(1.0 / 3600.0);
inline constexpr TemperatureDifference kelvin = TemperatureDifference::from_value(1.0);
inline constexpr Irradiance watt_per_square_metre = Irradiance::from_value(1.0);
inline constexpr Irradiation kilowatt_hour_per_square_metre = Irradiation::from_value(3.6e6);

inline constexpr double celsius_zero_in_kelvin = 273.15;  // [SI brochure] 2.3.1, exact

// A point on the temperature scale. Points subtract to a difference; they neither add nor scale.
class Temperature {
  public:
    constexpr Temperature() = default;  // absolute zero
    constexpr explicit Temperature(TemperatureDifference above_absolute_zero)
        : above_absolute_zero_(above_absolute_zero) {}
    [[nodiscard]] constexpr TemperatureDifference above_absolute_zero() const {
        return above_absolute_zero_;
    }
    friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
        return a.above_absolute_zero_ - b.above_absolute_zero_;
    }
    friend constexpr Temperature operator+(Temperature a, TemperatureDifference b) {
        return Temperature(a.above_absolute_zero_ + b);
    }
    friend constexpr Temperature operator-(Temperature a, TemperatureDifference b) {
        return Temperature(a.above_absolute_zero_ - b);
    }
    friend constexpr bool operator==(Temperature a, Temperature b) {
        return a.above_absolute_zero_ == b.above_absolute_zero_;
    }
    friend constexpr bool operator<(Temperature a, Temperature b) {
        return a.above_absolute_zero_ < b.above_absolute_zero_;
    }
    friend constexpr bool operator>(Temperature a, Temperature b) { return b < a; }
    friend constexpr bool operator<=(Temperature a, Temperature b) { return !(b < a); }
    friend constexpr bool operator>=(Temperature a, Temperature b) { return !(a < b); }

  private:
    TemperatureDifference above_absolute_zero_{};
};

[[nodiscard]] constexpr Temperature celsius(double degrees) {
    return Temperature((degrees + celsius_zero_in_kelvin) * kelvin);
}

[[nodiscard]] constexpr double in_celsius(Temperature temperature) {
    return temperature.above_absolute_zero() / kelvin - celsius_zero_in_kelvin;
}

// A number that means one thing: a state of charge is not an efficiency, though both have no unit.
//   range     0 to 1 by convention; whoever reads one from outside checks it
template <class Meaning>
class Fraction {
  public:
    constexpr Fraction() = default;
    constexpr explicit Fraction(double value) : value_(value) {}
    [[nodiscard]] static constexpr Fraction percent(double value) {
        return Fraction(value / 100.0);
    }
    [[nodiscard]] constexpr double value() const { return value_; }
    [[nodiscard]] constexpr Fraction complement() const { return Fraction(1.0 - value_); }
    friend constexpr auto operator<=>(Fraction, Fraction) = default;

  private:
    double value_ = 0.0;
};

using StateOfCharge = Fraction<struct StateOfChargeMeaning>;
using Efficiency = Fraction<struct EfficiencyMeaning>;
using PowerFactor = Fraction<struct PowerFactorMeaning>;
using Probability = Fraction<struct ProbabilityMeaning>;
using Share = Fraction<struct ShareMeaning>;  // a part of a stated whole: usable, shaded, on-time

// A real quantity kept apart from others of the same dimension.
template <class Meaning, class Quantity>
class Distinct {
  public:
    constexpr Distinct() = default;
    constexpr explicit Distinct(Quantity amount) : amount_(amount) {}
    [[nodiscard]] constexpr Quantity amount() const { return amount_; }
    friend constexpr Distinct operator+(Distinct a, Distinct b) {
        return Distinct(a.amount_ + b.amount_);
    }
    friend constexpr Distinct operator-(Distinct a, Distinct b) {
        return Distinct(a.amount_ - b.amount_);
    }
    friend constexpr Distinct operator*(double factor, Distinct a) {
        return Distinct(factor * a.amount_);
    }
    friend constexpr double operator/(Distinct a, Distinct b) { return a.amount_ / b.amount_; }
    friend constexpr bool operator==(Distinct a, Distinct b) { return a.amount_ == b.amount_; }
    friend constexpr bool operator<(Distinct a, Distinct b) { return a.amount_ < b.amount_; }
    friend constexpr bool operator>(Distinct a, Distinct b) { return b < a; }
    friend constexpr bool operator<=(Distinct a, Distinct b) { return !(b < a); }
    friend constexpr bool operator>=(Distinct a, Distinct b) { return !(a < b); }

  private:
    Quantity amount_{};
};

using ApparentPower = Distinct<struct ApparentPowerMeaning, Power>;  // VA
using ReactivePower = Distinct<struct ReactivePowerMeaning, Power>;  // var, positive lagging

inline constexpr ApparentPower volt_ampere = ApparentPower(Power::from_value(1.0));

[[nodiscard]] constexpr Power real_power(ApparentPower apparent, PowerFactor factor) {
    return apparent.amount() * factor.value();
}

[[nodiscard]] constexpr ApparentPower apparent_power(Power real, PowerFactor factor) {
    return ApparentPower(real / factor.value());
}

// An amount of money in the currency of whoever wrote it; currencies are not converted.
class Price {
  public:
    constexpr Price() = default;
    constexpr explicit Price(double amount) : amount_(amount) {}
    [[nodiscard]] constexpr double amount() const { return amount_; }
    friend constexpr Price operator+(Price a, Price b) { return Price(a.amount_ + b.amount_); }
    friend constexpr Price operator*(double count, Price a) { return Price(count * a.amount_); }
    friend constexpr auto operator<=>(Price, Price) = default;

  private:
    double amount_ = 0.0;
};

}  // namespace units

// A ratio of two quantities prints as the number it is, with all that a double can be asked for.
// From version 10 on, the library no longer turns it into one by itself.
template <>
struct fmt::formatter<units::Dimensionless> : fmt::formatter<double> {
    template <class Context>
    auto format(units::Dimensionless ratio, Context& context) const -> decltype(context.out()) {
        return fmt::formatter<double>::format(ratio.value(), context);
    }
};
