#include "units/number.hpp"

namespace {

using namespace units;

TEST(number, stops_where_the_unit_begins) {
    const Result<LeadingNumber> number = read_leading_number("1.9 kWh");
    ASSERT_TRUE(number.has_value());
    EXPECT_EQ(number->value, 1.9);
    EXPECT_EQ(number->rest, "kWh");
}

TEST(number, takes_a_letter_e_only_as_an_exponent) {
    EXPECT_EQ(read_leading_number("2e3")->value, 2000.0);
    EXPECT_EQ(read_leading_number("2 e3")->value, 2.0);
    EXPECT_EQ(read_leading_number("2eV")->rest, "eV");
}

TEST(number, leaves_a_comma_that_ends_the_number) {
    EXPECT_EQ(read_leading_number("12, V")->rest, ", V");
}

TEST(number, reads_whole_numbers_with_a_ratio) {
    EXPECT_EQ(read_leading_number("6 7/16 in")->value, 6.4375);
    EXPECT_EQ(read_leading_number("-1 1/2 in")->value, -1.5);
    EXPECT_EQ(read_leading_number("-1/2 in")->value, -0.5);
    EXPECT_EQ(read_leading_number("2 1/h")->rest, "1/h");
    EXPECT_EQ(read_leading_number("1/h")->rest, "/h");
}

// IEEE 754: 0.1 + 0.2 is not 0.3, and 9007199254740993 lies halfway and goes to the even neighbour.
TEST(number, rounds_to_the_nearest_double) {
    EXPECT_EQ(read_leading_number("0.3")->value, 0.3);
    EXPECT_EQ(read_leading_number("9007199254740993")->value, 9007199254740992.0);
    EXPECT_EQ(read_leading_number("5e-324")->value, 5e-324);
    EXPECT_EQ(read_leading_number("1.7976931348623157e308")->value, 1.7976931348623157e308);
}

TEST(number, rounds_to_digits) {
    EXPECT_EQ(rounded_to(1234.5, 2), 1200.0);
    EXPECT_EQ(rounded_to(-0.0019994, 3), -0.002);
    EXPECT_EQ(rounded_to(0.0, 3), 0.0);
}

}  // namespace
