#include "words/amount.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <span>

#include <fmt/format.h>

namespace words {

namespace {

using enum Dimension;

constexpr double celsius_zero_in_kelvin = 273.15;  // [SI brochure]

// A unit as shown, in SI units.
struct ShownUnit {
    std::string_view name;
    double numerator = 1.0;
    double denominator = 1.0;
    double smallest = 1.0;       // number shown in it while there is a smaller unit
    bool may_be_nothing = true;  // "0 Ah", not "0 mAh"
};

using Units = std::span<const ShownUnit>;

template <std::size_t count>
using Ladder = std::array<ShownUnit, count>;

constexpr Ladder<4> powers = {{{"mW", 1, 1e3}, {"W"}, {"kW", 1e3}, {"MW", 1e6}}};
constexpr Ladder<3> apparent_powers = {{{"VA"}, {"kVA", 1e3}, {"MVA", 1e6}}};
constexpr Ladder<2> reactive_powers = {{{"var"}, {"kvar", 1e3}}};
constexpr Ladder<3> energies = {{{"Wh", 3.6e3}, {"kWh", 3.6e6}, {"MWh", 3.6e9}}};
constexpr Ladder<2> charges = {{{"mAh", 3.6, 1, 1, false}, {"Ah", 3.6e3}}};
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

struct LadderOf {
    Dimension dimension;
    Units units;  // to choose from, the smallest first
};

constexpr std::array<LadderOf, 24> ladders = {{
    {power, powers},
    {apparent_power, apparent_powers},
    {reactive_power, reactive_powers},
    {energy, energies},
    {charge, charges},
    {voltage, voltages},
    {current, currents},
    {resistance, resistances},
    {temperature_difference, differences},
    {length, lengths},
    {area, areas},
    {volume, volumes},
    {mass, masses},
    {angle, angles},
    {irradiance, irradiances},
    {irradiation, irradiations},
    {frequency, frequencies},
    {angular_velocity, angular_velocities},
    {torque, torques},
    {inertia, inertias},
    {force, forces},
    {fraction, percents},
    {probability, percents},
    {power_factor, bare},
}};
static_assert(ladders.size() + 3 == static_cast<std::size_t>(price) + 1,
              "temperatures, durations and prices are shown in their own way, all others so");

Units units_of(Dimension dimension) {
    const auto* const found = std::ranges::find(ladders, dimension, &LadderOf::dimension);
    assert(found != ladders.end());
    return found->units;
}

std::string with_mark(const Language& language, std::string text) {
    const std::size_t point = text.find('.');
    if (point != std::string::npos) text.replace(point, 1, language.decimal_mark());
    return text;
}

std::string without_zeros_behind(std::string text) {
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        text.erase(text.find_last_not_of('.') + 1);
    }
    return text;
}

std::string to_significant(double number, int significant) {
    const double shown = rounded_to(number, significant);
    if (shown == 0.0) return "0";
    const auto exponent = static_cast<int>(std::floor(std::log10(std::abs(shown))));
    return without_zeros_behind(
        fmt::format("{:.{}f}", shown, std::max(significant - 1 - exponent, 0)));
}

std::string with_true_minus(std::string text) {
    if (text.starts_with('-')) {
        const bool zero = text.find_first_of("123456789") == std::string::npos;
        text.replace(0, 1, zero ? "" : "−");
    }
    return text;
}

// A unit's name; one that is a word is said in the reader's language.
std::string name_of(const Language& language, std::string_view unit) {
    if (unit == "per hour") return in(language, said<"per hour">());
    return std::string(unit);
}

std::string with_unit(const Language& language, const std::string& number, std::string_view unit) {
    const std::string shown = with_mark(language, with_true_minus(number));
    if (unit.empty() || unit == "°") return shown + std::string(unit);
    return fmt::format("{} {}", shown, name_of(language, unit));
}

double number_in(const ShownUnit& unit, double value) {
    return value * unit.denominator / unit.numerator;
}

// The largest unit in which the rounded number is not too small.
const ShownUnit& best_unit(Units choices, double value, int significant) {
    const ShownUnit* best = &choices.front();
    for (const ShownUnit& unit : choices) {
        if (std::abs(rounded_to(number_in(unit, value), significant)) >= unit.smallest) {
            best = &unit;
        }
    }
    return *best;
}

// What is less than a thousandth of the smallest unit is nothing.
constexpr double negligible = 1e-3;

bool is_nothing(Units choices, double value) {
    return std::abs(number_in(choices.front(), value)) < negligible;
}

// Nothing is shown in the SI unit.
const ShownUnit& shown_unit(Units choices, double value, int significant) {
    if (!is_nothing(choices, value)) return best_unit(choices, value, significant);
    const auto base = std::ranges::find_if(choices, [](const ShownUnit& unit) {
        return unit.may_be_nothing && unit.numerator >= unit.denominator;
    });
    return base == choices.end() ? choices.front() : *base;
}

std::string with_best_unit(const Language& language, Units choices, double value, int significant) {
    const ShownUnit& unit = shown_unit(choices, value, significant);
    const double shown = is_nothing(choices, value) ? 0.0 : number_in(unit, value);
    return with_unit(language, to_significant(shown, significant), unit.name);
}

std::string shown_price(const Language& language, double amount) {
    const double hundredths = std::round(amount * 100.0) / 100.0;
    const bool whole = hundredths == std::round(hundredths);
    return with_unit(language, fmt::format("{:.{}f}", hundredths, whole ? 0 : 2), "");
}

constexpr Ladder<4> short_times = {{{"ms", 1, 1e3}, {"s"}, {"min", 60}, {"h", 3600}}};

// Seconds, minutes and hours in one unit; two days and more in days and hours.
std::string shown_duration(const Language& language, double seconds, int significant) {
    if (std::abs(rounded_to(seconds / 3600.0, significant)) < 48.0) {
        return with_best_unit(language, short_times, seconds, significant);
    }
    const double hours = std::round(std::abs(seconds) / 3600.0);
    const double days = std::floor(hours / 24.0);
    const double hours_left = hours - 24.0 * days;
    const std::string sign = seconds < 0.0 ? "-" : "";
    constexpr double hours_matter_below = 100.0;  // days
    if (days >= hours_matter_below) {
        return with_unit(language, sign + to_significant(std::abs(seconds) / 86400.0, significant),
                         "d");
    }
    const std::string whole_days = with_unit(language, fmt::format("{}{:.0f}", sign, days), "d");
    return hours_left == 0.0 ? whole_days : fmt::format("{} {:.0f} h", whole_days, hours_left);
}

// A chance that only rounds to certainty or to nothing is not shown as that.
std::string shown_probability(const Language& language, double value, int significant) {
    if (value > 0.0 && value < 0.001) {
        return in(language, said<"under {share}">(Amount{fraction, 0.001, 3}));
    }
    const bool almost = value < 1.0 && rounded_to(100.0 * value, significant) == 100.0;
    if (!almost) return with_best_unit(language, percents, value, significant);
    return in(language, said<"over {share}">(Amount{fraction, value < 0.999 ? 0.99 : 0.999, 3}));
}

double in_celsius(double kelvins) {
    return std::round((kelvins - celsius_zero_in_kelvin) * 10.0) / 10.0;
}

// What people in the United States say beside it, and how many of it go into one SI unit.
//   source  [NIST SP 811] appendix B.8: pound, foot, inch and gallon (231 cubic inches) by their
//           exact definitions, a mile of 5280 feet, 16 ounces a pound, 128 fluid ounces a gallon
struct Beside {
    Dimension dimension;
    std::string_view metric;  // beside this unit alone
    std::string_view unit;
    double in_one_si;
    double offset;
};
constexpr double gallon = 231 * 0.0254 * 0.0254 * 0.0254;  // m³
constexpr std::array<Beside, 12> us_units{{{temperature, "°C", "°F", 1.8, 32.0},
                                           {temperature_difference, "K", "°F", 1.8, 0.0},
                                           {mass, "g", "oz", 16.0 / 0.45359237, 0.0},
                                           {mass, "kg", "lb", 1.0 / 0.45359237, 0.0},
                                           {mass, "t", "lb", 1.0 / 0.45359237, 0.0},
                                           {length, "mm", "in", 1.0 / 0.0254, 0.0},
                                           {length, "m", "ft", 1.0 / 0.3048, 0.0},
                                           {length, "km", "mi", 1.0 / (5280 * 0.3048), 0.0},
                                           {area, "m²", "ft²", 1.0 / (0.3048 * 0.3048), 0.0},
                                           {volume, "mL", "fl oz", 128.0 / gallon, 0.0},
                                           {volume, "L", "gal", 1.0 / gallon, 0.0},
                                           {volume, "m³", "gal", 1.0 / gallon, 0.0}}};

const Beside* beside(const Language& language, Dimension dimension, std::string_view metric) {
    if (!language.us_units) return nullptr;
    const auto found = std::ranges::find_if(us_units, [&](const Beside& one) {
        return one.dimension == dimension && one.metric == metric;
    });
    return found == us_units.end() ? nullptr : &*found;
}

// Of SI, or of degrees Celsius. What is not nothing keeps two digits, however small.
std::string us_number(const Beside& other, double metric) {
    const double us = metric * other.in_one_si + other.offset;
    const double size = std::abs(us);
    if (other.offset != 0.0 || us == 0.0) return fmt::format("{:.0f}", us);
    if (size < 0.1) return to_significant(us, 2);
    return fmt::format("{:.{}f}", us, size < 1.0 ? 2 : size < 10.0 ? 1 : 0);
}

std::string in_brackets(const Language& language, const Beside& other, double metric) {
    return fmt::format(" ({})", with_unit(language, us_number(other, metric), other.unit));
}

// The American gauge nearest to a wire's metal: "12 AWG", "4/0 AWG".
//   source  [NBS 100], diameters of ASTM B258: 0.127 mm at 36, 92 times that 39 gauges on
std::string gauge_of(double metal) {
    const double across = std::sqrt(4.0 * metal / 3.14159265358979323846);
    const double gauge = 36.0 - 39.0 * std::log(across / 0.127e-3) / std::log(92.0);
    const auto whole = static_cast<int>(std::lround(gauge));
    return whole > 0 ? std::to_string(whole) : fmt::format("{}/0", 1 - whole);
}

constexpr std::string_view american_gauge = "AWG";

// A wire by its gauge, with its metal beside.
std::string shown_gauge(const Language& language, double metal) {
    const std::string gauge = fmt::format("{} {}", gauge_of(metal), american_gauge);
    if (!language.us_units) return gauge;
    return fmt::format("{} ({})", gauge, with_best_unit(language, areas, metal, 2));
}

// What people in the United States say beside the amount, in the unit that it is shown in.
std::string and_beside(const Language& language, Dimension dimension, std::string_view unit,
                       double si) {
    if (language.us_units && dimension == area && unit == "mm²" && si > 0.0)
        return fmt::format(" ({} {})", gauge_of(si), american_gauge);
    const Beside* other = beside(language, dimension, unit);
    return other == nullptr ? std::string() : in_brackets(language, *other, si);
}

std::string shown_temperature(const Language& language, double kelvins, int significant) {
    const double tenths = in_celsius(kelvins);
    return with_unit(language, to_significant(tenths, significant), "°C") +
           and_beside(language, temperature, "°C", tenths);
}

const ShownUnit* unit_of(const Amount& amount) {
    const Units choices =
        amount.dimension == duration ? Units(short_times) : units_of(amount.dimension);
    const auto found = std::ranges::find(choices, amount.unit, &ShownUnit::name);
    return found == choices.end() ? nullptr : &*found;
}

std::string in_its_unit(const Language& language, const Amount& amount, const ShownUnit& unit) {
    const double number = number_in(unit, amount.si);
    return with_unit(language,
                     amount.decimals >= 0 ? fmt::format("{:.{}f}", number, amount.decimals)
                                          : to_significant(number, amount.digits),
                     unit.name) +
           and_beside(language, amount.dimension, unit.name, amount.si);
}

std::string shown_in_ladder(const Language& language, const Amount& amount) {
    const Units choices = units_of(amount.dimension);
    const ShownUnit& unit = shown_unit(choices, amount.si, amount.digits);
    const double si = is_nothing(choices, amount.si) ? 0.0 : amount.si;
    return with_best_unit(language, choices, amount.si, amount.digits) +
           and_beside(language, amount.dimension, unit.name, si);
}

}  // namespace

