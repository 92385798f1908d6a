#include "words/amount.hpp"

#include "units/said.hpp"

namespace words {
namespace {

using namespace units;

const Language us{.us_units = true};

// 1 lb is 0.45359237 kg, 1 ft is 0.3048 m, exactly: [NIST SP 811] appendix B.8.
// 20 kg = 44.09 lb; 3 m = 9.84 ft; 25 degC = 77 degF; -4 degC = 24.8 degF.
TEST(amount, stands_beside_what_people_in_the_united_states_say) {
    EXPECT_EQ(in(us, amount(20.0 * kilogram)), "20 kg (44 lb)");
    EXPECT_EQ(in(us, amount(3.0 * metre)), "3 m (9.8 ft)");
    EXPECT_EQ(in(us, amount(celsius(25.0))), "25 °C (77 °F)");
    EXPECT_EQ(in(us, amount(celsius(-4.0))), "−4 °C (25 °F)");
    EXPECT_EQ(in(us, amount(640.0 * watt_hour)), "640 Wh");
    EXPECT_EQ(in(english(), amount(20.0 * kilogram)), "20 kg");
}

// 1 km is 0.62137 mi, 1 m a thousandth of that; 29.5735 mL are a fluid ounce, 3.785411784 L a gallon.
TEST(amount, what_is_not_nothing_is_not_shown_as_nothing) {
    EXPECT_EQ(in(us, between(1.0 * metre, 1000.0 * metre)), "0.001 to 1 km (0.00062 to 0.62 mi)");
    EXPECT_EQ(in(us, amount(0.1e-3 * metre)), "0.1 mm (0.0039 in)");
    EXPECT_EQ(in(us, amount(Mass())), "0 kg (0 lb)");
    EXPECT_EQ(in(us, Amount{Dimension::volume, 59.147e-6}), "59.1 mL (2.0 fl oz)");
    EXPECT_EQ(in(us, Amount{Dimension::volume, 3.785411784}), "3.79 m³ (1000 gal)");
    EXPECT_EQ(in(us, Amount{Dimension::area, 2.0}), "2 m² (22 ft²)");
    EXPECT_EQ(in(english(), amount(Charge())), "0 Ah");
}

TEST(amount, two_ends_that_are_one_beside_are_told_once) {
    EXPECT_EQ(in(us, between(20.0 * kilogram, 20.1 * kilogram)), "20 to 20.1 kg (44 lb)");
}

// 0 degC is 32 degF and 10 degC is 50 degF; a range is never converted by half.
TEST(amount, a_range_is_converted_whole) {
    EXPECT_EQ(in(us, between(celsius(0.0), celsius(10.0))), "0 to 10 °C (32 to 50 °F)");
    EXPECT_EQ(in(us, between(9.0 * kilogram, 20.0 * kilogram)), "9 to 20 kg (20 to 44 lb)");
    EXPECT_EQ(in(english(), between(120.0 * watt_hour, 1300.0 * watt_hour)), "0.12 to 1.3 kWh");
    EXPECT_EQ(in(english(), between(120.0 * watt_hour, 120.0 * watt_hour)), "120 Wh");
}

TEST(amount, a_number_has_as_many_digits_as_are_known) {
    EXPECT_EQ(in(english(), Number{.value = 3.14159}), "3.14");
    EXPECT_EQ(in(english(), Number{.value = -0.5, .decimals = 2}), "−0.50");
    EXPECT_EQ(in(english(), Count{.number = 12, .in_words = true}), "twelve");
    EXPECT_EQ(in(english(), Count{.number = 13, .in_words = true}), "13");
}

TEST(amount, a_chance_that_rounds_to_certainty_is_not_called_that) {
    const auto chance = [](double value) {
        return in(english(), Amount{.dimension = words::Dimension::probability, .si = value});
    };
    EXPECT_EQ(chance(0.9996), "over 99.9 %");
    EXPECT_EQ(chance(0.0004), "under 0.1 %");
    EXPECT_EQ(chance(1.0), "100 %");
    EXPECT_EQ(chance(0.0), "0 %");
}

}  // namespace
}  // namespace words
