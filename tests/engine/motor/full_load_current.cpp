#include "motor/full_load_current.hpp"

#include "motor/code_letter.hpp"

namespace {

using namespace motor;
using units::ampere;
using units::volt;

TEST(full_load_current, between_two_rows_it_lies_between_their_currents) {
    const auto between = full_load_current(0.6 * horsepower, 115.0 * volt);
    ASSERT_TRUE(between);
    EXPECT_NEAR(*between / ampere, 9.8 + 0.4 * (13.8 - 9.8), 1e-9);
}

TEST(full_load_current, a_third_written_with_three_digits_is_a_third) {
    const auto sixth = full_load_current(0.1666 * horsepower, 115.0 * volt);
    ASSERT_TRUE(sixth);
    EXPECT_NEAR(*sixth / ampere, 4.4, 0.01);
}

TEST(full_load_current, the_table_says_nothing_of_sizes_and_voltages_it_does_not_list) {
    EXPECT_FALSE(full_load_current(0.1 * horsepower, 115.0 * volt));
    EXPECT_FALSE(full_load_current(12.0 * horsepower, 115.0 * volt));
    EXPECT_FALSE(full_load_current(1.0 * horsepower, 100.0 * volt));
    EXPECT_FALSE(full_load_current(1.0 * horsepower, 12.0 * volt));
}

}  // namespace
