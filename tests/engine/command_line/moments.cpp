#include "command_line/ask/moments.hpp"

namespace {

using namespace std::chrono_literals;
using command_line::is_within;
using command_line::now_of;
using testing::HasSubstr;
using units::hour;
using units::LocalTime;
using units::minute;

LocalTime january(unsigned date, double hours) {
    return units::local_time(2026y / std::chrono::January / std::chrono::day(date), hours * hour);
}

// From six in the evening of the 14th to six in the evening of the 17th.
const scenario::Outage outage{.starts = january(14, 18.0), .lasts = 72.0 * hour};

TEST(moments, a_time_of_day_is_the_latest_up_to_the_clock) {
    const auto clock = january(15, 8.0);
    EXPECT_EQ(*now_of("07:30", clock, outage), january(15, 7.5));
    EXPECT_EQ(*now_of("21:30", clock, outage), january(14, 21.5));
    // A watch may be a quarter of an hour ahead of this computer.
    EXPECT_EQ(*now_of("08:15", clock, outage), january(15, 8.25));
    EXPECT_EQ(*now_of("08:16", clock, outage), january(14, 8.0) + 16.0 * minute);
}

TEST(moments, with_a_clock_outside_of_the_outage_it_is_the_first_of_it) {
    for (const auto& clock : {std::optional<LocalTime>(), std::optional(january(20, 8.0))}) {
        EXPECT_EQ(*now_of("18:00", clock, outage), january(14, 18.0));
        EXPECT_EQ(*now_of("17:59", clock, outage), january(15, 18.0) - minute);
    }
}

TEST(moments, a_whole_date_is_itself_and_none_is_what_the_clock_says) {
    EXPECT_EQ(*now_of("2026-01-16T06:00", january(15, 8.0), outage), january(16, 6.0));
    EXPECT_EQ(*now_of(std::nullopt, january(15, 8.0), outage), january(15, 8.0));
}

TEST(moments, what_is_no_time_is_refused_as_is_a_computer_without_one) {
    const auto odd = now_of("25:00", january(15, 8.0), outage);
    ASSERT_FALSE(odd);
    EXPECT_EQ(odd.error().front().where, "--at");
    const auto none = now_of(std::nullopt, std::nullopt, outage);
    ASSERT_FALSE(none);
    EXPECT_THAT(none.error().front().remedy, HasSubstr("--at 21:30"));
}

TEST(moments, both_ends_of_an_outage_are_within_it) {
    EXPECT_TRUE(is_within(january(14, 18.0), outage));
    EXPECT_TRUE(is_within(january(17, 18.0), outage));
    EXPECT_FALSE(is_within(january(14, 18.0) - minute, outage));
    EXPECT_FALSE(is_within(january(17, 18.0) + minute, outage));
}

}  // namespace
