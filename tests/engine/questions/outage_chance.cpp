#include "questions/shared/outage_chance.hpp"

#include <memory>

#include "file_of.hpp"

#include "outage/ready.hpp"
#include "sizing/members_of.hpp"

namespace {

using questions::OutageChance;
using units::hour;

enum class More { looked_for, left_out };

OutageChance chance_of(const std::string& text, More more = More::looked_for) {
    const auto read = file_of::text(text);
    const auto ready =
        std::make_shared<const outage::Ready>(outage::make_ready(read.scenario, "").value());
    const auto members = sizing::members_of(read.scenario, "", ready, 1, 64);
    return more == More::looked_for
               ? questions::chance_of_outage(read.scenario, members, {}, 1)
               : questions::first_chance_of_outage(read.scenario, members, {}, 1);
}

std::string lamp_for_a_day(const std::string& power) {
    return file_of::outage("1 d", file_of::warm) + file_of::a_pack + file_of::load("lamp", power);
}

// 24 h of 10 W are 240 Wh of 1280 Wh.
TEST(outage_chance, a_fifth_of_a_pack_lasts_in_every_member) {
    const auto told = chance_of(lamp_for_a_day("10 W"));
    EXPECT_EQ(told.figures.of.value(), 1.0);
    EXPECT_EQ(told.figures.members, 64);
    EXPECT_EQ(told.limits, outage::LimitedBy::none);
    EXPECT_EQ(told.packs, 1);
    EXPECT_FALSE(told.more);
    EXPECT_FALSE(told.sun);
    EXPECT_FALSE(told.one_year);
    ASSERT_TRUE(told.fan);
    EXPECT_TRUE(told.bad.survives);
}

// 24 h of 200 W are 4.8 kWh: one pack of 1.28 kWh is empty after 6.4 h at most, however frugal the
// member; with four packs 5.12 kWh are at hand and some members last.
TEST(outage_chance, a_quarter_of_what_is_asked_for_lasts_in_none_and_more_packs_help) {
    const auto told = chance_of(lamp_for_a_day("200 W"));
    EXPECT_EQ(told.figures.of.value(), 0.0);
    EXPECT_EQ(told.limits, outage::LimitedBy::usable);  // as far down as is usual
    EXPECT_EQ(told.limits_at_once, outage::LimitedBy::none);
    EXPECT_LT(told.bad.lasts, told.good.lasts);
    EXPECT_LT(told.bad.lasts, 6.4 * hour);
    ASSERT_TRUE(told.more);
    EXPECT_GE(told.more->more, 3);
    EXPECT_FALSE(chance_of(lamp_for_a_day("200 W"), More::left_out).more);
}

// An inverter for 500 W does not bear 2 kW for a moment.
TEST(outage_chance, what_ends_at_once_is_told_apart_from_what_ends_early) {
    const auto told = chance_of(file_of::outage("1 d", file_of::warm) + file_of::a_pack +
                                "[inverter]\ncontinuous = \"500 W\"\n" +
                                file_of::load("heater", "2 kW", "priority = 1\n"));
    EXPECT_EQ(told.limits_at_once, outage::LimitedBy::inverter_limit);
    EXPECT_EQ(told.figures.at_once.value(), 1.0);
}

}  // namespace
