// Hold times of an overloaded inverter against values worked out by hand.
#include "inverter/overload.hpp"

namespace {

using namespace inverter;
using units::second;

constexpr double half_percent = 0.005;

void expect_near_share(double found, double expected, double share) {
    EXPECT_NEAR(found, expected, share * std::abs(expected));
}

// Worked out by hand: ln t straight in the multiple.
TEST(inverter_overload, hold_times_of_an_inverter_between_its_points) {
    const auto curve = overload_curve({{LoadMultiple(1.1), 60.0 * second},
                                       {LoadMultiple(1.5), 10.0 * second},
                                       {LoadMultiple(2.0), 1.0 * second}});
    ASSERT_TRUE(curve);
    const auto held = [&](double multiple) {
        return *hold_time(*curve, LoadMultiple(multiple)) / second;
    };
    expect_near_share(held(1.25), 30.64, half_percent);
    expect_near_share(held(1.3), 24.49, half_percent);
    expect_near_share(held(1.75), 3.162, half_percent);
}

// The worked sump pump on 3 kW: 1.432 times the rating holds 2.0 s on the lowest curve.
TEST(inverter_overload, the_worked_sump_pump_on_the_lowest_curve) {
    scenario::Inverter unit;
    unit.continuous = 3000.0 * units::watt;
    unit.surge = 6000.0 * units::watt;
    const auto curves = overload_curves(unit);
    EXPECT_FALSE(curves.duration_known);
    const auto held = hold_time(curves.curve.low, LoadMultiple(1.432));
    EXPECT_NEAR(*held / second, 2.0, 0.05);  // one decimal printed
}

}  // namespace
