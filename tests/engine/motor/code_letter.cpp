#include "motor/code_letter.hpp"

namespace {

using namespace motor;
using testing::HasSubstr;

TEST(code_letter, a_small_letter_means_the_same_as_a_capital_one) {
    EXPECT_EQ(*locked_rotor_power("k", horsepower), *locked_rotor_power("K", horsepower));
}

TEST(code_letter, the_end_of_one_band_is_the_beginning_of_the_next) {
    EXPECT_EQ(locked_rotor_power("H", horsepower)->high(),
              locked_rotor_power("J", horsepower)->low());
    EXPECT_EQ(locked_rotor_power("N", horsepower)->high(),
              locked_rotor_power("P", horsepower)->low());
    EXPECT_EQ(locked_rotor_power("P", horsepower)->high(),
              locked_rotor_power("R", horsepower)->low());
}

TEST(code_letter, letters_that_motors_do_not_bear_are_refused_in_words) {
    for (const char* letter : {"I", "O", "Q", "o", "W", "Z"}) {
        const auto refused = locked_rotor_power(letter, horsepower);
        ASSERT_FALSE(refused) << letter;
        EXPECT_THAT(refused.error().front().found, HasSubstr("not used on motors"));
        EXPECT_THAT(refused.error().front().remedy, HasSubstr("plate"));
    }
}

TEST(code_letter, v_has_no_upper_end_and_asks_for_the_plate_current) {
    const auto refused = locked_rotor_power("V", horsepower);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().front().found, HasSubstr("no upper end"));
    EXPECT_THAT(refused.error().front().remedy, HasSubstr("locked_rotor_current"));
}

TEST(code_letter, what_is_not_one_letter_is_refused) {
    for (const char* text : {"", "KK", "5", " ", "\xc3\xa4"}) {
        EXPECT_FALSE(locked_rotor_power(text, horsepower)) << text;
    }
}

}  // namespace
