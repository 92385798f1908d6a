#include "outage/told/load_uses.hpp"

namespace {

using namespace units;

// Three lamps of 40 W (30 to 50) that follow one another: two of them 6 h, one 3 h at half its power,
// over two days. On 2 x 6 + 3 = 15 h of lamps, a mean of 5 h each; 2 x 6 x 40 + 3 x 20 = 540 Wh.
TEST(load_uses, are_summed_over_the_items_of_a_load) {
    demand::Demand demand{.lasts = 48.0 * hour};
    demand.loads.push_back(
        {.name = "lamps",
         .from = scenario::Outlet::usb,
         .priority = 2,
         .count = 3,
         .power = {.low = 30.0 * watt,
                   .likely = 40.0 * watt,
                   .high = 50.0 * watt,
                   .from_what = "stated 40 W"},
         .strands = {{.items = 2, .on = {{{}, 2.0 * hour}, {20.0 * hour, 24.0 * hour}}},
                     {.items = 1,
                      .on = {{30.0 * hour, 33.0 * hour}},
                      .of_power = demand::DrawRatio(0.5)}}});
    const auto uses = outage::load_uses(demand);
    ASSERT_EQ(uses.size(), 1U);
    EXPECT_EQ(uses[0].name, "lamps");
    EXPECT_EQ(uses[0].from, scenario::Outlet::usb);
    EXPECT_NEAR(uses[0].running_low / watt, 90.0, 1e-9);
    EXPECT_NEAR(uses[0].running / watt, 120.0, 1e-9);
    EXPECT_NEAR(uses[0].running_high / watt, 150.0, 1e-9);
    EXPECT_NEAR(uses[0].wanted / watt_hour, 540.0, 1e-9);
    EXPECT_NEAR(uses[0].per_day / watt_hour, 270.0, 1e-9);
    EXPECT_NEAR(uses[0].on_time / hour, 5.0, 1e-9);
    EXPECT_EQ(uses[0].from_what, "stated 40 W");
}

// 60 W from 00:30 to 02:15 of an outage of three hours and a half, and again in its last half
// hour: 30, 60, 15 and 30 Wh by hand.
TEST(load_uses, tell_what_each_hour_asks_for) {
    demand::Demand demand{.lasts = 3.5 * hour};
    demand.loads.push_back(
        {.name = "lamp",
         .power = {.low = 60.0 * watt, .likely = 60.0 * watt, .high = 60.0 * watt},
         .strands = {{.on = {{0.5 * hour, 2.25 * hour}, {3.0 * hour, 3.5 * hour}}}}});
    const auto hours = outage::load_uses(demand).front().hours;
    ASSERT_EQ(hours.size(), 4U);
    EXPECT_NEAR(hours[0] / watt_hour, 30.0, 1e-9);
    EXPECT_NEAR(hours[1] / watt_hour, 60.0, 1e-9);
    EXPECT_NEAR(hours[2] / watt_hour, 15.0, 1e-9);
    EXPECT_NEAR(hours[3] / watt_hour, 30.0, 1e-9);
}

TEST(load_uses, hours_sum_to_what_is_wanted) {
    demand::Demand demand{.lasts = 48.0 * hour};
    demand.loads.push_back(
        {.name = "cycling",
         .count = 2,
         .power = {.low = 90.0 * watt, .likely = 90.0 * watt, .high = 90.0 * watt},
         .strands = {{.items = 2, .on = {}}}});
    for (int minute = 7; minute < 48 * 60 - 20; minute += 47)
        demand.loads[0].strands[0].on.push_back(
            {double(minute) * units::minute, (minute + 17.0) * units::minute});
    const auto use = outage::load_uses(demand).front();
    Energy sum{};
    for (const Energy& wanted : use.hours)
        sum += wanted;
    EXPECT_NEAR(sum / use.wanted, 1.0, 1e-12);
}

}  // namespace
