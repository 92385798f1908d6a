#include "sizing/members_of.hpp"

#include <gtest/gtest.h>

#include "scenario/file/read.hpp"

namespace {

struct Asked {
    std::string lasts = "2 d";
    std::string more = "";
};

scenario::Scenario scenario_of(const Asked& asked) {
    const auto read = scenario::read_scenario(
        "format = 1\ntitle = \"Members\"\n[outage]\nstarts = 2026-03-05T18:00:00\nlasts = \"" +
            asked.lasts + R"("
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[[load]]
name = "pump"
from = "12V"
power = "60 W"
runs = { on = "10 min", every = "30 min" }
evidence = "label"
)" + asked.more,
        "members.toml", {});
    if (!read) throw std::runtime_error(read.error().front().where + read.error().front().found);
    return read->scenario;
}

std::shared_ptr<const outage::Ready> ready_of(const scenario::Scenario& scenario) {
    return std::make_shared<const outage::Ready>(outage::make_ready(scenario).value());
}

int blocks(const Asked& asked) {
    const auto scenario = scenario_of(asked);
    return sizing::usual_blocks(scenario, *ready_of(scenario));
}

TEST(members_of, two_hundred_and_fifty_six_and_twice_as_many_for_ninety_nine) {
    EXPECT_EQ(blocks({}), 4);
    EXPECT_EQ(blocks({.more = "medical = true\n"}), 8);
    EXPECT_EQ(blocks({.more = "[goal]\nchance = \"99 %\"\n"}), 8);
    EXPECT_EQ(blocks({.more = "[goal]\nchance = \"80 %\"\n"}), 4);
}

// Ninety-six switchings a day: 40 runs of 64 members are 30 million steps after 122 days, of 256
// after 30; the fraction is dropped.
TEST(members_of, fewer_where_an_outage_has_very_many_steps) {
    EXPECT_EQ(blocks({.lasts = "28 d"}), 4);
    EXPECT_EQ(blocks({.lasts = "55 d"}), 2);
    EXPECT_EQ(blocks({.lasts = "60 d"}), 2);
}

TEST(members_of, whole_blocks_of_as_many_as_are_asked_for) {
    const auto scenario = scenario_of({});
    const auto ready = ready_of(scenario);
    const auto count = [&](int wanted) {
        return sizing::members_of(scenario, {}, ready, 1, wanted).count();
    };
    EXPECT_EQ(count(1), 64);
    EXPECT_EQ(count(64), 64);
    EXPECT_EQ(count(65), 128);
    EXPECT_EQ(count(1024), 1024);
    EXPECT_EQ(sizing::members_of(scenario, {}, ready, 1).count(), 256);
}

// The same of a seed, whatever their number.
TEST(members_of, more_begin_with_the_same) {
    const auto scenario = scenario_of({});
    const auto ready = ready_of(scenario);
    const auto few = sizing::members_of(scenario, {}, ready, 7, 64);
    const auto many = sizing::members_of(scenario, {}, ready, 7, 256);
    const auto other = sizing::members_of(scenario, {}, ready, 8, 64);
    for (const int number : {0, 40, 63}) {
        EXPECT_TRUE(std::ranges::equal(few.values(number), many.values(number)));
        EXPECT_FALSE(std::ranges::equal(few.values(number), other.values(number)));
    }
}

}  // namespace
