#include "outage/told/freezing_findings.hpp"

#include <gtest/gtest.h>

#include "outage/plan.hpp"

namespace {

using scenario::Chemistry;
using scenario::Severity;
using units::celsius;
using units::day;
using units::Duration;
using units::hour;
using units::StateOfCharge;
using units::watt;

const units::LocalTime at_six = units::LocalTime(20'000.0 * day + 18.0 * hour);

// From full to empty in 20 h, 5 % each hour.
outage::Course emptying() {
    outage::Course course;
    course.trace.push_back({.at = {}, .charge = StateOfCharge(1.0)});
    for (int i = 0; i < 20; ++i)
        course.intervals.push_back({.from = static_cast<double>(i) * hour,
                                    .to = (i + 1.0) * hour,
                                    .charge = StateOfCharge(0.95 - 0.05 * i)});
    return course;
}

scenario::Findings found(Chemistry chemistry, double degrees) {
    return outage::freezing_findings({.where = "pack main",
                                      .chemistry = chemistry,
                                      .warmth = {{.from = {}, .temperature = celsius(degrees)}}},
                                     emptying(), at_six);
}

// Flooded freezes below 32.8 % at -12 degC: (100 - 32.8)/5 = 13.44 h after 18:00, at 07:26.
TEST(freezing_findings, a_flooded_pack_drawn_empty_in_the_cold_stops_with_its_time) {
    const auto findings = found(Chemistry::flooded, -12.0);
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].severity, Severity::stop);
    EXPECT_NE(in_english(findings[0].text).find("freezes below 33 %"), std::string::npos)
        << findings[0].text;
    EXPECT_NE(in_english(findings[0].text).find("07:26"), std::string::npos) << findings[0].text;
}

// At -1 degC even an empty one stays liquid; below 60 %, 8 h after 18:00, it is worth a word.
TEST(freezing_findings, near_it_is_a_caution) {
    const auto findings = found(Chemistry::flooded, -1.0);
    ASSERT_EQ(findings.size(), 1u);
    EXPECT_EQ(findings[0].severity, Severity::caution);
    EXPECT_NE(in_english(findings[0].text).find("02:00"), std::string::npos) << findings[0].text;
}

TEST(freezing_findings, neither_in_the_warm_nor_of_lithium) {
    EXPECT_TRUE(found(Chemistry::flooded, 1.0).empty());
    EXPECT_TRUE(found(Chemistry::lifepo4, -20.0).empty());
}

TEST(freezing_findings, of_an_outage_stand_in_its_plan) {
    scenario::Scenario scenario;
    scenario.outage.starts = at_six;
    scenario.outage.lasts = 30.0 * hour;
    scenario.outage.battery_temperature = celsius(-12.0);
    scenario.packs = {{.name = "main",
                       .chemistry = Chemistry::flooded,
                       .capacity = 100.0 * units::ampere_hour,
                       .usable = units::Share(1.0)}};
    scenario::Load lamp;
    lamp.name = "lamp";
    lamp.from = scenario::Outlet::twelve_volt;
    lamp.draw = scenario::StatedPower{50.0 * watt};
    scenario.loads = {lamp};
    const auto plan = outage::plan_outage(scenario, ".").value();
    EXPECT_TRUE(std::ranges::any_of(plan.findings, [](const scenario::Finding& finding) {
        return in_english(finding.text).find("freez") != std::string::npos;
    }));
}

}  // namespace
