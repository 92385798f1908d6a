#include "motor/waveform.hpp"

#include <cmath>

#include <boost/math/constants/constants.hpp>

namespace motor {

units::Share fundamental_of_quasi_square(PulseWidth width) {
    constexpr double pi = boost::math::double_constants::pi;
    const double d = width.value();
    return units::Share(2.0 * std::sqrt(2.0) / pi * std::sin(pi * d / 2.0) / std::sqrt(d));
}

Multiple distortion_of_quasi_square(PulseWidth width) {
    const double f = fundamental_of_quasi_square(width).value();
    return Multiple(std::sqrt(1.0 - f * f) / f);
}

units::Share torque_on_quasi_square(PulseWidth width) {
    const double f = fundamental_of_quasi_square(width).value();
    return units::Share(f * f);
}

}  // namespace motor
