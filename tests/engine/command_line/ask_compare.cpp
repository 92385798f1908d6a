#include "typed.hpp"

namespace {

using testing::HasSubstr;

const std::string folder = std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/";

TEST(candlemark_compare, tells_the_swap_in_words) {
    const auto answer = typed::candlemark(
        {"compare", folder + "swap/as_planned.toml", folder + "swap/as_built.toml"});
    EXPECT_EQ(answer.status, 1);
    EXPECT_THAT(answer.output, HasSubstr("is 5 A instead of 10 A"));
    EXPECT_THAT(answer.output, HasSubstr("Check again: "));
    const auto same = typed::candlemark(
        {"compare", folder + "swap/as_planned.toml", folder + "swap/as_planned.toml"});
    EXPECT_EQ(same.status, 0);
    EXPECT_THAT(same.output, HasSubstr("The two builds do not differ."));
}

TEST(candlemark_compare, a_second_file_that_is_missing_is_named) {
    const auto answer =
        typed::candlemark({"compare", folder + "swap/as_planned.toml", folder + "no_such.toml"});
    EXPECT_EQ(answer.status, 2);
    EXPECT_THAT(answer.errors, HasSubstr("no_such.toml"));
    const auto one = typed::candlemark({"compare", folder + "swap/as_planned.toml"});
    EXPECT_EQ(one.status, 2);
}

}  // namespace
