#include "units/quote.hpp"

namespace {

using units::quote;
using units::utf8_length;

TEST(quote, leaves_ordinary_text_as_it_is) {
    EXPECT_EQ(quote("6 mΩ at 25 °C, ½ hp"), "6 mΩ at 25 °C, ½ hp");
    EXPECT_EQ(quote(""), "");
}

TEST(quote, shortens_by_characters_and_not_by_bytes) {
    EXPECT_EQ(quote("ΩΩΩΩ", 3), "ΩΩΩ…");
    EXPECT_EQ(quote("ΩΩΩ", 3), "ΩΩΩ");
}

TEST(quote, makes_what_is_hidden_visible) {
    EXPECT_EQ(quote("a\nb\x1b[0m"), "a\\x0ab\\x1b[0m");
    EXPECT_EQ(quote("\u202e"
                    "V"),
              "\\u{202e}V");
    EXPECT_EQ(quote("\u200b"
                    "V"),
              "\\u{200b}V");
    EXPECT_EQ(quote("\x7f"), "\\x7f");
    EXPECT_EQ(quote(std::string_view("\0", 1)), "\\x00");
}

TEST(quote, shows_bytes_that_are_not_utf8) {
    EXPECT_EQ(quote("\xff"), "\\xff");
    EXPECT_EQ(quote("\xc3"), "\\xc3");
    EXPECT_EQ(quote("\xc0\x80"), "\\xc0\\x80");
    EXPECT_EQ(quote("\xed\xa0\x80"), "\\xed\\xa0\\x80");
}

// [RFC 3629] section 3 and 4: shortest forms only, no surrogates, nothing past U+10FFFF.
TEST(utf8_length, counts_only_well_formed_characters) {
    EXPECT_EQ(utf8_length("V"), 1);
    EXPECT_EQ(utf8_length("Ω"), 2);
    EXPECT_EQ(utf8_length("−"), 3);
    EXPECT_EQ(utf8_length("\U0001F56F"), 4);
    EXPECT_EQ(utf8_length("\xf4\x8f\xbf\xbf"), 4);
    EXPECT_EQ(utf8_length("\xf4\x90\x80\x80"), 0);
    EXPECT_EQ(utf8_length("\xe0\x80\x80"), 0);
    EXPECT_EQ(utf8_length("\xf0\x80\x80\x80"), 0);
    EXPECT_EQ(utf8_length("\xed\xbf\xbf"), 0);
    EXPECT_EQ(utf8_length("\x80"), 0);
    EXPECT_EQ(utf8_length(""), 0);
}

}  // namespace
