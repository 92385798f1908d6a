// Amounts with their units in a person's line.
#include "notes/amounts.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using namespace units;
using notes::take_amounts;
using notes::Words;
using testing::ElementsAre;
using testing::HasSubstr;

TEST(amounts, each_is_taken_by_its_unit_however_it_is_written) {
    Words words("12,90V under 150 watts for 2 hours at 23 degrees C, 62 percent, 1.15 kwh");
    const auto found = take_amounts(words);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->voltage->volts / volt, 12.9, 1e-12);
    EXPECT_EQ(found->voltage->decimals, 2);
    EXPECT_EQ(found->power, 150.0 * watt);
    EXPECT_EQ(found->duration, 2.0 * hour);
    EXPECT_NEAR(in_celsius(*found->temperature), 23.0, 1e-9);
    EXPECT_NEAR(found->charge->value(), 0.62, 1e-12);
    EXPECT_NEAR(*found->energy / watt_hour, 1150.0, 1e-9);
    EXPECT_THAT(words.left(), ElementsAre("under", "for", "at"));
}

// 50 degF are 10 degC; 12,900 mV show a thousandth of a volt.
TEST(amounts, fahrenheit_and_millivolts_are_known) {
    Words words("50 F 12900 mV");
    const auto found = take_amounts(words);
    ASSERT_TRUE(found);
    EXPECT_NEAR(in_celsius(*found->temperature), 10.0, 1e-9);
    EXPECT_EQ(found->voltage->decimals, 3);
}

TEST(amounts, a_whole_number_without_a_unit_is_a_count) {
    Words words("2 expansion left");
    const auto found = take_amounts(words);
    ASSERT_TRUE(found);
    EXPECT_EQ(found->count, 2);
    Words none("0 expansion");
    EXPECT_FALSE(take_amounts(none)->count);
}

TEST(amounts, a_second_one_of_a_kind_is_refused_by_name) {
    Words words("12.9 V 13.0 V");
    const auto found = take_amounts(words);
    ASSERT_FALSE(found);
    EXPECT_THAT(found.error().front().found, HasSubstr("a second voltage"));
    EXPECT_EQ(found.error().front().where, "line");
}

TEST(amounts, what_has_no_unit_of_ours_stays) {
    Words words("12.9 X main");
    const auto found = take_amounts(words);
    ASSERT_TRUE(found);
    EXPECT_FALSE(found->voltage);
    EXPECT_THAT(words.left(), ElementsAre("12.9", "X", "main"));
}

}  // namespace
