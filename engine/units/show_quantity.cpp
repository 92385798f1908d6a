#include <cassert>
#include <span>

#include "units/number.hpp"
#include "units/text.hpp"

namespace units {

namespace {

using enum Dimension;

// A unit as shown, in SI units.
struct ShownUnit {
    std::string_view name;
    double numerator = 1.0;
    double denominator = 1.0;
    double smallest = 1.0;  // number shown in it while there is a smaller unit
};

using Units = std::span<const ShownUnit>;

template <std::size_t count>
using Ladder = std::array<ShownUnit, count>;

constexpr Ladder<4> powers = {{{"mW", 1, 1e3}, {"W"}, {"kW", 1e3}, {"MW", 1e6}}};
constexpr Ladder<3> apparent_powers = {{{"VA"}, {"kVA", 1e3}, {"MVA", 1e6}}};
constexpr Ladder<2> reactive_powers = {{{"var"}, {"kvar", 1e3}}};
constexpr Ladder<3> energies = {{{"Wh", 3.6e3}, {"kWh", 3.6e6}, {"MWh", 3.6e9}}};
constexpr Ladder<2> charges = {{{"mAh", 3.6}, {"Ah", 3.6e3}}};
constexpr Ladder<3> voltages = {{{"mV", 1, 1e3}, {"V"}, {"kV", 1e3}}};
constexpr Ladder<4> currents = {{{"µA", 1, 1e6}, {"mA", 1, 1e3}, {"A"}, {"kA", 1e3}}};
constexpr Ladder<5> resistances = {
    {{"µΩ", 1, 1e6}, {"mΩ", 1, 1e3}, {"Ω"}, {"kΩ", 1e3}, {"MΩ", 1e6}}};
constexpr Ladder<1> differences = {{{"K"}}};
constexpr Ladder<3> lengths = {{{"mm", 1, 1e3}, {"m", 1, 1, 0.1}, {"km", 1e3}}};
constexpr Ladder<2> areas = {{{"mm²", 1, 1e6}, {"m²", 1, 1, 0.01}}};
constexpr Ladder<3> volumes = {{{"mL", 1, 1e6}, {"L", 1, 1e3}, {"m³"}}};
constexpr Ladder<3> masses = {{{"g", 1, 1e3}, {"kg"}, {"t", 1e3}}};
constexpr Ladder<1> angles = {{{"°", 3.14159265358979323846, 180}}};
constexpr Ladder<2> irradiances = {{{"W/m²"}, {"kW/m²", 1e3}}};
constexpr Ladder<2> irradiations = {{{"Wh/m²", 3.6e3}, {"kWh/m²", 3.6e6}}};
constexpr Ladder<3> frequencies = {{{"per hour", 1, 3600}, {"Hz", 1, 1, 0.1}, {"kHz", 1e3}}};
constexpr Ladder<1> angular_velocities = {{{"rpm", 3.14159265358979323846, 30}}};
constexpr Ladder<2> torques = {{{"mN m", 1, 1e3}, {"N m"}}};
constexpr Ladder<2> inertias = {{{"g m²", 1, 1e3}, {"kg m²"}}};
constexpr Ladder<2> forces = {{{"N"}, {"kN", 1e3}}};
constexpr Ladder<1> percents = {{{"%", 1, 100}}};
constexpr Ladder<1> bare = {{{""}}};

// Units to choose from, the smallest first.
Units units_of(Dimension dimension) {
    switch (dimension) {
        case power:
            return powers;
        case apparent_power:
            return apparent_powers;
        case reactive_power:
            return reactive_powers;
        case energy:
            return energies;
        case charge:
            return charges;
        case voltage:
            return voltages;
        case current:
            return currents;
        case resistance:
            return resistances;
        case temperature_difference:
            return differences;
        case length:
            return lengths;
        case area:
            return areas;
        case volume:
            return volumes;
        case mass:
            return masses;
        case angle:
            return angles;
        case irradiance:
            return irradiances;
        case irradiation:
            return irradiations;
        case frequency:
            return frequencies;
        case angular_velocity:
            return angular_velocities;
        case torque:
            return torques;
        case inertia:
            return inertias;
        case force:
            return forces;
        case fraction:
        case probability:
            return percents;
        case power_factor:
            return bare;
        case temperature:
        case duration:
        case price:
            break;
    }
    assert(false && "temperatures, durations and prices are shown in their own way");
    return bare;
}

std::string to_significant(double number, int significant) {
    const double shown = rounded_to(number, significant);
    if (shown == 0.0) {
        return "0";
    }
    const auto exponent = static_cast<int>(std::floor(std::log10(std::abs(shown))));
    std::string text = fmt::format("{:.{}f}", shown, std::max(significant - 1 - exponent, 0));
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        text.erase(text.find_last_not_of('.') + 1);
    }
    return text;
}

std::string with_true_minus(std::string text) {
    if (text.starts_with('-')) {
        const bool zero = text.find_first_of("123456789") == std::string::npos;
        text.replace(0, 1, zero ? "" : "−");
    }
    return text;
}

std::string with_unit(const std::string& number, std::string_view unit) {
    if (unit.empty() || unit == "°") {
        return with_true_minus(number) + std::string(unit);
    }
    return fmt::format("{} {}", with_true_minus(number), unit);
}

double number_in(const ShownUnit& unit, double value) {
    return value * unit.denominator / unit.numerator;
}

// The largest unit in which the rounded number is not too small; what is less than a thousandth of
// the smallest unit is nothing.
std::string with_best_unit(Units choices, double value, int significant) {
    const ShownUnit* best = &choices.front();
    for (const ShownUnit& unit : choices) {
        if (std::abs(rounded_to(number_in(unit, value), significant)) >= unit.smallest) {
            best = &unit;
        }
    }
    constexpr double negligible = 1e-3;
    if (std::abs(number_in(choices.front(), value)) < negligible) {
        const auto base = std::ranges::find_if(
            choices, [](const ShownUnit& unit) { return unit.numerator >= unit.denominator; });
        return with_unit("0", (base == choices.end() ? choices.front() : *base).name);
    }
    return with_unit(to_significant(number_in(*best, value), significant), best->name);
}

std::string show_temperature(double kelvins, int significant) {
    const double degrees = kelvins - celsius_zero_in_kelvin;
    const double tenths = std::round(degrees * 10.0) / 10.0;
    return with_unit(to_significant(tenths, significant), "°C");
}

std::string show_price(double amount) {
    const double hundredths = std::round(amount * 100.0) / 100.0;
    const bool whole = hundredths == std::round(hundredths);
    return with_unit(fmt::format("{:.{}f}", hundredths, whole ? 0 : 2), "");
}

// Seconds, minutes and hours in one unit; two days and more in days and hours.
std::string show_duration(double seconds, int significant) {
    constexpr Ladder<4> short_times = {{{"ms", 1, 1e3}, {"s"}, {"min", 60}, {"h", 3600}}};
    if (std::abs(rounded_to(seconds / 3600.0, significant)) < 48.0) {
        return with_best_unit(short_times, seconds, significant);
    }
    const double hours = std::round(std::abs(seconds) / 3600.0);
    const double days = std::floor(hours / 24.0);
    const double hours_left = hours - 24.0 * days;
    const std::string sign = seconds < 0.0 ? "-" : "";
    constexpr double hours_matter_below = 100.0;  // days
    if (days >= hours_matter_below) {
        return with_unit(sign + to_significant(std::abs(seconds) / 86400.0, significant), "d");
    }
    const std::string whole_days = with_unit(fmt::format("{}{:.0f}", sign, days), "d");
    return hours_left == 0.0 ? whole_days : fmt::format("{} {:.0f} h", whole_days, hours_left);
}

// A chance that only rounds to certainty or to nothing is not shown as that.
std::string show_probability(double value, int significant) {
    if (value > 0.0 && value < 0.001) {
        return "under 0.1 %";
    }
    const std::string text = with_best_unit(percents, value, significant);
    if (text == "100 %" && value < 1.0) {
        return value < 0.999 ? "over 99 %" : "over 99.9 %";
    }
    return text;
}

}  // namespace

std::string show_si(Dimension dimension, double value, int significant) {
    assert(std::isfinite(value));
    assert(significant >= 1 && significant <= 15);
    switch (dimension) {
        case temperature:
            return show_temperature(value, significant);
        case duration:
            return show_duration(value, significant);
        case price:
            return show_price(value);
        case probability:
            return show_probability(value, significant);
        default:
            return with_best_unit(units_of(dimension), value, significant);
    }
}

}  // namespace units
