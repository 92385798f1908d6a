#include "wiring/connector.hpp"

namespace {

using namespace units;
using namespace wiring;

// A housing for 105 degC: 80 K above 25 degC are tabled. At 65 degC half of them are left, and
// heat goes with the square of the current: sqrt(40/80) = 0.7071.
TEST(connector, a_contact_in_the_heat_keeps_the_root_of_the_room_that_is_left) {
    EXPECT_NEAR(contact_factor(celsius(105.0), celsius(65.0)), 0.70711, 0.00001);
    EXPECT_EQ(contact_factor(celsius(105.0), celsius(25.0)), 1.0);
    EXPECT_EQ(contact_factor(celsius(105.0), celsius(-20.0)), 1.0);  // cold is never credited
    EXPECT_EQ(contact_factor(celsius(105.0), celsius(105.0)), 0.0);
    EXPECT_EQ(contact_factor(celsius(105.0), celsius(120.0)), 0.0);
}

// 13.4 V and 12.9 V through 5 and 20 milliohm: 20 A. For 50 A the packs may differ by 1.25 V.
TEST(connector, packs_plugged_together_drive_their_difference_through_both) {
    const auto found =
        plugged_together(13.4 * volt, 0.005 * ohm, 12.9 * volt, 0.020 * ohm, 50.0 * ampere);
    EXPECT_NEAR(found.current / ampere, 20.0, 1e-9);
    EXPECT_NEAR(found.largest_difference / volt, 1.25, 1e-12);
    const auto back =
        plugged_together(12.9 * volt, 0.005 * ohm, 13.4 * volt, 0.020 * ohm, 50.0 * ampere);
    EXPECT_NEAR(back.current / ampere, -20.0, 1e-9);
}

TEST(connector, a_part_of_no_table_is_held_to_what_its_builder_states) {
    const scenario::Connector own{.rating = 50.0 * ampere};
    const auto held = rating_of(own, nullptr);
    EXPECT_EQ(held.rating, 50.0 * ampere);
    EXPECT_EQ(held.by, "as you state it");
    EXPECT_EQ(held.reliability, Reliability::builder);
}

TEST(connector, what_a_builder_states_below_the_listings_stands) {
    const ConnectorRow* row = find_connector("two-pole 50");
    ASSERT_NE(row, nullptr);
    const auto held = rating_of({.rating = 10.0 * ampere}, row);
    EXPECT_EQ(held.rating, 10.0 * ampere);
    EXPECT_EQ(held.by, "as you state it");
}

}  // namespace
