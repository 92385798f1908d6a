#include "outage/told/telling.hpp"

namespace {

using namespace units;
using outage::EventKind;
using outage::LimitedBy;

// A leg of so long at this voltage, and what the sun does in it.
outage::Leg leg(Duration time, double volts) {
    return {.time = time, .voltage = volts * volt};
}

TEST(telling, only_the_first_failure_counts) {
    outage::Telling telling({}, {}, nullptr);
    telling.go_to(5.0 * hour);
    telling.fails(LimitedBy::low_voltage);
    telling.go_to(9.0 * hour);
    telling.fails(LimitedBy::charge);
    EXPECT_TRUE(telling.failed());
    EXPECT_EQ(telling.course().lasts, 5.0 * hour);
    EXPECT_EQ(telling.course().limited_by, LimitedBy::low_voltage);
}

TEST(telling, a_stretch_without_ends_when_it_is_said_to) {
    outage::Telling telling({}, {}, nullptr);
    telling.go_to(2.0 * hour);
    const auto told = telling.from(3, LimitedBy::charge);
    telling.note(EventKind::load_off, {.power = 60.0 * watt});
    telling.go_to(2.5 * hour);
    telling.until(told);
    ASSERT_EQ(telling.course().out.size(), 1U);
    EXPECT_EQ(telling.course().out[0].part, 3U);
    EXPECT_EQ(telling.course().out[0].from, 2.0 * hour);
    EXPECT_EQ(telling.course().out[0].to, 2.5 * hour);
    ASSERT_EQ(telling.course().events.size(), 1U);
    EXPECT_EQ(telling.course().events[0].at, 2.0 * hour);
    EXPECT_EQ(telling.course().events[0].power, 60.0 * watt);
}

TEST(telling, without_a_trace_nothing_is_kept) {
    outage::Telling telling({.trace = false}, {}, nullptr);
    EXPECT_EQ(telling.note(EventKind::load_off), nullptr);
    telling.until(telling.from(3, LimitedBy::charge));
    EXPECT_TRUE(telling.course().out.empty());
    EXPECT_TRUE(telling.course().events.empty());
}

// From 18:00 it is 6 h to midnight: a leg of two hours from 5 h on has its middle just there, so it
// is of the second day; one an hour before of the first, one of a day later of the third.
TEST(telling, the_sun_of_a_leg_is_of_the_day_that_its_middle_is_in) {
    std::vector<outage::SunOfDay> days;
    outage::Telling telling({}, 6.0 * hour, &days);
    outage::Ledger flows{.sun_offered = 100.0 * watt_hour,
                         .sun_used = 30.0 * watt_hour,
                         .sun_stored = 50.0 * watt_hour,
                         .sun_unused = 20.0 * watt_hour};
    for (const double from : {4.0, 5.0, 29.0}) {
        telling.go_to(from * hour);
        telling.account(leg(2.0 * hour, 13.0), flows);
    }
    ASSERT_EQ(days.size(), 3U);
    for (const auto& of_day : days) {
        EXPECT_NEAR(of_day.offered / watt_hour, 100.0, 1e-9);
        EXPECT_NEAR(of_day.taken / watt_hour, 80.0, 1e-9);
        EXPECT_NEAR(of_day.unused / watt_hour, 20.0, 1e-9);
    }
    EXPECT_NEAR(telling.course().ledger.sun_offered / watt_hour, 300.0, 1e-9);
}

// A leg of no time shows no voltage.
TEST(telling, the_lowest_voltage_and_the_time_without_are_summed) {
    outage::Telling telling({}, {}, nullptr);
    telling.account(leg(1.0 * hour, 12.6), {.loads = 10.0 * watt_hour});
    telling.account(leg({}, 9.0), {});
    telling.account(leg(0.5 * hour, 11.9), {.unserved = 1.0 * watt_hour});
    EXPECT_EQ(telling.course().lowest_voltage, 11.9 * volt);
    EXPECT_EQ(telling.course().without, 0.5 * hour);
    EXPECT_NEAR(telling.course().ledger.loads / watt_hour, 10.0, 1e-9);
}

}  // namespace
