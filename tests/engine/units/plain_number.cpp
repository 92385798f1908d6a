#include "units/written/plain_number.hpp"

namespace {

using units::plain_number;

TEST(plain_number, large_numbers_are_written_out) {
    EXPECT_EQ(plain_number(26850.0), "26850");
    EXPECT_EQ(plain_number(2063.4, 3), "2060");
    EXPECT_EQ(plain_number(100000.0, 3), "100000");
    EXPECT_EQ(plain_number(-1.23456e9), "-1235000000");
}

TEST(plain_number, small_ones_keep_their_digits_and_no_others) {
    EXPECT_EQ(plain_number(0.00042, 3), "0.00042");
    EXPECT_EQ(plain_number(0.5), "0.5");
    EXPECT_EQ(plain_number(0.0), "0");
    EXPECT_EQ(plain_number(-0.0), "0");
    EXPECT_EQ(plain_number(-1e-20), "0");
    EXPECT_EQ(plain_number(99.996), "100");
}

}  // namespace
