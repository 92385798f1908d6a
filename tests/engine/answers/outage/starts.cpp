#include "answers/outage/starts.hpp"

#include <algorithm>
#include <string_view>

#include "outage/plan.hpp"
#include "scenario/read.hpp"

namespace {

using testing::HasSubstr;
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

std::vector<answers::PinnedFinding> findings_of(const std::string& text) {
    const auto read = scenario::read_scenario(text, "test", {});
    EXPECT_TRUE(read);
    const auto plan = outage::plan_outage(read->scenario);
    EXPECT_TRUE(plan);
    return answers::outage_start_findings(read->scenario, *plan);
}

TEST(outage_starts, a_motor_that_always_starts_is_not_worth_a_finding) {
    EXPECT_THAT(findings_of(emptied("6", "100 %")), IsEmpty());
}

TEST(outage_starts, a_motor_that_starts_until_the_packs_are_low_says_until_when) {
    const auto findings = findings_of(emptied("2", "100 %"));
    ASSERT_FALSE(findings.empty());
    const auto& finding = findings.front().finding;
    EXPECT_EQ(finding.where, "load pump");
    EXPECT_THAT(finding.text, HasSubstr("the packs stand at"));
    EXPECT_TRUE(findings.front().at.has_value());
}

const answers::PinnedFinding* about(const std::vector<answers::PinnedFinding>& findings,
                                    std::string_view words) {
    const auto found = std::ranges::find_if(findings, [&](const auto& pinned) {
        return pinned.finding.text.find(words) != std::string::npos;
    });
    return found == findings.end() ? nullptr : &*found;
}

const std::string recharged = R"([[charger]]
name = "garden charger"
kind = "generator"
current = "100 A"
hours = ["09:00-11:00"]
days = [2]
)";

TEST(outage_starts, a_motor_that_never_starts_is_a_stop_from_the_first_time_on) {
    const auto findings = findings_of(emptied("1", "40 %"));
    const auto* found = about(findings, "Does not start, not even the first time: ");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, scenario::Severity::stop);
    EXPECT_EQ(found->finding.where, "load pump");
    EXPECT_FALSE(found->finding.mend.empty());
}

TEST(outage_starts, a_motor_that_fails_once_the_packs_are_low_is_a_stop_with_the_last_good_time) {
    const auto findings = findings_of(emptied("2", "100 %", "7 mohm", "100 W"));
    const auto* found = about(findings, "Starts until ");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, scenario::Severity::stop);
    EXPECT_THAT(found->finding.text, HasSubstr(", then no longer: when the packs stand at "));
    EXPECT_FALSE(found->when.empty());
}

// A generator fills the packs again on the second morning.
TEST(outage_starts, a_motor_that_starts_again_after_a_charge_is_a_stop_that_counts_its_failures) {
    const auto findings = findings_of(emptied("2", "100 %", "7 mohm", "100 W") + recharged);
    const auto* found = about(findings, "Does not start ");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, scenario::Severity::stop);
    EXPECT_THAT(found->finding.text, HasSubstr(" times, first "));
}

// Two volts below the likely course nothing starts; half of the members are there.
TEST(outage_starts, members_that_stand_lower_put_starts_in_doubt) {
    const auto read = scenario::read_scenario(emptied("6", "100 %"), "test", {});
    ASSERT_TRUE(read);
    const auto plan = outage::plan_outage(read->scenario);
    ASSERT_TRUE(plan);
    ASSERT_GT(plan->starts.size(), 3u);
    const auto lower = [&](double low, double high, std::size_t from) {
        std::vector<sizing::StartState> states;
        for (std::size_t i = 0; i < plan->starts.size(); ++i) {
            const auto& start = plan->starts[i];
            const double off = i < from ? 0.0 : 1.0;
            states.push_back({.members = 64,
                              .low = start.rested - off * low * units::volt,
                              .middle = start.rested - off * high * units::volt,
                              .high = start.rested - off * high * units::volt,
                              .charge = start.charge});
        }
        return answers::outage_start_findings(read->scenario, *plan, states);
    };
    EXPECT_THAT(lower(0.0, 0.0, 0), IsEmpty());
    const auto in_doubt = lower(2.5, 0.0, 2);
    ASSERT_EQ(in_doubt.size(), 1u);
    EXPECT_EQ(in_doubt[0].finding.severity, scenario::Severity::caution);
    EXPECT_THAT(in_doubt[0].finding.text,
                HasSubstr(fmt::format("May or may not start {} of {} times",
                                      plan->starts.size() - 2, plan->starts.size())));
    EXPECT_THAT(in_doubt[0].finding.text, HasSubstr(" four times in five)"));
    const auto fails = lower(2.5, 2.5, 2);
    ASSERT_FALSE(fails.empty());
    EXPECT_EQ(fails[0].finding.severity, scenario::Severity::stop);
    EXPECT_THAT(fails[0].finding.text, HasSubstr("Starts until "));
}

}  // namespace
