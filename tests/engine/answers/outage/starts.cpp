#include "answers/outage/starts.hpp"

#include <gmock/gmock.h>

#include <gtest/gtest.h>

namespace {

using namespace questions;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using units::volt;

// A pump, from Wednesday 3 June 2026 06:00 on.
scenario::Scenario with_a_pump() {
    scenario::Scenario scenario;
    scenario.outage.starts = *units::read_local_time("2026-06-03T06:00");
    scenario.loads = {{.name = "lamp"}, {.name = "pump"}};
    return scenario;
}

// So many hours after that, the packs half full at 12.1 V, and as far above and below.
StartMoment after(double hours, double above_and_below = 0.0) {
    StartMoment moment;
    moment.start.at = hours * units::hour;
    moment.packs = {.members = 64,
                    .low = (12.1 - above_and_below) * volt,
                    .middle = 12.1 * volt,
                    .high = (12.1 + above_and_below) * volt,
                    .charge = units::StateOfCharge(0.5)};
    return moment;
}

JudgedStart judged(const StartMoment& moment) {
    return {moment, {.binding = starting::Constraint::voltage_class}};
}

const std::string why = "it is not made for the voltage of this unit";

answers::PinnedFinding told(const StartStory& story) {
    const auto findings = answers::outage_start_findings(with_a_pump(), {.stories = {story}});
    EXPECT_EQ(findings.size(), 1U);
    return findings.front();
}

TEST(outage_start_words, motors_that_start_are_not_worth_a_finding) {
    EXPECT_THAT(answers::outage_start_findings(with_a_pump(), {}), IsEmpty());
}

TEST(outage_start_words, one_that_never_starts_is_a_stop_from_the_first_time_on) {
    const auto pinned =
        told({.load = 1, .starts = 3, .failed = 3, .first_failed = judged(after(0.0))});
    EXPECT_EQ(pinned.finding.severity, scenario::Severity::stop);
    EXPECT_EQ(pinned.finding.where, "load pump");
    EXPECT_EQ(pinned.finding.text, "Does not start, not even the first time: " + why + ".");
    EXPECT_FALSE(pinned.finding.mend.empty());
}

// 06:00 and 20 h are 02:00 of the day after Wednesday, and an hour less is 01:00.
TEST(outage_start_words, one_that_starts_until_the_packs_are_low_says_until_when) {
    const auto pinned = told({.load = 1,
                              .starts = 24,
                              .failed = 4,
                              .last_good = after(19.0),
                              .first_failed = judged(after(20.0))});
    EXPECT_EQ(pinned.finding.text,
              "Starts until Thursday 01:00, then no longer: when the packs are at 50 % and "
              "12.1 V, " +
                  why + ".");
    EXPECT_EQ(pinned.when, "Thursday 02:00");
    EXPECT_EQ(pinned.at, 20.0 * units::hour);
}

TEST(outage_start_words, one_that_starts_again_later_counts_its_failures) {
    const auto pinned = told({.load = 1,
                              .starts = 24,
                              .failed = 4,
                              .last_good = after(19.0),
                              .first_failed = judged(after(20.0)),
                              .good_after_failure = true});
    EXPECT_THAT(pinned.finding.text,
                HasSubstr("Does not start 4 of 24 times, the first on Thursday 02:00: when"));
}

TEST(outage_start_words, doubt_is_a_caution_with_how_far_apart_the_members_stand) {
    const auto pinned =
        told({.load = 1, .starts = 24, .doubtful = 4, .first_doubtful = judged(after(20.0, 0.4))});
    EXPECT_EQ(pinned.finding.severity, scenario::Severity::caution);
    EXPECT_THAT(pinned.finding.text,
                HasSubstr("In doubt at 4 of 24 starts, the first on Thursday 02:00: when the packs "
                          "are at 50 % and 12.1 V (11.7 V to 12.5 V four times in five), "));
}

TEST(outage_start_words, a_plate_that_cannot_be_used_leaves_it_unknown) {
    const auto findings = answers::outage_start_findings(
        with_a_pump(),
        {.not_known = {{.where = "load[1].motor.voltage", .found = "24 V", .remedy = "say 12 V"}}});
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].finding.severity, scenario::Severity::caution);
    EXPECT_EQ(findings[0].finding.text, "Whether motors start is not known: 24 V.");
    EXPECT_EQ(findings[0].finding.mend, "say 12 V");
}

}  // namespace
