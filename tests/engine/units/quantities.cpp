#include "units/quantities.hpp"

#include <type_traits>

#include <fmt/format.h>

namespace {

using namespace units;

template <class Left, class Right>
concept addable = requires(Left left, Right right) {
    left + right;
};

static_assert(addable<Voltage, Voltage>);
static_assert(!addable<Voltage, Current>, "volts and amperes do not add");
static_assert(!addable<Power, ApparentPower>, "watts and volt-amperes do not add");
static_assert(!addable<Temperature, Temperature>, "two points on a scale do not add");
static_assert(!std::is_convertible_v<StateOfCharge, Efficiency>);
static_assert(!std::is_convertible_v<StateOfCharge, double>);
static_assert(!std::is_convertible_v<double, Power>);

TEST(quantities, volts_over_ohms_are_amperes) {
    const Current current = 12.0 * volt / (4.0 * ohm);
    EXPECT_DOUBLE_EQ(current / ampere, 3.0);
}

TEST(quantities, an_ampere_for_an_hour_is_an_ampere_hour_and_3600_coulomb) {
    const Charge charge = 1.0 * ampere * hour;
    EXPECT_DOUBLE_EQ(charge / ampere_hour, 1.0);
    EXPECT_DOUBLE_EQ(charge / coulomb, 3600.0);
}

TEST(quantities, a_watt_for_an_hour_is_a_watt_hour) {
    const Energy energy = 1.0 * watt * hour;
    EXPECT_DOUBLE_EQ(energy / watt_hour, 1.0);
}

TEST(quantities, celsius_is_kelvin_shifted_and_differences_do_not_shift) {
    EXPECT_DOUBLE_EQ(celsius(25.0).above_absolute_zero() / kelvin, 298.15);
    const TemperatureDifference difference = celsius(30.0) - celsius(25.0);
    EXPECT_NEAR(difference / kelvin, 5.0, 1e-12);
}

TEST(quantities, apparent_power_times_its_factor_is_real_power) {
    const Power real = real_power(1000.0 * volt_ampere, PowerFactor(0.8));
    EXPECT_DOUBLE_EQ(real / watt, 800.0);
    EXPECT_DOUBLE_EQ(apparent_power(real, PowerFactor(0.8)) / volt_ampere, 1000.0);
}

TEST(quantities, infinity_of_a_quantity_is_infinite) {
    EXPECT_TRUE(std::isinf(std::numeric_limits<Voltage>::infinity().value()));
}

TEST(quantities, a_ratio_prints_as_the_number_it_is) {
    const units::Dimensionless ratio = (3.0 * units::watt_hour) / (2.0 * units::watt_hour);
    EXPECT_EQ(fmt::format("{}", ratio), "1.5");
    EXPECT_EQ(fmt::format("{:.3f}", ratio), "1.500");
    EXPECT_EQ(fmt::format("{:>8.0e}", 1000.0 * ratio), "   2e+03");
}

}  // namespace
