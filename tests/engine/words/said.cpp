#include "words/said.hpp"

#include "units/quantities.hpp"
#include "units/said.hpp"
#include "words/catalogue.hpp"

namespace words {
namespace {

using namespace units;

TEST(said, is_its_saying_and_its_parts) {
    const Said text = said<"{pack} holds {energy}.">("main", 640.0 * watt_hour);
    EXPECT_EQ(text, "main holds 640 Wh.");
    EXPECT_EQ(text.saying, &(saying<"{pack} holds {energy}.">));
    ASSERT_EQ(text.parts.size(), 2u);
    EXPECT_EQ(std::get<Name>(text.parts[0].held()).text, "main");
    EXPECT_DOUBLE_EQ(std::get<Amount>(text.parts[1].held()).si, 640.0 * 3600.0);
}

TEST(said, of_the_same_words_is_one_saying_wherever_it_is_said) {
    const auto one = said<"a fuse opens">();
    const auto other = said<"a fuse opens">();
    EXPECT_EQ(one, other);
    EXPECT_NE(one.saying, (said<"a fuse holds">().saying));
}

TEST(said, nothing_is_empty_and_a_name_is_said_as_it_is) {
    EXPECT_TRUE(Said().empty());
    EXPECT_TRUE(Said("").empty());
    EXPECT_EQ(Said("{not a part}"), "{not a part}");
}

TEST(said, a_doubled_brace_is_a_brace) {
    EXPECT_EQ((said<"metered = {{energy}} of {load}">("tv")), "metered = {energy} of tv");
}

TEST(said, takes_the_form_for_the_first_count) {
    EXPECT_EQ((said_of<"{n} pack is", "{n} packs are">(1)), "1 pack is");
    EXPECT_EQ((said_of<"{n} pack is", "{n} packs are">(2)), "2 packs are");
    EXPECT_EQ((said_of<"{n} pack is", "{n} packs are">(0)), "0 packs are");
    EXPECT_EQ((said_of<"one more pack", "{n} more packs">(in_words(3))), "three more packs");
    EXPECT_EQ((said_of<"one more pack", "{n} more packs">(in_words(1))), "one more pack");
}

TEST(said, a_part_may_begin_the_sentence) {
    EXPECT_EQ((said<"{^clause}.">(said<"then a fuse opens">())), "Then a fuse opens.");
    EXPECT_EQ((said<"{^clause}.">("äußerst")), "Äußerst.");
}

TEST(said, lists_are_joined_as_people_do) {
    const std::vector<Said> three{"a", "b", "c"};
    EXPECT_EQ(joined(three, List::Joint::all), "a, b and c");
    EXPECT_EQ(joined(three, List::Joint::either), "a, b or c");
    EXPECT_EQ(joined(three, List::Joint::or_each), "a or b or c");
    EXPECT_EQ(joined(three, List::Joint::comma), "a, b, c");
    EXPECT_EQ(joined({"a", "b"}, List::Joint::all), "a and b");
    EXPECT_EQ(joined({"a"}, List::Joint::all), "a");
    EXPECT_EQ(together({"One.", "", "Two."}), "One. Two.");
    EXPECT_TRUE(together({"", ""}).empty());
}

}  // namespace
}  // namespace words
