// The names of packs and loads in a person's line.
#include "notes/names.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using notes::take_names;
using notes::Words;
using testing::ElementsAre;
using testing::IsEmpty;

scenario::Scenario plan() {
    scenario::Scenario made;
    made.packs = {{.name = "main"}, {.name = "expansion"}};
    made.loads = {{.name = "main lights"}, {.name = "chest freezer"}, {.name = "modem"}};
    return made;
}

TEST(names, are_found_whole_whatever_their_capitals) {
    Words words("MAIN reads well");
    const auto named = take_names(words, plan());
    EXPECT_EQ(named.pack, "main");
    EXPECT_FALSE(named.load);
    EXPECT_THAT(words.left(), ElementsAre("reads", "well"));
}

TEST(names, the_longer_name_goes_first) {
    Words words("main lights off");
    const auto named = take_names(words, plan());
    EXPECT_EQ(named.load, "main lights");
    EXPECT_FALSE(named.pack);
}

TEST(names, a_word_of_one_name_alone_is_enough) {
    Words words("freezer 1.15 kWh");
    EXPECT_EQ(take_names(words, plan()).load, "chest freezer");
    Words both("lights");
    EXPECT_EQ(take_names(both, plan()).load, "main lights");
}

TEST(names, a_word_that_could_be_two_or_means_something_else_names_none) {
    scenario::Scenario two = plan();
    two.loads.push_back({.name = "upright freezer"});
    Words words("freezer off");
    EXPECT_FALSE(take_names(words, two).load);
    EXPECT_THAT(words.left(), ElementsAre("freezer", "off"));
    two.loads.push_back({.name = "room heater"});
    Words room("room 16 C");
    EXPECT_FALSE(take_names(room, two).load);
}

// A pack and a load of one name: what the line tells decides later.
TEST(names, one_name_may_be_of_a_pack_and_a_load) {
    scenario::Scenario same = plan();
    same.loads.push_back({.name = "expansion"});
    Words words("expansion");
    const auto named = take_names(words, same);
    EXPECT_EQ(named.pack, "expansion");
    EXPECT_EQ(named.load, "expansion");
    EXPECT_THAT(words.left(), IsEmpty());
}

}  // namespace
