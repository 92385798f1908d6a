#include "units/text.hpp"

namespace {

using namespace units;

TEST(show_quantity, rounds_to_three_digits_with_a_fitting_prefix) {
    EXPECT_EQ(show(1.9 * 1000.0 * watt_hour), "1.9 kWh");
    EXPECT_EQ(show(1234.0 * watt), "1.23 kW");
    EXPECT_EQ(show(950.0 * watt), "950 W");
    EXPECT_EQ(show(0.015 * ampere), "15 mA");
    EXPECT_EQ(show(0.00002 * ampere), "20 µA");
    EXPECT_EQ(show(0.0002 * ohm), "200 µΩ");
    EXPECT_EQ(show(0.004 * ohm), "4 mΩ");
    EXPECT_EQ(show(12.81 * volt), "12.8 V");
    EXPECT_EQ(show(100.0 * ampere_hour), "100 Ah");
    EXPECT_EQ(show(2200.0 * volt_ampere), "2.2 kVA");
    EXPECT_EQ(show(1234567.0e6 * watt), "1230000 MW");
    EXPECT_EQ(show(16e-6 * square_metre), "16 mm²");
    EXPECT_EQ(show(0.54 * square_metre), "0.54 m²");
    EXPECT_EQ(show(0.9144 * metre), "0.914 m");
    EXPECT_EQ(show(0.0111125 * metre), "11.1 mm");
    EXPECT_EQ(show(20.0 * kilogram), "20 kg");
    EXPECT_EQ(show(45.0 * degree), "45°");
    EXPECT_EQ(show(4.5 * kilowatt_hour_per_square_metre), "4.5 kWh/m²");
    EXPECT_EQ(show(0.5 * per_hour), "0.5 per hour");
    EXPECT_EQ(show(60.0 * hertz), "60 Hz");
    EXPECT_EQ(show(5.0 * kelvin), "5 K");
}

TEST(show_quantity, keeps_as_many_digits_as_asked) {
    EXPECT_EQ(show(1234.5 * watt, 2), "1.2 kW");
    EXPECT_EQ(show(1234.5 * watt, 5), "1.2345 kW");
    EXPECT_EQ(show(12.8 * volt, 1), "10 V");
    EXPECT_EQ(show(1.0 / 3.0 * volt, 15), "333.333333333333 mV");
}

TEST(show_quantity, chooses_the_prefix_after_rounding) {
    EXPECT_EQ(show(999.9996 * watt), "1 kW");
    EXPECT_EQ(show(999.4 * watt), "999 W");
    EXPECT_EQ(show(0.9999999 * watt), "1 W");
    EXPECT_EQ(show(-999.9996 * watt), "−1 kW");
}

TEST(show_quantity, never_shows_a_negative_nothing) {
    EXPECT_EQ(show(-0.0 * watt), "0 W");
    EXPECT_EQ(show(-1e-12 * watt), "0 W");
    EXPECT_EQ(show(celsius(-0.04)), "0 °C");
    EXPECT_EQ(show(-1e-9 * second), "0 s");
    EXPECT_EQ(show(Price(-0.001)), "0");
}

TEST(show_quantity, shows_a_true_minus) {
    EXPECT_EQ(show(celsius(-4.0)), "−4 °C");
    EXPECT_EQ(show(-12.5 * ampere), "−12.5 A");
    EXPECT_EQ(*read<Temperature>(show(celsius(-4.0))), celsius(-4.0));
}

TEST(show_quantity, shows_temperatures_with_one_decimal_at_most) {
    EXPECT_EQ(show(celsius(25.0)), "25 °C");
    EXPECT_EQ(show(celsius(24.96)), "25 °C");
    EXPECT_EQ(show(celsius(3.14)), "3.1 °C");
    EXPECT_EQ(show(celsius(105.0)), "105 °C");
}

TEST(show_quantity, shows_hours_below_two_days_and_days_with_hours_above) {
    EXPECT_EQ(show(26.8 * hour), "26.8 h");
    EXPECT_EQ(show(28.0 * hour), "28 h");
    EXPECT_EQ(show(47.94 * hour), "47.9 h");
    EXPECT_EQ(show(47.96 * hour), "2 d");
    EXPECT_EQ(show(76.0 * hour), "3 d 4 h");
    EXPECT_EQ(show(3.0 * day + 23.7 * hour), "4 d");
    EXPECT_EQ(show(250.3 * day), "250 d");
    EXPECT_EQ(show(-76.0 * hour), "−3 d 4 h");
    EXPECT_EQ(show(45.0 * minute), "45 min");
    EXPECT_EQ(show(5.0 * second), "5 s");
    EXPECT_EQ(show(0.35 * second), "350 ms");
    EXPECT_EQ(show(Duration()), "0 s");
}

TEST(show_quantity, shows_fractions_in_percent) {
    EXPECT_EQ(show(StateOfCharge(0.9)), "90 %");
    EXPECT_EQ(show(Efficiency(0.8768)), "87.7 %");
    EXPECT_EQ(show(Share(0.0)), "0 %");
    EXPECT_EQ(show(PowerFactor(0.8)), "0.8");
}

TEST(show_quantity, does_not_show_a_chance_as_certain_that_is_not) {
    EXPECT_EQ(show(Probability(1.0)), "100 %");
    EXPECT_EQ(show(Probability(0.9999)), "over 99.9 %");
    EXPECT_EQ(show(Probability(0.996), 2), "over 99 %");
    EXPECT_EQ(show(Probability(0.998)), "99.8 %");
    EXPECT_EQ(show(Probability(0.0001)), "under 0.1 %");
    EXPECT_EQ(show(Probability(0.0)), "0 %");
}

TEST(show_quantity, shows_prices_whole_or_in_hundredths) {
    EXPECT_EQ(show(Price(120.0)), "120");
    EXPECT_EQ(show(Price(120.5)), "120.50");
    EXPECT_EQ(show(Price(119.999)), "120");
    EXPECT_EQ(show(Price(1234567.0)), "1234567");
}

}  // namespace
