#include "answers/shown.hpp"

#include <limits>

namespace {

using namespace answers;

TEST(shown, a_value_that_is_not_finite_is_not_known_and_never_a_number) {
    for (const double odd :
         {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
          -std::numeric_limits<double>::infinity()}) {
        for (const auto& quantity :
             {shown(odd * units::volt), shown_in_seconds(odd * units::second)}) {
            EXPECT_EQ(quantity.shown, "not known");
            const auto value = quantity_or_reason(quantity, "no pack is connected");
            EXPECT_EQ(std::get<Absent>(value.held).reason, "no pack is connected");
        }
    }
}

TEST(shown, keeps_every_digit_and_rounds_the_words) {
    const auto quantity = shown(12.345678 * units::volt);
    EXPECT_EQ(quantity.value, 12.345678);
    EXPECT_EQ(quantity.unit, "V");
    EXPECT_EQ(quantity.shown, "12.3 V");
}

}  // namespace
