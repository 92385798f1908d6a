#include "motor/source_voltage.hpp"

#include <algorithm>
#include <cstdint>
#include <utility>

#include <boost/math/tools/roots.hpp>

namespace motor {

using units::Current;
using units::Power;
using units::Voltage;

Current current_at(const Drawn& motor, Voltage actual) {
    return actual / motor.rated_voltage * motor.current;
}

Power real_power_at(const Drawn& motor, Voltage actual) {
    return current_at(motor, actual) * actual * motor.power_factor.value();
}

Source holding(Voltage voltage) {
    return [voltage](const Drawn&) { return voltage; };
}

Source folding_back(Voltage nominal, Current limit, Current others) {
    return [=](const Drawn& motor) -> Voltage {
        const Current wanted = current_at(motor, nominal) + others;
        return wanted > limit ? limit / wanted * nominal : nominal;
    };
}

Source limited_by_direct_voltage(
    Voltage nominal, double ratio, Power others,
    std::function<std::optional<Voltage>(Power)> direct_voltage_under) {
    return [=, direct = std::move(direct_voltage_under)](const Drawn& motor) -> Voltage {
        // Above zero where the bank can give more than this output voltage asks of it.
        const auto spare = [&](double volts) {
            const Power real = real_power_at(motor, volts * units::volt) + others;
            return ratio * direct(real).value_or(0.0 * units::volt) / units::volt - volts;
        };
        const double nominal_volts = nominal / units::volt;
        if (spare(nominal_volts) >= 0.0) {
            return nominal;
        }
        if (spare(0.0) <= 0.0) {
            return 0.0 * units::volt;
        }
        std::uintmax_t most = 60;
        const auto bracket = boost::math::tools::bisect(
            spare, 0.0, nominal_volts, boost::math::tools::eps_tolerance<double>(40), most);
        return bracket.first * units::volt;
    };
}

Source softened(Source source, units::Share let_through) {
    return [source = std::move(source), let_through](const Drawn& motor) -> Voltage {
        // The source sees the motor through the device: that share of its current.
        Drawn seen = motor;
        seen.current = let_through.value() * motor.current;
        return let_through.value() * source(seen);
    };
}

}  // namespace motor
