// What differs between two tables, as a file would have it.
#include "scenario/differences.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using scenario::KeyDifference;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(differences, of_two_packs_are_their_keys_in_the_order_of_the_format) {
    const scenario::Pack before{.name = "main",
                                .chemistry = scenario::Chemistry::agm,
                                .capacity = 100.0 * units::ampere_hour};
    scenario::Pack after = before;
    EXPECT_THAT(scenario::differences(before, after), IsEmpty());
    EXPECT_TRUE(scenario::same(before, after));
    after.fuse = 30.0 * units::ampere;
    after.capacity = 92.5 * units::ampere_hour;
    EXPECT_THAT(scenario::differences(before, after),
                ElementsAre(KeyDifference{"capacity", "\"100 Ah\"", "\"92.5 Ah\""},
                            KeyDifference{"fuse", "", "\"30 A\""}));
}

TEST(differences, a_table_inside_is_one_key) {
    scenario::Load before{.name = "pump"};
    scenario::Load after = before;
    before.runs = scenario::DutyCycle{
        .on = 10.0 * units::second, .every = 100.0 * units::second, .starts_at = {}};
    after.runs = scenario::DutyCycle{
        .on = 20.0 * units::second, .every = 100.0 * units::second, .starts_at = {}};
    const auto found = scenario::differences(before, after);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].key, "runs");
    EXPECT_TRUE(found[0].after.starts_with("{on = \"20 s\"")) << found[0].after;
}

TEST(differences, a_wire_in_the_place_of_a_fuse_is_not_the_same) {
    const scenario::Link fuse = scenario::Fuse{.rating = 10.0 * units::ampere};
    const scenario::Link larger = scenario::Fuse{.rating = 15.0 * units::ampere};
    const scenario::Link wire = scenario::Wire{};
    EXPECT_TRUE(scenario::same(fuse, fuse));
    EXPECT_FALSE(scenario::same(fuse, larger));
    EXPECT_FALSE(scenario::same(fuse, wire));
}

}  // namespace
