#include "motor/waveform.hpp"

namespace {

using namespace motor;

TEST(waveform, a_square_wave_keeps_the_fundamental_of_its_fourier_series) {
    // 4/pi over 1, both peak, is 0.9003 root mean square.
    EXPECT_NEAR(fundamental_of_quasi_square(PulseWidth(1.0)).value(), 0.9003, 5e-5);
    EXPECT_NEAR(distortion_of_quasi_square(PulseWidth(1.0)).value(), 0.4834, 5e-5);
}

TEST(waveform, torque_is_never_more_than_on_a_sine_wave) {
    for (double width = 0.05; width <= 1.0; width += 0.05) {
        EXPECT_LT(torque_on_quasi_square(PulseWidth(width)).value(), 1.0);
    }
}

}  // namespace
