// What one pack may give and take, for every question alike.
#include "unit/limits.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

using namespace units;
using ::unit::Flow;
using ::unit::Limiter;
using ::unit::Origin;

::unit::Unit of(const std::string& more) {
    const auto made = scenario::read_scenario(R"(format = 1
title = "two"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
fuse = "80 A"
[[pack]]
name = "plugged in"
current_limit = "60 A"
connector = "40 A"
[[circuit]]
name = "lead"
feeds = ["plugged in"]
links = [{fuse = "70 A", family = "maxi blade"}, {switch = "50 A"}, {wire = "4 AWG", length = "2 ft"}]
)" + more,
                                              "limits.toml");
    if (!made) throw std::runtime_error(words::in_english(made.error().front().found));
    return ::unit::built(made->scenario, ::unit::usual_warmth(made->scenario)).value();
}

double amperes(const ::unit::Limits& limits, Limiter by) {
    const auto* found = ::unit::find(limits, by);
    return found == nullptr ? -1.0 : double(found->most.value / ampere);
}

TEST(limits, of_a_pack_are_those_of_its_own_lead) {
    const auto made = of("");
    const auto main = ::unit::limits_of(made.packs[0], Flow::out_of_pack);
    EXPECT_NEAR(amperes(main, Limiter::fuse), 80.0, 1e-9);
    EXPECT_EQ(::unit::find(main, Limiter::connector), nullptr);
    EXPECT_EQ(::unit::find(main, Limiter::contact), nullptr);
    EXPECT_TRUE(::unit::find(main, Limiter::protection)->most.assumed());
    const auto other = ::unit::limits_of(made.packs[1], Flow::out_of_pack);
    EXPECT_NEAR(amperes(other, Limiter::protection), 60.0, 1e-9);
    EXPECT_EQ(::unit::find(other, Limiter::protection)->most.origin, Origin::key);
    EXPECT_NEAR(amperes(other, Limiter::fuse), 70.0, 1e-9);
    EXPECT_FALSE(::unit::find(other, Limiter::fuse)->guard->opens.empty());
    EXPECT_NEAR(amperes(other, Limiter::connector), 40.0, 1e-9);
    EXPECT_NEAR(amperes(other, Limiter::contact), 50.0, 1e-9);
}

TEST(limits, protection_bounds_what_leaves_and_the_charge_limit_what_enters) {
    const auto made = of("");
    for (const auto& packs : made.packs) {
        const auto gives = ::unit::limits_of(packs, Flow::out_of_pack);
        const auto takes = ::unit::limits_of(packs, Flow::into_pack);
        EXPECT_EQ(::unit::find(gives, Limiter::charging), nullptr);
        EXPECT_EQ(::unit::find(takes, Limiter::protection), nullptr);
        EXPECT_NE(::unit::find(takes, Limiter::charging), nullptr);
        for (const auto by : {Limiter::fuse, Limiter::connector, Limiter::contact})
            EXPECT_EQ(amperes(gives, by), amperes(takes, by));
    }
}

}  // namespace
