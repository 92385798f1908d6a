#include "units/time.hpp"

namespace {

using namespace units;
using std::chrono::year;

LocalTime midnight_of(int in_year, unsigned month, unsigned on_day) {
    return local_time(year(in_year) / static_cast<int>(month) / static_cast<int>(on_day), {});
}

// Meeus, Astronomical Algorithms, 2nd ed., ch. 7: Julian days of calendar dates, from memory; 1
// January 1970 at 0 h is 2440587.5.
TEST(time, dates_are_as_many_days_apart_as_their_julian_days) {
    const auto julian_day = [](LocalTime time) { return time.since_1970() / day + 2'440'587.5; };
    EXPECT_NEAR(julian_day(midnight_of(1957, 10, 4) + 0.81 * day), 2'436'116.31, 1e-6);
    EXPECT_EQ(julian_day(midnight_of(2000, 1, 1) + 0.5 * day), 2'451'545.0);
    EXPECT_EQ(julian_day(midnight_of(1987, 6, 19) + 0.5 * day), 2'446'966.0);
    EXPECT_EQ(julian_day(midnight_of(1900, 1, 1)), 2'415'020.5);
    EXPECT_EQ(julian_day(midnight_of(1600, 12, 31)), 2'305'812.5);
}

// The same chapter, examples 7.f and 7.g.
TEST(time, a_day_of_the_year_counts_from_the_first_of_january) {
    EXPECT_EQ(day_of_year(year(1978) / 11 / 14), 318);
    EXPECT_EQ(day_of_year(year(1988) / 4 / 22), 113);
    EXPECT_EQ(day_of_year(year(2000) / 12 / 31), 366);
}

// 1.5 days before 1970 is noon of 30 December 1969, 12 h after its midnight.
TEST(time, what_lies_before_1970_has_its_midnight_before_it_too) {
    const LocalTime time(-1.5 * day);
    EXPECT_EQ(date_of(time), year(1969) / 12 / 30);
    EXPECT_EQ(time_of_day(time), 12.0 * hour);
    EXPECT_EQ(midnight_before(time), midnight_of(1969, 12, 30));
    EXPECT_EQ(midnight_before(midnight_of(1969, 12, 30)), midnight_of(1969, 12, 30));
}

// Chicago is 6 h behind Greenwich: 18:00 there is midnight in UTC.
TEST(time, west_of_greenwich_the_instant_is_later) {
    const LocalTime evening = midnight_of(2026, 1, 14) + 18.0 * hour;
    EXPECT_EQ(instant(evening, -6.0 * hour).since_1970(), midnight_of(2026, 1, 15).since_1970());
    EXPECT_EQ(local_time(instant(evening, -6.0 * hour), -6.0 * hour), evening);
}

}  // namespace
