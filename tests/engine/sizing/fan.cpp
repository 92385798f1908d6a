#include "sizing/fan.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

chance::Members members_of(const std::string& more, int wanted = 128) {
    const auto read = scenario::read_scenario(R"(format = 1
title = "Fan"
[outage]
starts = 2026-06-05T06:00:00
lasts = "10 h"
battery_temperature = "20 degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
age = "fresh"
charge = "100 %"
[[load]]
name = "lamp"
from = "12V"
power = "50 W"
evidence = "metered"
)" + more,
                                              "fan.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    return sizing::members_of(
        read->scenario, {},
        std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value()), 1,
        wanted);
}

double watt_hours(const std::vector<Energy>& stored, std::size_t moment) {
    return stored.at(moment) / watt_hour;
}

// Without sun the store falls by what the load draws: the median by 50 W, one in ten by 10 % more
// and one in ten by 10 % less. What the packs hold varies too, by 5 %, so that the middle is looked
// at: 250 Wh in five hours, 500 in ten, to the 0.5 % that the pack's own resistance takes and the
// error of 128 members, 0.074 x 1.25 / sqrt(128) = 0.8 % once over and 0.05 of 1,300 Wh likewise.
TEST(fan, the_middle_falls_by_what_is_drawn) {
    const auto fan = sizing::fan_of(members_of(""), 2.5 * hour, 2);
    ASSERT_EQ(fan.at.size(), 5U);
    for (std::size_t i = 0; i < fan.at.size(); ++i)
        EXPECT_NEAR(fan.at[i] / hour, 2.5 * double(i), 1e-9);
    const auto& middle = fan.stored[2];
    EXPECT_NEAR(watt_hours(middle, 0) - watt_hours(middle, 2), 250.0, 15.0);
    EXPECT_NEAR(watt_hours(middle, 0) - watt_hours(middle, 4), 500.0, 25.0);
    // a table's mean of 13.2 V times 100 Ah, less the hundredth that may be missing at the start
    EXPECT_NEAR(watt_hours(middle, 0), 1307.0, 30.0);
}

// In so many of the members there is at least so much: less for a greater share.
TEST(fan, fewer_members_have_more) {
    const auto fan = sizing::fan_of(members_of("[[panel]]\npower = \"100 W\"\n"), 1.0 * hour);
    ASSERT_EQ(fan.at.size(), 11U);
    for (std::size_t share = 1; share < fan.stored.size(); ++share)
        for (std::size_t i = 0; i < fan.at.size(); ++i)
            EXPECT_GE(fan.stored[share][i], fan.stored[share - 1][i]) << share << " " << i;
    EXPECT_GT(fan.stored.back().back(), fan.stored.front().back());
}

TEST(fan, is_that_of_the_first_hundred_and_twenty_eight_members) {
    const auto few = sizing::fan_of(members_of("", 128), 5.0 * hour, 1);
    const auto many = sizing::fan_of(members_of("", 256), 5.0 * hour, 2);
    EXPECT_EQ(few.at, many.at);
    EXPECT_EQ(few.stored, many.stored);
}

}  // namespace
