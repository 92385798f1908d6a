#include "units/written/plain_letters.hpp"

namespace {

using units::in_plain_letters;

TEST(plain_letters, write_each_thing_one_way) {
    EXPECT_EQ(in_plain_letters(" 6\u00a0mΩ\t"), "6 mohm");
    EXPECT_EQ(in_plain_letters("−4 °C"), "-4 degC");
    EXPECT_EQ(in_plain_letters("−4 ℃"), "-4 degC");
    EXPECT_EQ(in_plain_letters("5 µA"), "5 uA");
    EXPECT_EQ(in_plain_letters("2 m²"), "2 m2");
}

TEST(plain_letters, part_a_fraction_from_the_whole_number_before_it) {
    EXPECT_EQ(in_plain_letters("1½ hp"), "1 1/2 hp");
    EXPECT_EQ(in_plain_letters("½ hp"), "1/2 hp");
    EXPECT_EQ(in_plain_letters("-¾ in"), "-3/4 in");
}

TEST(plain_letters, leave_other_bytes_alone) {
    EXPECT_EQ(in_plain_letters("\xff\xc2"), "\xff\xc2");
    EXPECT_EQ(in_plain_letters("   "), "");
}

}  // namespace
