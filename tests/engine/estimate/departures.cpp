#include "estimate/departures.hpp"

#include "support/three_packs.hpp"

namespace {

using estimate::Sure;
using namespace three_packs;

// Of a normal law 97.5 in 100 lie below 1.96 deviations, 80 below 0.84.
TEST(departures, four_times_in_five_is_probable_and_one_in_forty_beside_it_sure) {
    EXPECT_EQ(estimate::sureness(0.79), Sure::perhaps);
    EXPECT_EQ(estimate::sureness(0.80), Sure::probably);
    EXPECT_EQ(estimate::sureness(0.974), Sure::probably);
    EXPECT_EQ(estimate::sureness(0.975), Sure::surely);
}

TEST(departures, a_meter_says_surely_what_the_charge_alone_cannot) {
    // The plan has 50 W: 0.9 kWh in 18 h.
    const auto planned = outlook(meter("freezer", "0.91 kWh"), next_noon);
    EXPECT_TRUE(planned.fits);
    const auto hungry = outlook(meter("freezer", "1.9 kWh"), next_noon);
    ASSERT_EQ(hungry.departures.size(), 1U);
    EXPECT_EQ(hungry.departures.front().what, "what freezer draws");
    EXPECT_EQ(hungry.departures.front().sure, Sure::surely);
    EXPECT_GT(hungry.departures.front().low, 1.0);
    EXPECT_LT(hungry.figures.half, planned.figures.half);
}

TEST(departures, what_the_readings_cannot_tell_apart_is_one_of_these) {
    const auto low =
        outlook(shows("2026-01-15T06:00:00", 48) + shows("2026-01-15T11:00:00", 30), next_noon);
    EXPECT_FALSE(low.fits);
    ASSERT_FALSE(low.departures.empty());
    for (const auto& departure : low.departures) {
        if (!departure.or_else.empty()) {
            EXPECT_EQ(departure.sure, Sure::perhaps);
        }
        EXPECT_NE(departure.sure, Sure::surely) << departure.what;
    }
}

bool names(const estimate::Outlook& found, const char* what) {
    for (const auto& departure : found.departures) {
        if (departure.what == what) return true;
        for (const auto& other : departure.or_else)
            if (other == what) return true;
    }
    return false;
}

// Seen through the charge alone a hungry blower and packs that hold little are one of these; once a
// meter shows that the blower draws what was planned, 0.54 kWh over 18 h, it is no longer named.
TEST(departures, a_meter_that_reads_as_planned_clears_its_load) {
    const auto charges = shows("2026-01-15T06:00:00", 50) + shows("2026-01-15T11:00:00", 32);
    const auto unclear = outlook(charges, next_noon);
    ASSERT_GE(unclear.departures.size(), 2U);
    EXPECT_TRUE(names(unclear, "what blower draws"));
    EXPECT_TRUE(names(unclear, "what main holds"));
    for (const auto& departure : unclear.departures)
        EXPECT_EQ(departure.sure, Sure::perhaps) << departure.what;
    const auto cleared = outlook(charges + meter("blower", "0.54 kWh"), next_noon);
    EXPECT_FALSE(names(cleared, "what blower draws"));
    EXPECT_TRUE(names(cleared, "what main holds"));
}

}  // namespace