double rounded_to(double number, int digits) {
    std::array<char, 40> text{};
    const auto written = std::to_chars(text.data(), text.data() + text.size(), number,
                                       std::chars_format::scientific, digits - 1);
    double value = number;
    std::from_chars(text.data(), written.ptr, value);
    return value;
}

std::string in(const Language& language, const Amount& amount) {
    assert(std::isfinite(amount.si));
    assert(amount.digits >= 1 && amount.digits <= 15);
    if (amount.dimension == area && amount.unit == american_gauge)
        return shown_gauge(language, amount.si);
    if (const ShownUnit* unit = amount.unit.empty() ? nullptr : unit_of(amount)) {
        return in_its_unit(language, amount, *unit);
    }
    switch (amount.dimension) {
        case temperature:
            return shown_temperature(language, amount.si, amount.digits);
        case duration:
            return shown_duration(language, amount.si, amount.digits);
        case price:
            return shown_price(language, amount.si);
        case probability:
            return shown_probability(language, amount.si, amount.digits);
        default:
            return shown_in_ladder(language, amount);
    }
}

namespace {

// Both numbers in one unit, and the unit; and both as they are worked on for what stands beside.
struct InOneUnit {
    double low;
    double high;
    std::string_view unit;
    double low_beside;
    double high_beside;
};

InOneUnit in_one_unit(const Between& between) {
    if (between.dimension == temperature) {
        const double low = in_celsius(between.low);
        const double high = in_celsius(between.high);
        return {low, high, "°C", low, high};
    }
    if (between.dimension == price)
        return {between.low, between.high, "", between.low, between.high};
    const Units choices =
        between.dimension == duration ? Units(short_times) : units_of(between.dimension);
    const double larger = std::max(std::abs(between.low), std::abs(between.high));
    const ShownUnit& unit = best_unit(choices, larger, between.digits);
    return {number_in(unit, between.low), number_in(unit, between.high), unit.name, between.low,
            between.high};
}

std::string from_to(const Language& language, const std::string& low, const std::string& high,
                    std::string_view unit) {
    if (low == high) return with_unit(language, high, unit);
    return in(language, said<"{low} to {high}">(with_mark(language, with_true_minus(low)),
                                                with_unit(language, high, unit)));
}

}  // namespace

