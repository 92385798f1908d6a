#include "sizing/sun_return.hpp"

#include <gtest/gtest.h>

#include "outage/told/account.hpp"
#include "scenario/file/read.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;

chance::Members members_for(const std::string& pack, double load_watts, double degrees,
                            const std::string& more = "") {
    const std::string text = R"(format = 1
title = "Return"
[outage]
starts = 2026-06-05T06:00:00
lasts = "3 d"
cause = "unknown"
battery_temperature = ")" + std::to_string(degrees) +
                             R"( degC"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
capacity = "100 Ah"
)" + pack + R"(
[[panel]]
power = "100 W"
count = 2
[[load]]
name = "load"
from = "12V"
power = ")" + std::to_string(load_watts) +
                             " W\"\n" + more;
    const auto read = scenario::read_scenario(text, "return.toml", {});
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return sizing::members_of(
        read->scenario, {},
        std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value()), 1, 64);
}

// What the clock says of each member, summed by hand.
TEST(sun_return, the_shares_are_those_of_the_members_ledgers) {
    for (const std::string chemistry : {"lifepo4", "flooded"}) {
        const auto members = members_for("chemistry = \"" + chemistry + "\"", 15.0, 15.0);
        const auto sun = sizing::sun_return(members, 2);
        EXPECT_EQ(sun.members, 64);
        outage::Ledger sum;
        for (int number = 0; number < 64; ++number) {
            const auto lived = members.world().lived(members.values(number));
            outage::add(sum, members.world().run(lived, 1, lived.sun, {.trace = false}).ledger);
        }
        const auto near = [](Energy share, Energy of_all) {
            EXPECT_NEAR(share / watt_hour, of_all / watt_hour / 64.0, 1e-6);
        };
        near(sun.mean.used, sum.sun_used);
        near(sun.mean.stored, sum.sun_stored);
        near(sun.mean.lost, sum.charging_loss);
        near(sun.mean.full + sun.mean.too_cold, sum.sun_unused);
        near(sun.mean.clipped, sum.sun_clipped);
        near(sun.mean.offered(), sum.sun_offered);
        EXPECT_EQ(sun.mean.too_cold, Energy{});
        EXPECT_GT(sun.mean.full, 100.0 * watt_hour);  // 15 W take a quarter of it
        EXPECT_LE(sun.kept.low, sun.kept.likely);
        EXPECT_LE(sun.kept.likely, sun.kept.high);
        EXPECT_NEAR(sun.kept.mean / watt_hour, sun.mean.kept() / watt_hour, 1e-6);
        ASSERT_EQ(sun.days.size(), 4U);
        Energy taken{};
        for (const auto& of_day : sun.days)
            taken += of_day.taken.mean;
        EXPECT_NEAR(taken / watt_hour, (sun.mean.used + sun.mean.stored) / watt_hour, 1e-6);
    }
}

// Frozen lithium takes nothing: what is not used at once is lost, and is called by its name.
TEST(sun_return, what_the_cold_refuses_is_named) {
    const auto members = members_for("chemistry = \"lifepo4\"", 5.0, -8.0);
    const auto sun = sizing::sun_return(members, 2);
    EXPECT_EQ(sun.mean.stored, Energy{});
    EXPECT_EQ(sun.mean.full, Energy{});
    EXPECT_GT(sun.mean.too_cold, 5.0 * sun.mean.used);
    EXPECT_LT(sun.kept.high, 0.3 * sun.offered.likely);
}

// 5 W for 3 days are 360 Wh: no more can be used, whatever the panels offer.
TEST(sun_return, a_load_that_is_fed_at_once_is_all_that_is_used) {
    const auto members =
        members_for("chemistry = \"lifepo4\"", 5.0, -8.0, "evidence = \"metered\"\n");
    EXPECT_LT(sizing::sun_return(members, 2).mean.used, 360.0 * watt_hour);
}

TEST(sun_return, without_panels_nothing_comes_back) {
    const auto members = members_for("chemistry = \"lifepo4\"", 5.0, 15.0);
    const auto sun = sizing::sun_return(members, 0);
    EXPECT_EQ(sun.members, 0);
    EXPECT_EQ(sun.mean.offered(), Energy{});
    EXPECT_TRUE(sun.days.empty());
}

TEST(sun_return, is_the_same_for_any_number_of_threads) {
    const auto members = members_for("chemistry = \"agm\"", 15.0, 10.0);
    const auto one = sizing::sun_return(members, 3, 1);
    const auto three = sizing::sun_return(members, 3, 3);
    EXPECT_EQ(one.kept.low, three.kept.low);
    EXPECT_EQ(one.mean.lost, three.mean.lost);
    EXPECT_EQ(one.days.back().offered.high, three.days.back().offered.high);
}

}  // namespace
