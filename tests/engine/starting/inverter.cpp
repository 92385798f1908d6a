#include "starting/inverter.hpp"

#include <cmath>

#include "engine/starting/made_start.hpp"

namespace {

using namespace made_start;

TEST(inverter, a_hot_case_carries_less) {
    auto hot = three_kilowatts();
    hot.case_temperature = units::celsius(60.0);
    const auto side = side_of(hot);
    EXPECT_NEAR(side.continuous / watt, 2400.0, 1e-6);
    const std::vector<StartingMotor> motors{pump(side, 20.0)};
    const auto heater = background_of({.real = exactly(1500.0 * watt)});
    const auto warm = judge_start(motors, heater, side_of(three_kilowatts()), packs(4));
    const auto found = judge_start(motors, heater, side, packs(4));
    EXPECT_GT(found.of(Constraint::after_start)->used.likely(),
              warm.of(Constraint::after_start)->used.likely());
}

// A quasi-square wave of pulses as wide as a share d of half a period has a fundamental of
// (4/pi) sin(pi d/2)/sqrt(2) against a root mean square of sqrt(d): at 2/3 and at 1/2 of it 0.955
// and 0.900. Fourier series by hand; torque goes with the square, 0.91 and 0.81.
TEST(inverter, only_part_of_a_quasi_square_wave_turns_a_motor) {
    auto stepped = three_kilowatts();
    stepped.waveform = scenario::Waveform::quasi_square;
    const auto side = side_of(stepped);
    EXPECT_NEAR(side.fundamental.low.value(), 0.955, 0.0005);
    EXPECT_NEAR(side.fundamental.high.value(), 0.900, 0.0005);
    EXPECT_EQ(side_of(three_kilowatts()).fundamental.high, units::Share(1.0));
}

// Silent on surge: twice its rating at best, none at worst. Silent on cut-off: 10.0 to 11.0 V of
// [Inverter manuals], the highest cutting off the soonest.
TEST(inverter, what_its_sheet_does_not_say_is_a_range) {
    const auto side = side_of({.continuous = 2000.0 * watt});
    EXPECT_NEAR(side.surge.low / units::volt_ampere, 4000.0, 1e-9);
    EXPECT_NEAR(side.surge.high / units::volt_ampere, 2000.0, 1e-9);
    EXPECT_NEAR(side.cutoff.low / volt, 10.0, 0.25);
    EXPECT_NEAR(side.cutoff.high / volt, 11.0, 0.25);
    EXPECT_EQ(side.cutoff_delay.low, 1.0 * second);
    EXPECT_EQ(side.cutoff_delay.high, 0.0 * second);
    EXPECT_FALSE(side.surge_stated || side.cutoff_stated || side.delay_stated);
    EXPECT_GE(side.assumptions.size(), 4U);
}

}  // namespace
