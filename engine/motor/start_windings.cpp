#include "motor/start_windings.hpp"

#include <complex>

#include <boost/math/constants/constants.hpp>

namespace motor {

namespace {

double angular(units::Frequency frequency) {
    return boost::math::double_constants::two_pi * (frequency / units::hertz);
}

std::complex<double> ohms(const Winding& winding) {
    return {winding.resistance / units::ohm, winding.reactance / units::ohm};
}

}  // namespace

Capacitance quadrature_capacitor(const StartWindings& windings, units::Frequency frequency) {
    const auto main = ohms(windings.main);
    const auto start = ohms(windings.start);
    // Angle of the start winding: the main one's less a quarter turn, so its reactance is
    // -resistance * R_main / X_main.
    const double wanted_reactance = -start.real() * main.real() / main.imag();
    return 1.0 / (angular(frequency) * (start.imag() - wanted_reactance)) * farad;
}

Demand locked_rotor_demand(const StartWindings& windings, units::Voltage voltage,
                           units::Frequency frequency, Capacitance in_series) {
    auto start = ohms(windings.start);
    if (in_series > 0.0 * farad) {
        start -= std::complex<double>(0.0, 1.0 / (angular(frequency) * (in_series / farad)));
    }
    const double volts = voltage / units::volt;
    const std::complex<double> line = volts * (1.0 / ohms(windings.main) + 1.0 / start);
    const std::complex<double> power = volts * std::conj(line);
    return {.current = std::abs(line) * units::ampere,
            .apparent = std::abs(power) * units::volt_ampere,
            .real = power.real() * units::watt,
            .reactive = units::ReactivePower(power.imag() * units::watt)};
}

}  // namespace motor
