// A person's line as words, each of which must find a meaning.
#include "notes/words.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using notes::Words;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(words, blanks_part_them_and_stops_behind_them_go) {
    const Words words("  Main, 12.9 V;\tswitched OFF. ");
    ASSERT_EQ(words.size(), 5U);
    EXPECT_EQ(words.written(0), "Main");
    EXPECT_EQ(words.plain(0), "main");
    EXPECT_EQ(words.written(1), "12.9");
    EXPECT_EQ(words.plain(4), "off");
    EXPECT_EQ(words.plain(9), "");
    EXPECT_EQ(Words("").size(), 0U);
}

TEST(words, what_is_taken_is_found_no_more) {
    Words words("switched off the lamp");
    EXPECT_TRUE(words.take_phrase("switched off"));
    EXPECT_FALSE(words.take_phrase("switched off"));
    EXPECT_FALSE(words.is_free(0));
    EXPECT_EQ(words.plain(1), "");
    EXPECT_THAT(words.left(), ElementsAre("the", "lamp"));
    words.take_all({"the", "a"});
    words.take(3);
    EXPECT_THAT(words.left(), IsEmpty());
}

TEST(words, a_phrase_stands_in_one_piece) {
    const Words words("off it was switched off");
    EXPECT_EQ(words.find({"switched", "off"}), 3U);
    EXPECT_EQ(words.find({"off", "switched"}), std::nullopt);
    EXPECT_EQ(words.find({}), std::nullopt);
}

TEST(words, only_letters_from_a_to_z_are_made_small) {
    EXPECT_EQ(notes::small_letters("CPAP \u00DC"), "cpap \u00DC");
    EXPECT_THAT(notes::split("a  b\tc"), ElementsAre("a", "b", "c"));
}

}  // namespace
