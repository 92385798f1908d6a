#include "words/saying.hpp"

#include "words/said.hpp"

namespace words {
namespace {

TEST(saying, names_its_parts_in_order_and_each_once) {
    constexpr PartNames names = names_in("{pack} of {packs}, {{not}}, again {pack}");
    static_assert(names.well_formed);
    ASSERT_EQ(names.count, 2u);
    EXPECT_EQ(names.names[0], "pack");
    EXPECT_EQ(names.names[1], "packs");
}

TEST(saying, a_brace_that_nothing_closes_is_a_fault) {
    EXPECT_FALSE(names_in("{pack").well_formed);
    EXPECT_FALSE(names_in("pack}").well_formed);
    EXPECT_FALSE(names_in("{}").well_formed);
    EXPECT_FALSE(names_in("{Pack 1}").well_formed);
}

TEST(saying, has_words_where_there_are_letters_outside_its_parts) {
    EXPECT_TRUE((saying<"{a} of {b}">.has_words()));
    EXPECT_FALSE((saying<"{a}: {b} ({c})">.has_words()));
}

TEST(saying, each_that_is_said_can_be_listed_once) {
    (void)said<"listed in a test of sayings">();
    (void)said<"listed in a test of sayings">();
    const auto all = all_sayings();
    EXPECT_EQ(std::ranges::count(all, std::string_view("listed in a test of sayings"),
                                 [](const Saying* one) { return one->english; }),
              1);
}

}  // namespace
}  // namespace words
