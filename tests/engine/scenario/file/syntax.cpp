// Lines of a file, and plain words for what makes one unreadable.
#include "scenario/file/syntax.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using namespace scenario;
using testing::ElementsAre;
using testing::HasSubstr;

TEST(syntax, lines_are_counted_from_one_and_come_without_their_ends) {
    constexpr std::string_view text = "a = 1\r\nb = 2\n\nc = 3";
    EXPECT_THAT(beginnings_of_lines(text), ElementsAre(0, 7, 13, 14));
    EXPECT_EQ(line_of(text, 1), "a = 1");
    EXPECT_EQ(line_of(text, 3), "");
    EXPECT_EQ(line_of(text, 4), "c = 3");
    EXPECT_EQ(line_of(text, 5), "");
    std::string changed(text);
    replace_line(changed, 2, "# b");
    EXPECT_EQ(changed, "a = 1\r\n# b\n\nc = 3");
}

TEST(syntax, the_key_of_a_line_is_what_stands_before_its_equals_sign) {
    EXPECT_EQ(key_on_line("  lasts = 4 d"), "lasts");
    EXPECT_EQ(key_on_line("load.motor = {}"), "load.motor");
    EXPECT_EQ(key_on_line("# lasts = 4 d"), std::nullopt);
    EXPECT_EQ(key_on_line("[outage]"), std::nullopt);
}

TEST(syntax, a_bare_value_is_shown_in_quotes) {
    EXPECT_EQ(with_value_in_quotes("lasts = 4 d  # four nights"), "lasts = \"4 d\"");
    EXPECT_EQ(with_value_in_quotes("  starts=2026-01-14 18h "), "starts = \"2026-01-14 18h\"");
    EXPECT_EQ(with_value_in_quotes("lasts = \"4 d\""), "");
    EXPECT_EQ(with_value_in_quotes("lasts ="), "");
}

TEST(syntax, what_no_parser_should_see_is_named_with_its_line) {
    EXPECT_FALSE(unfit_to_parse("a = \"\u00E9\"\n# caf\u00E9\n"));
    const auto latin = unfit_to_parse("a = 1\nb = \"caf\xE9\"\n");
    ASSERT_TRUE(latin);
    EXPECT_EQ(latin->line, 2);
    EXPECT_THAT(latin->found, HasSubstr("byte 9"));  // b, blank, =, blank, quote, c, a, f
    EXPECT_THAT(unfit_to_parse(std::string("a = 1\n\0", 7))->found, HasSubstr("value zero"));
    EXPECT_THAT(unfit_to_parse("\xFE\xFF")->found, HasSubstr("UTF-16"));
    EXPECT_THAT(unfit_to_parse("a" + std::string(251, '.') + " = 1")->found,
                HasSubstr("more than 250 full stops"));
}

TEST(syntax, a_complaint_is_said_with_what_to_write) {
    EXPECT_EQ(
        syntax_error({.kind = Complaint::Kind::other, .words = "unexpected"}, "lasts = 4 d").remedy,
        R"(put the value in quotes: lasts = "4 d")");
    EXPECT_THAT(
        syntax_error({.kind = Complaint::Kind::other, .words = "unexpected"}, "lasts = \"4 d")
            .found,
        HasSubstr("not closed"));
    EXPECT_THAT(
        syntax_error({.kind = Complaint::Kind::other, .words = "unexpected"}, "lasts =").found,
        HasSubstr("no value"));
    EXPECT_THAT(syntax_error({.kind = Complaint::Kind::given_twice, .words = "cannot redefine"},
                             "lasts = 1")
                    .found,
                HasSubstr("already given"));
    EXPECT_THAT(syntax_error({.kind = Complaint::Kind::other, .words = "unexpected end"}, "").found,
                HasSubstr("ends too early"));
}

}  // namespace