std::string in(const Language& language, const Between& between) {
    const InOneUnit shown = in_one_unit(between);
    const std::string low = to_significant(shown.low, between.digits);
    const std::string high = to_significant(shown.high, between.digits);
    if (low == high) return in(language, Amount{between.dimension, between.high, between.digits});
    std::string text = from_to(language, low, high, shown.unit);
    if (const Beside* other = beside(language, between.dimension, shown.unit)) {
        text += fmt::format(" ({})", from_to(language, us_number(*other, shown.low_beside),
                                             us_number(*other, shown.high_beside), other->unit));
    }
    if (language.us_units && between.dimension == area && shown.unit == "mm²" && between.low > 0.0)
        text += fmt::format(" ({})", from_to(language, gauge_of(between.low),
                                             gauge_of(between.high), american_gauge));
    return text;
}

std::string number_in_words(const Language& language, std::int64_t number) {
    static const std::array words{said<"one">(),   said<"two">(),    said<"three">(),
                                  said<"four">(),  said<"five">(),   said<"six">(),
                                  said<"seven">(), said<"eight">(),  said<"nine">(),
                                  said<"ten">(),   said<"eleven">(), said<"twelve">()};
    if (number >= 1 && number <= static_cast<std::int64_t>(words.size())) {
        return in(language, words[static_cast<std::size_t>(number - 1)]);
    }
    return with_true_minus(std::to_string(number));
}

std::string in(const Language& language, const Count& count) {
    return count.in_words ? number_in_words(language, count.number)
                          : with_true_minus(std::to_string(count.number));
}

std::string in(const Language& language, const Number& number) {
    const std::string text = number.decimals >= 0
                                 ? fmt::format("{:.{}f}", number.value, number.decimals)
                                 : to_significant(number.value, number.digits);
    return with_mark(language, with_true_minus(text));
}

}  // namespace words
