#include "outage/clock/branches.hpp"

#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;

// 24 W behind 0.5 ohm at 13 V: I^2 0.5 - 13 I + 24 = 0, I = 2.0 A: 2 W lost, 12 V at the load.
TEST(branches, a_load_of_constant_power_draws_more_behind_a_wire) {
    const auto end = outage::at_end_of(0.5 * ohm, 13.0 * volt, 24.0 * watt);
    EXPECT_TRUE(end.possible);
    EXPECT_NEAR(end.lost / watt, 2.0, 1e-12);
    EXPECT_NEAR(end.at_load / volt, 12.0, 1e-12);
    // the most that 13 V give behind 0.5 ohm is 13^2/(4 x 0.5) = 84.5 W
    EXPECT_TRUE(outage::at_end_of(0.5 * ohm, 13.0 * volt, 84.4 * watt).possible);
    EXPECT_FALSE(outage::at_end_of(0.5 * ohm, 13.0 * volt, 84.6 * watt).possible);
    EXPECT_EQ(outage::at_end_of({}, 13.0 * volt, 24.0 * watt).lost, Power{});
}

outage::Ready with_wire(const std::string& wire) {
    const auto read = scenario::read_scenario(R"(
format = 1
title = "branch"
[outage]
starts = 2026-01-14T18:00:00
lasts = "4 h"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
[[load]]
name = "heater"
from = "12V"
power = "64 W"
hours = ["19:00-21:00"]
[[circuit]]
name = "bed"
feeds = ["heater"]
links = [{fuse = "10 A", resistance = "0 mohm"}, )" +
                                                  wire + "]\njoints = \"0 mohm\"\n",
                                              "branch.toml");
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return outage::make_ready(read->scenario).value();
}

// 18 AWG, 10 ft there and back: 20 ft x 7.95 ohm/1,000 ft = 159 mohm at 75 degC [NEC] chapter 9
// table 8; 64 W at 12.8 V behind it are 5.36 A: 4.56 W lost, for two hours.
TEST(branches, what_a_wire_takes_is_lost_in_wiring_and_drawn_at_the_bus) {
    const auto ready = with_wire(R"({wire = "18 AWG", length = "10 ft", insulation = "105 degC"})");
    const auto course = outage::run(ready, outage::End::likely);
    const auto& steps = ready.steps[1];
    ASSERT_EQ(steps.size(), 3U);
    EXPECT_EQ(steps[0].in_branches, Power{});
    const double amperes = (12.8 - std::sqrt(12.8 * 12.8 - 4.0 * 0.159 * 64.0)) / (2.0 * 0.159);
    EXPECT_NEAR(steps[1].in_branches / watt, 0.159 * amperes * amperes, 0.02);
    EXPECT_EQ(steps[2].in_branches, Power{});
    EXPECT_NEAR(course.ledger.loads / (watt * hour), 128.0, 1e-6);
    EXPECT_NEAR((course.ledger.wiring_loss / (watt * hour)),
                2.0 * (0.159 * amperes * amperes + 0.002 * 5.3 * 5.3), 0.05);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
}

TEST(branches, too_thin_a_wire_is_told) {
    const auto told = [](const std::string& wire) {
        const auto ready = with_wire(wire);
        const auto found = std::ranges::find_if(
            ready.findings, [](const auto& finding) { return finding.where == "circuit bed"; });
        return found == ready.findings.end() ? scenario::Severity::note : found->severity;
    };
    EXPECT_EQ(told(R"({wire = "10 AWG", length = "10 ft"})"), scenario::Severity::note);
    EXPECT_EQ(told(R"({wire = "18 AWG", length = "30 ft"})"), scenario::Severity::caution);
    EXPECT_EQ(told(R"({wire = "18 AWG", length = "60 ft"})"), scenario::Severity::stop);
}

}  // namespace
