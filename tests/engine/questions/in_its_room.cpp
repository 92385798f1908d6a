#include "questions/shared/in_its_room.hpp"

#include "file_of.hpp"

namespace {

using questions::at_the_coldest;
using questions::at_the_mean_from;
using units::day;
using units::in_celsius;

TEST(in_its_room, packs_of_a_known_temperature_stay_as_they_are) {
    const auto read = file_of::text(file_of::outage("2 d", file_of::warm) + file_of::a_pack);
    const auto made = at_the_coldest(read);
    EXPECT_NEAR(in_celsius(*made.scenario.outage.battery_temperature), 25.0, 1e-9);
    EXPECT_TRUE(made.taken.empty());
}

TEST(in_its_room, those_of_a_heated_room_take_its_temperature_on_every_day) {
    const auto read = file_of::text(
        file_of::outage("2 d", "battery_follows_room = true\nroom_temperature = \"12 degC\"") +
        file_of::a_pack);
    for (const auto& made :
         {at_the_coldest(read), at_the_mean_from(read.scenario.outage.starts, read)}) {
        EXPECT_NEAR(in_celsius(*made.scenario.outage.battery_temperature), 12.0, 1e-9);
        ASSERT_EQ(made.taken.size(), 2U);
        EXPECT_EQ(made.taken.back().where, "outage.battery_temperature");
    }
}

// Without a place it is 15 degC outside, and a room that is not heated goes from 18 degC half way
// there, to 16.5 degC, in 16.6 h by the e-th part. After a day of 24 h exp(-24/16.6) = 0.2356 of the
// 1.5 K are left, 0.3533 K; the mean over the day is (1 - 0.2356) x 16.6/24 = 0.5287 of what there
// was as it began: 17.293 degC on the first day, 16.687 degC on the second.
TEST(in_its_room, a_room_that_cools_is_coldest_at_its_end) {
    const auto read =
        file_of::text(file_of::outage("2 d", "battery_follows_room = true") + file_of::a_pack);
    const auto starts = read.scenario.outage.starts;
    const auto of = [](const questions::InItsRoom& made) {
        return in_celsius(*made.scenario.outage.battery_temperature);
    };
    EXPECT_NEAR(of(at_the_coldest(read)), 16.687, 1e-3);
    EXPECT_NEAR(of(at_the_mean_from(starts, read)), 0.5 * (17.293 + 16.687), 1e-3);
    EXPECT_NEAR(of(at_the_mean_from(starts + 1.25 * day, read)), 16.687, 1e-3);
}

}  // namespace
