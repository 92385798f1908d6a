#include "faces/page.hpp"

namespace {

using namespace faces;
using testing::ElementsAre;

TEST(page, width_counts_characters_not_bytes) {
    EXPECT_EQ(width_of("5 °C"), 4);
    EXPECT_EQ(padded("°", 3), "°  ");
    EXPECT_EQ(right_aligned("°", 3), "  °");
    EXPECT_EQ(padded("long", 2), "long");
}

TEST(page, lines_break_at_spaces_and_hang_below_their_first_word) {
    EXPECT_THAT(wrapped("one two three four", 12, "- "), ElementsAre("- one two", "  three four"));
}

TEST(page, a_word_longer_than_the_page_is_broken) {
    EXPECT_THAT(wrapped("abcdefghijkl", 10, "- "), ElementsAre("- abcdefgh", "  ijkl"));
}

TEST(page, an_empty_text_is_one_line) {
    EXPECT_THAT(wrapped("", 20, "- "), ElementsAre("- "));
}

TEST(page, shortened_text_says_that_something_is_left_out) {
    EXPECT_EQ(shortened("refrigerator", 8), "refri...");
    EXPECT_EQ(shortened("°°°°", 4), "°°°°");
}

TEST(page, ascii_keeps_the_meaning_of_common_signs) {
    EXPECT_EQ(in_ascii("−4 °C, 2 mm², 漢"), "-4 deg C, 2 mm2, ?");
}

TEST(page, ascii_has_one_space_on_either_side_of_degrees) {
    EXPECT_EQ(in_ascii("propped up at 60° facing 180°, 5 °C"),
              "propped up at 60 deg facing 180 deg, 5 deg C");
    EXPECT_EQ(in_ascii("°"), "deg");
}

TEST(page, ascii_writes_letters_as_their_readers_do) {
    EXPECT_EQ(in_ascii("Kühlschrank, größer; ¿batería pequeña?"),
              "Kuehlschrank, groesser; bateria pequena?");
}

TEST(page, control_characters_do_not_reach_the_terminal) {
    EXPECT_EQ(padded("a\x1b[31m", 3), "a?[31m");
    EXPECT_EQ(shortened("a\r", 9), "a?");
    EXPECT_THAT(wrapped("a\x07z", 20), ElementsAre("a?z"));
}

TEST(page, colour_is_only_there_when_the_look_has_it) {
    EXPECT_EQ(inked("STOP", Ink::stop, {.colour = false}), "STOP");
    EXPECT_THAT(inked("STOP", Ink::stop, {.colour = true}), testing::HasSubstr("\x1b["));
}

TEST(page, units_stand_as_people_write_them) {
    EXPECT_EQ(unit_shown("W.h"), "Wh");
    EXPECT_EQ(unit_shown("Cel"), "°C");
    EXPECT_EQ(unit_shown("W.h/m2"), "Wh/m2");
    EXPECT_EQ(unit_shown("1"), "");
    EXPECT_EQ(unit_shown(""), "");
}

TEST(page, numbers_of_a_table_have_the_decimal_mark_of_the_reader) {
    EXPECT_EQ(number_shown(-1234.56, words::english()), "-1235");
    EXPECT_EQ(number_shown(0.25, words::english()), "0.25");
    EXPECT_EQ(number_shown(0.25, *words::language("de")), "0,25");
}

}  // namespace
