#include "units/written/unit_table.hpp"

#include <numbers>

namespace units {

namespace {

using enum Dimension;

constexpr double year = 365.0 * 86400.0;  // [NIST SP 811] B.8, year (365 days): 3.1536 E+07 s
// [NIST SP 811] B.8, horsepower (550 ft lbf/s): 550 * 0.3048 * 4.448 221 615 260 5 W, exact
constexpr double horsepower = 745.69987158227022;
constexpr double foot = 0.3048;                  // [NIST SP 811] B.8, exact
constexpr double inch = 0.0254;                  // [NIST SP 811] B.8, exact
constexpr double pound = 0.45359237;             // [NIST SP 811] B.8, exact
constexpr double pound_force = 4.4482216152605;  // [NIST SP 811] B.8, exact

constexpr std::array table = {
    NamedUnit{"W", power},
    NamedUnit{"mW", power, 1.0, 1e3},
    NamedUnit{"kW", power, 1e3},
    NamedUnit{"MW", power, 1e6},
    NamedUnit{"watt", power},
    NamedUnit{"watts", power},
    NamedUnit{"hp", power, horsepower},
    NamedUnit{"Wh/d", power, 1.0, 24.0},
    NamedUnit{"Wh/day", power, 1.0, 24.0},
    NamedUnit{"kWh/d", power, 1e3, 24.0},
    NamedUnit{"kWh/day", power, 1e3, 24.0},
    NamedUnit{"kWh/yr", power, 3.6e6, year},
    NamedUnit{"kWh/year", power, 3.6e6, year},
    NamedUnit{"kWh/a", power, 3.6e6, year},

    NamedUnit{"VA", apparent_power},
    NamedUnit{"kVA", apparent_power, 1e3},
    NamedUnit{"MVA", apparent_power, 1e6},
    NamedUnit{"V A", apparent_power},
    NamedUnit{"var", reactive_power},
    NamedUnit{"kvar", reactive_power, 1e3},

    NamedUnit{"J", energy},
    NamedUnit{"kJ", energy, 1e3},
    NamedUnit{"MJ", energy, 1e6},
    NamedUnit{"Ws", energy},
    NamedUnit{"W s", energy},
    NamedUnit{"mWh", energy, 3.6},
    NamedUnit{"Wh", energy, 3.6e3},
    NamedUnit{"W h", energy, 3.6e3},
    NamedUnit{"kWh", energy, 3.6e6},
    NamedUnit{"kW h", energy, 3.6e6},
    NamedUnit{"MWh", energy, 3.6e9},

    NamedUnit{"C", charge},
    NamedUnit{"As", charge},
    NamedUnit{"A s", charge},
    NamedUnit{"mAh", charge, 3.6},
    NamedUnit{"Ah", charge, 3.6e3},
    NamedUnit{"A h", charge, 3.6e3},
    NamedUnit{"kAh", charge, 3.6e6},

    NamedUnit{"V", voltage},
    NamedUnit{"mV", voltage, 1.0, 1e3},
    NamedUnit{"kV", voltage, 1e3},
    NamedUnit{"volt", voltage},
    NamedUnit{"volts", voltage},

    NamedUnit{"A", current},
    NamedUnit{"mA", current, 1.0, 1e3},
    NamedUnit{"uA", current, 1.0, 1e6},
    NamedUnit{"kA", current, 1e3},
    NamedUnit{"amp", current},
    NamedUnit{"amps", current},
    NamedUnit{"ampere", current},
    NamedUnit{"amperes", current},

    NamedUnit{"ohm", resistance},
    NamedUnit{"Ohm", resistance},
    NamedUnit{"ohms", resistance},
    NamedUnit{"mohm", resistance, 1.0, 1e3},
    NamedUnit{"mOhm", resistance, 1.0, 1e3},
    NamedUnit{"uohm", resistance, 1.0, 1e6},
    NamedUnit{"uOhm", resistance, 1.0, 1e6},
    NamedUnit{"kohm", resistance, 1e3},
    NamedUnit{"kOhm", resistance, 1e3},
    NamedUnit{"Mohm", resistance, 1e6},
    NamedUnit{"MOhm", resistance, 1e6},

    NamedUnit{"K", temperature},
    NamedUnit{"degC", temperature, 1.0, 1.0, 0.0, celsius_zero_in_kelvin},
    NamedUnit{"Cel", temperature, 1.0, 1.0, 0.0, celsius_zero_in_kelvin},
    // [NIST SP 811] B.8: t/degC = (t/degF - 32)/1.8
    NamedUnit{"degF", temperature, 5.0, 9.0, -32.0, celsius_zero_in_kelvin},

    NamedUnit{"s", duration},
    NamedUnit{"ms", duration, 1.0, 1e3},
    NamedUnit{"us", duration, 1.0, 1e6},
    NamedUnit{"sec", duration},
    NamedUnit{"second", duration},
    NamedUnit{"seconds", duration},
    NamedUnit{"min", duration, 60.0},
    NamedUnit{"minute", duration, 60.0},
    NamedUnit{"minutes", duration, 60.0},
    NamedUnit{"h", duration, 3600.0},
    NamedUnit{"hr", duration, 3600.0},
    NamedUnit{"hrs", duration, 3600.0},
    NamedUnit{"hour", duration, 3600.0},
    NamedUnit{"hours", duration, 3600.0},
    NamedUnit{"h/d", duration, 3600.0},  // a time within each day, such as sunshine
    NamedUnit{"d", duration, 86400.0},
    NamedUnit{"day", duration, 86400.0},
    NamedUnit{"days", duration, 86400.0},
    NamedUnit{"wk", duration, 604800.0},
    NamedUnit{"week", duration, 604800.0},
    NamedUnit{"weeks", duration, 604800.0},
    NamedUnit{"yr", duration, year},
    NamedUnit{"year", duration, year},
    NamedUnit{"years", duration, year},

    NamedUnit{"m", length},
    NamedUnit{"mm", length, 1.0, 1e3},
    NamedUnit{"cm", length, 1.0, 1e2},
    NamedUnit{"km", length, 1e3},
    NamedUnit{"ft", length, 3048.0, 1e4},
    NamedUnit{"foot", length, 3048.0, 1e4},
    NamedUnit{"feet", length, 3048.0, 1e4},
    NamedUnit{"in", length, 254.0, 1e4},
    NamedUnit{"inch", length, 254.0, 1e4},
    NamedUnit{"inches", length, 254.0, 1e4},
    NamedUnit{"yd", length, 9144.0, 1e4},

    NamedUnit{"m2", area},
    NamedUnit{"mm2", area, 1.0, 1e6},
    NamedUnit{"cm2", area, 1.0, 1e4},
    NamedUnit{"in2", area, inch* inch},
    NamedUnit{"ft2", area, foot* foot},

    NamedUnit{"m3", volume},
    NamedUnit{"L", volume, 1.0, 1e3},
    NamedUnit{"l", volume, 1.0, 1e3},
    NamedUnit{"mL", volume, 1.0, 1e6},
    NamedUnit{"ml", volume, 1.0, 1e6},
    NamedUnit{"cm3", volume, 1.0, 1e6},
    NamedUnit{"ft3", volume, foot* foot* foot},
    NamedUnit{"gal", volume, 3.785411784e-3},  // [NIST SP 811] B.8, gallon (U.S.), exact

    NamedUnit{"kg", mass},
    NamedUnit{"g", mass, 1.0, 1e3},
    NamedUnit{"t", mass, 1e3},
    NamedUnit{"lb", mass, 45359237.0, 1e8},
    NamedUnit{"lbs", mass, 45359237.0, 1e8},
    NamedUnit{"oz", mass, pound / 16.0},

    NamedUnit{"rad", angle},
    NamedUnit{"deg", angle, std::numbers::pi / 180.0},
    NamedUnit{"degree", angle, std::numbers::pi / 180.0},
    NamedUnit{"degrees", angle, std::numbers::pi / 180.0},

    NamedUnit{"W/m2", irradiance},
    NamedUnit{"kW/m2", irradiance, 1e3},

    NamedUnit{"J/m2", irradiation},
    NamedUnit{"kJ/m2", irradiation, 1e3},
    NamedUnit{"MJ/m2", irradiation, 1e6},
    NamedUnit{"Wh/m2", irradiation, 3.6e3},
    NamedUnit{"kWh/m2", irradiation, 3.6e6},
    NamedUnit{"J/m2/d", irradiation},
    NamedUnit{"MJ/m2/d", irradiation, 1e6},
    NamedUnit{"Wh/m2/d", irradiation, 3.6e3},
    NamedUnit{"kWh/m2/d", irradiation, 3.6e6},
    NamedUnit{"kWh/m2/day", irradiation, 3.6e6},
    NamedUnit{"MJ/m2/day", irradiation, 1e6},
    // Peak sun hours: so long a sun of 1000 W/m2 would give as much.
    NamedUnit{"psh", irradiation, 3.6e6},
    NamedUnit{"psh/d", irradiation, 3.6e6},

    NamedUnit{"Hz", frequency},
    NamedUnit{"kHz", frequency, 1e3},
    NamedUnit{"1/s", frequency},
    NamedUnit{"1/min", frequency, 1.0, 60.0},
    NamedUnit{"1/h", frequency, 1.0, 3600.0},
    NamedUnit{"1/d", frequency, 1.0, 86400.0},

    NamedUnit{"rad/s", angular_velocity},
    NamedUnit{"rpm", angular_velocity, std::numbers::pi, 30.0},

    NamedUnit{"N m", torque},
    NamedUnit{"Nm", torque},
    NamedUnit{"mN m", torque, 1.0, 1e3},
    NamedUnit{"lbf ft", torque, pound_force* foot},
    NamedUnit{"ft lbf", torque, pound_force* foot},
    NamedUnit{"lb ft", torque, pound_force* foot},
    NamedUnit{"ft lb", torque, pound_force* foot},
    NamedUnit{"lbf in", torque, pound_force* inch},
    NamedUnit{"in lbf", torque, pound_force* inch},
    NamedUnit{"in lb", torque, pound_force* inch},

    NamedUnit{"kg m2", inertia},
    NamedUnit{"kgm2", inertia},
    NamedUnit{"g m2", inertia, 1.0, 1e3},
    NamedUnit{"kg cm2", inertia, 1.0, 1e4},
    NamedUnit{"lb ft2", inertia, pound* foot* foot},

    NamedUnit{"N", force},
    NamedUnit{"kN", force, 1e3},
    NamedUnit{"lbf", force, pound_force},

    NamedUnit{"%", fraction, 1.0, 100.0},
    NamedUnit{"", fraction},
    NamedUnit{"", price},
};

}  // namespace

std::span<const NamedUnit> unit_table() {
    return table;
}

const NamedUnit* find_unit(Dimension wanted, std::string_view spelling) {
    const NamedUnit* of_another_kind = nullptr;
    for (const NamedUnit& unit : table) {
        if (unit.spelling != spelling) {
            continue;
        }
        if (unit.dimension == written_as(wanted)) {
            return &unit;
        }
        of_another_kind = &unit;
    }
    return of_another_kind;
}

double to_si(const NamedUnit& unit, double number, Dimension wanted) {
    if (wanted == temperature_difference) {
        return number * unit.numerator / unit.denominator;
    }
    return (number + unit.offset) * unit.numerator / unit.denominator + unit.shift;
}

double number_of(const NamedUnit& unit, double value, Dimension wanted) {
    if (wanted == temperature_difference) {
        return value * unit.denominator / unit.numerator;
    }
    return (value - unit.shift) * unit.denominator / unit.numerator - unit.offset;
}

}  // namespace units
