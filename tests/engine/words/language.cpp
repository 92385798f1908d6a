#include "words/language.hpp"

#include "units/said.hpp"
#include "words/catalogue.hpp"

namespace words {
namespace {

using namespace units;

Language example() {
    static const auto catalogue = Catalogue::read({R"([language]
code = "xx"
name = "Example"
decimal_mark = ","
[[say]]
english = "{pack} holds {energy} until {when}."
as = "Bis {when} sind in {pack} {energy}."
[[say]]
english = "Thursday"
as = "Donnerstag"
[[say]]
english = "{first} and {last}"
as = "{first} und {last}"
)"});
    return {.catalogue = &catalogue};
}

TEST(language, fills_the_parts_in_its_own_order) {
    const Said text = said<"{pack} holds {energy} until {when}.">("main", 1500.0 * watt_hour,
                                                                  Moment{.since_1970 = 0.0});
    EXPECT_EQ(in(example(), text), "Bis Donnerstag 00:00 sind in main 1,5 kWh.");
}

TEST(language, what_is_not_in_the_catalogue_is_said_in_english_with_all_its_parts) {
    const Said text = said<"{pack} is missing {energy}.">("main", 1500.0 * watt_hour);
    EXPECT_EQ(in(example(), text), "main is missing 1.5 kWh.");
}

TEST(language, a_list_is_joined_with_its_own_word) {
    EXPECT_EQ(in(example(), joined({"a", "b"}, List::Joint::all)), "a und b");
}

TEST(language, is_known_by_the_name_of_a_locale) {
    ASSERT_TRUE(language("de_AT.UTF-8"));
    EXPECT_EQ(language("de_AT.UTF-8")->code(), "de");
    EXPECT_EQ(language("C.UTF-8")->code(), "en");
    EXPECT_FALSE(language("tlh"));
    EXPECT_EQ(own_name(*language("de")), "Deutsch");
}

}  // namespace
}  // namespace words
