#include "questions/shared/outage_starts.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "outage/plan.hpp"
#include "scenario/file/read.hpp"

namespace {

using testing::IsEmpty;

// Two flooded batteries that a lamp empties: the pump starts while they are full.
std::string emptied(const char* packs, const char* charge, const char* resistance = "3 mohm",
                    const char* lamp = "60 W") {
    return std::string(R"(
format = 1
title = "Pump on falling packs"
[outage]
starts = 2026-06-03T06:00:00
lasts = "30 h"
battery_temperature = "25 degC"
[[pack]]
name = "wet"
chemistry = "flooded"
capacity = "225 Ah"
voltage = "12 V"
usable = "90 %"
count = )") +
           packs + "\ncharge = \"" + charge + "\"\nresistance = \"" + resistance + R"("
[inverter]
continuous = "3000 W"
surge = "6000 W"
surge_lasts = "5 s"
cutoff_voltage = "10.5 V"
cutoff_delay = "0 s"
[[load]]
name = "pump"
power = "500 W"
evidence = "metered"
runs = {on = "1 min", every = "1 h"}
motor = {kind = "split_phase", horsepower = "1/3 hp", locked_rotor_current = "29 A"}
[[load]]
name = "lamp"
power = ")" +
           lamp + R"("
evidence = "metered"
)";
}

outage::Plan plan_of(const std::string& text) {
    const auto read = scenario::read_scenario(text, "test", {});
    EXPECT_TRUE(read);
    const auto plan = outage::plan_outage(read->scenario);
    EXPECT_TRUE(plan);
    return *plan;
}

questions::OutageStarts starts_of(const std::string& text,
                                  const std::vector<sizing::StartState>& members = {}) {
    const auto read = scenario::read_scenario(text, "test", {});
    return questions::starts_of_outage(read->scenario, plan_of(text), members);
}

TEST(outage_starts, a_motor_that_always_starts_has_no_story) {
    EXPECT_THAT(starts_of(emptied("6", "100 %")).stories, IsEmpty());
}

// Its pump is switched on every hour of 30 h: 30 starts, while there is supply.
TEST(outage_starts, a_motor_that_fails_once_the_packs_are_low_has_a_last_good_start) {
    const auto found = starts_of(emptied("2", "100 %", "7 mohm", "100 W"));
    ASSERT_EQ(found.stories.size(), 1U);
    const auto& story = found.stories.front();
    EXPECT_EQ(story.load, 0U);
    EXPECT_LE(story.starts, 30);
    ASSERT_TRUE(story.last_good && story.first_failed);
    EXPECT_FALSE(story.good_after_failure);
    EXPECT_NEAR((story.first_failed->moment.start.at - story.last_good->start.at) / units::hour,
                1.0, 1e-9);
    EXPECT_EQ(story.first_failed->judged.verdict, starting::StartVerdict::will_not_start);
    // Each that failed came after each that did not.
    EXPECT_LT(story.last_good->start.at, double(story.starts - story.failed) * units::hour);
    EXPECT_GE(story.last_good->start.at, double(story.starts - story.failed - 1) * units::hour);
}

TEST(outage_starts, a_motor_that_never_starts_has_no_good_start) {
    const auto found = starts_of(emptied("1", "40 %"));
    ASSERT_EQ(found.stories.size(), 1U);
    const auto& story = found.stories.front();
    EXPECT_FALSE(story.last_good);
    EXPECT_EQ(story.failed, story.starts);
    EXPECT_LT(story.first_failed->moment.start.at, 1.0 * units::hour);
}

// A generator gives 200 Ah on the second morning.
TEST(outage_starts, a_motor_that_starts_again_after_a_charge_is_good_after_a_failure) {
    const std::string recharged = R"([[charger]]
name = "garden charger"
kind = "generator"
current = "100 A"
hours = ["09:00-11:00"]
days = [2]
)";
    const auto found = starts_of(emptied("2", "100 %", "7 mohm", "100 W") + recharged);
    ASSERT_EQ(found.stories.size(), 1U);
    EXPECT_TRUE(found.stories.front().good_after_failure);
}

// From the third start on the members stand lower than the likely course: by nothing at their
// high end and by 2.5 V, at which 12 V packs start nothing, at their low end. 30 starts less two.
TEST(outage_starts, members_that_stand_lower_put_starts_in_doubt) {
    const auto text = emptied("6", "100 %");
    const auto plan = plan_of(text);
    ASSERT_EQ(plan.starts.size(), 30U);
    const auto lower = [&](double low, double high) {
        std::vector<sizing::StartState> states;
        for (std::size_t i = 0; i < plan.starts.size(); ++i) {
            const auto& start = plan.starts[i];
            const double off = i < 2 ? 0.0 : 1.0;
            states.push_back({.members = 64,
                              .low = start.rested - off * low * units::volt,
                              .middle = start.rested - off * high * units::volt,
                              .high = start.rested - off * high * units::volt,
                              .charge = start.charge});
        }
        return starts_of(text, states).stories;
    };
    EXPECT_THAT(lower(0.0, 0.0), IsEmpty());
    const auto in_doubt = lower(2.5, 0.0);
    ASSERT_EQ(in_doubt.size(), 1U);
    EXPECT_EQ(in_doubt[0].doubtful, 28);
    EXPECT_EQ(in_doubt[0].failed, 0);
    EXPECT_EQ(in_doubt[0].first_doubtful->moment.start.at, plan.starts[2].at);
    const auto fails = lower(2.5, 2.5);
    ASSERT_EQ(fails.size(), 1U);
    EXPECT_EQ(fails[0].failed, 28);
    EXPECT_EQ(fails[0].last_good->start.at, plan.starts[1].at);
}

}  // namespace
