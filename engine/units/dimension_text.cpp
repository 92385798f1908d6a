#include "units/unit_table.hpp"

namespace units {

namespace {

using enum Dimension;

// In the order of the enumeration.
constexpr std::array kinds = {
    DimensionText{power, "power", "100 W", "W", {"W"}, "W", "W"},
    DimensionText{apparent_power, "apparent power", "1000 VA", "VA", {"VA"}, "V.A", "VA"},
    DimensionText{reactive_power, "reactive power", "500 var", "var", {"var"}, "var", "var"},
    DimensionText{energy, "energy", "1.9 kWh", "J", {"Wh", "kWh"}, "W.h", "Wh"},
    DimensionText{charge, "charge", "100 Ah", "C", {"Ah"}, "A.h", "Ah"},
    DimensionText{voltage, "voltage", "12.8 V", "V", {"V"}, "V", "V"},
    DimensionText{current, "current", "15 A", "A", {"A", "mA"}, "A", "A"},
    DimensionText{resistance, "resistance", "4 mohm", "ohm", {"ohm", "mohm"}, "Ohm", "ohm"},
    DimensionText{temperature, "temperature", "25 degC", "K", {"degC"}, "Cel", "degC"},
    DimensionText{temperature_difference, "a temperature difference", "5 K", "K", {"K"}, "K", "K"},
    DimensionText{duration, "duration", "20 h", "s", {"h", "d", "min", "s"}, "h", "h"},
    DimensionText{length, "length", "3 ft", "m", {"m", "ft"}, "m", "m"},
    DimensionText{area, "area", "16 mm2", "m2", {"m2", "mm2"}, "m2", "m2"},
    DimensionText{volume, "volume", "2 L", "m3", {"L", "m3"}, "L", "L"},
    DimensionText{mass, "mass", "20 kg", "kg", {"kg", "lb"}, "kg", "kg"},
    DimensionText{angle, "angle", "45 deg", "rad", {"deg"}, "deg", "deg"},
    DimensionText{irradiance, "irradiance", "1000 W/m2", "W/m2", {"W/m2"}, "W/m2", "W/m2"},
    DimensionText{
        irradiation, "irradiation", "4.5 kWh/m2", "J/m2", {"kWh/m2", "Wh/m2"}, "W.h/m2", "Wh/m2"},
    DimensionText{frequency, "frequency", "60 Hz", "Hz", {"Hz", "1/h", "1/min"}, "Hz", "Hz"},
    DimensionText{angular_velocity,
                  "angular velocity",
                  "1725 rpm",
                  "rad/s",
                  {"rpm", "rad/s"},
                  "rad/s",
                  "rad/s"},
    DimensionText{torque, "torque", "2 N m", "N m", {"N m"}, "N.m", "N m"},
    DimensionText{inertia, "moment of inertia", "0.01 kg m2", "kg m2", {"kg m2"}, "kg.m2", "kg m2"},
    DimensionText{force, "force", "50 N", "N", {"N", "lbf"}, "N", "N"},
    DimensionText{fraction, "a fraction", "90 % or 0.9", "", {"%"}, "%", "%"},
    DimensionText{probability, "a chance", "90 % or 0.9", "", {"%"}, "%", "%"},
    DimensionText{power_factor, "a power factor", "0.8", "", {""}, "1", ""},
    DimensionText{price, "a price", "120.50", "", {""}, "1", ""},
};

}  // namespace

const DimensionText& text_of(Dimension dimension) {
    return kinds.at(static_cast<std::size_t>(dimension));
}

Dimension written_as(Dimension wanted) {
    switch (wanted) {
        case temperature_difference:
            return temperature;
        case probability:
        case power_factor:
            return fraction;
        default:
            return wanted;
    }
}

}  // namespace units
