#include "units/written/unit_table.hpp"

namespace units {

namespace {

using enum Dimension;

// In the order of the enumeration.
constexpr std::array kinds = {
    DimensionText{power, "100 W", "W", {"W"}, "W", "W"},
    DimensionText{apparent_power, "1000 VA", "VA", {"VA"}, "V.A", "VA"},
    DimensionText{reactive_power, "500 var", "var", {"var"}, "var", "var"},
    DimensionText{energy, "1.9 kWh", "J", {"Wh", "kWh"}, "W.h", "Wh"},
    DimensionText{charge, "100 Ah", "C", {"Ah"}, "A.h", "Ah"},
    DimensionText{voltage, "12.8 V", "V", {"V"}, "V", "V"},
    DimensionText{current, "15 A", "A", {"A", "mA"}, "A", "A"},
    DimensionText{resistance, "4 mohm", "ohm", {"ohm", "mohm"}, "Ohm", "ohm"},
    DimensionText{temperature, "25 degC", "K", {"degC"}, "Cel", "degC"},
    DimensionText{temperature_difference, "5 K", "K", {"K"}, "K", "K"},
    DimensionText{duration, "20 h", "s", {"h", "d", "min", "s"}, "h", "h"},
    DimensionText{length, "3 ft", "m", {"m", "ft"}, "m", "m"},
    DimensionText{area, "16 mm2", "m2", {"m2", "mm2"}, "m2", "m2"},
    DimensionText{volume, "2 L", "m3", {"L", "m3"}, "L", "L"},
    DimensionText{mass, "20 kg", "kg", {"kg", "lb"}, "kg", "kg"},
    DimensionText{angle, "45 deg", "rad", {"deg"}, "deg", "deg"},
    DimensionText{irradiance, "1000 W/m2", "W/m2", {"W/m2"}, "W/m2", "W/m2"},
    DimensionText{irradiation, "4.5 kWh/m2", "J/m2", {"kWh/m2", "Wh/m2"}, "W.h/m2", "Wh/m2"},
    DimensionText{frequency, "60 Hz", "Hz", {"Hz", "1/h", "1/min"}, "Hz", "Hz"},
    DimensionText{angular_velocity, "1725 rpm", "rad/s", {"rpm", "rad/s"}, "rad/s", "rad/s"},
    DimensionText{torque, "2 N m", "N m", {"N m"}, "N.m", "N m"},
    DimensionText{inertia, "0.01 kg m2", "kg m2", {"kg m2"}, "kg.m2", "kg m2"},
    DimensionText{force, "50 N", "N", {"N", "lbf"}, "N", "N"},
    DimensionText{fraction, "90 % or 0.9", "", {"%"}, "%", "%"},
    DimensionText{probability, "90 % or 0.9", "", {"%"}, "%", "%"},
    DimensionText{power_factor, "0.8", "", {""}, "1", ""},
    DimensionText{price, "120.50", "", {""}, "1", ""},
};

}  // namespace

const words::Said& kind_in_words(Dimension dimension) {
    using words::said;
    // In the order of the enumeration.
    static const std::array<words::Said, kinds.size()> said_of_kinds{
        said<"power">(),          said<"apparent power">(),
        said<"reactive power">(), said<"energy">(),
        said<"charge">(),         said<"voltage">(),
        said<"current">(),        said<"resistance">(),
        said<"temperature">(),    said<"a temperature difference">(),
        said<"duration">(),       said<"length">(),
        said<"area">(),           said<"volume">(),
        said<"mass">(),           said<"angle">(),
        said<"irradiance">(),     said<"irradiation">(),
        said<"frequency">(),      said<"angular velocity">(),
        said<"torque">(),         said<"moment of inertia">(),
        said<"force">(),          said<"a fraction">(),
        said<"a chance">(),       said<"a power factor">(),
        said<"a price">()};
    return said_of_kinds.at(static_cast<std::size_t>(dimension));
}

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
