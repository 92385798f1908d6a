// The fuses of the circuits to 12 V loads, in the clock.
#include <cmath>

#include <gtest/gtest.h>

#include "battery/cell/chemistry.hpp"
#include "outage/clock/clock.hpp"
#include "outage/parts.hpp"
#include "outage/plan.hpp"
#include "outage/ready.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;
using outage::EventKind;
using outage::LimitedBy;

outage::Unit unit_of_100_ampere_hours() {
    outage::Bank bank;
    bank.setup = {.kinetics = {.total = 100.0 * ampere_hour},
                  .open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4),
                  .inner = 0.010 * ohm,
                  .path = 0.002 * ohm};
    bank.rated = bank.usable = 100.0 * ampere_hour;
    return {.bank = bank};
}

// Bears 1.1 of its rating forever; opens at 1.35 of it after 60 s, at twice it after 2 s.
outage::MainFuse fuse_of(double amperes) {
    return {.rating = amperes * ampere,
            .opens = {{1.1, 360'000.0 * second, std::nullopt},
                      {1.35, 60.0 * second, std::nullopt},
                      {2.0, 2.0 * second, std::nullopt}}};
}

outage::DirectPart part(std::size_t load, std::vector<std::size_t> ways, Duration from,
                        double watts) {
    return {.load = load,
            .lowest = 10.5 * volt,
            .ways = std::move(ways),
            .draws = {{{}, Power{}, Power{}}, {from, watts * watt, watts * watt}}};
}

// All that is on from one hour on, for three hours; no wire resists anything.
outage::Course run(std::vector<outage::DirectPart> direct,
                   std::vector<std::optional<outage::MainFuse>> fuses) {
    outage::Parts parts{.direct = std::move(direct),
                        .ways = std::vector<Resistance>(fuses.size()),
                        .bus = 12.8 * volt,
                        .fuses = std::move(fuses),
                        .may_open = true};
    Power all{};
    for (const auto& one : parts.direct)
        all += one.draws.back().at_bus;
    const std::vector<demand::DemandStep> demand{
        {}, {.from = 1.0 * hour, .direct = all, .direct_useful = all}};
    return outage::run(unit_of_100_ampere_hours(), demand, {}, 3.0 * hour, 6.0 * hour, {}, nullptr,
                       &parts);
}

// 110 W at some 13.4 V are 8.2 A through 5 A: by the curve's points, on logarithmic scales,
// ln t = ln 60 + (ln 2 - ln 60) (ln r - ln 1.35)/(ln 2 - ln 1.35) at r times the rating.
TEST(branch_fuses, one_opens_by_its_own_curve_and_all_else_goes_on) {
    const auto course = run({part(0, {0}, 1.0 * hour, 110.0), part(1, {1}, 1.0 * hour, 5.0)},
                            {fuse_of(5.0), fuse_of(5.0)});
    EXPECT_EQ(course.limited_by, LimitedBy::fuse);
    ASSERT_EQ(course.events.size(), 1U);
    const auto& event = course.events.front();
    EXPECT_EQ(event.kind, EventKind::branch_fuse_opens);
    EXPECT_EQ(event.branch, 0U);
    const double amperes = event.current / ampere;
    EXPECT_NEAR(amperes, 110.0 / 13.4, 0.1);
    const double along = (std::log(amperes / 5.0) - std::log(1.35)) / std::log(2.0 / 1.35);
    const double opens = std::exp(std::log(60.0) + along * std::log(2.0 / 60.0));
    EXPECT_NEAR((course.lasts - 1.0 * hour) / second, opens, 0.03 * opens);
    ASSERT_EQ(course.out.size(), 1U);
    EXPECT_EQ(course.out.front().part, 0U);
    EXPECT_EQ(course.out.front().why, LimitedBy::fuse);
    EXPECT_EQ(course.out.front().to, 3.0 * hour);
    EXPECT_EQ(course.trace.back().served, 5.0 * watt);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
}

TEST(branch_fuses, one_that_bears_it_stays) {
    EXPECT_TRUE(run({part(0, {0}, 1.0 * hour, 110.0)}, {fuse_of(10.0)}).survives);
    EXPECT_TRUE(run({part(0, {0}, 1.0 * hour, 110.0)}, {std::nullopt}).survives);
}

// Of no known curve the rating counts, at once.
TEST(branch_fuses, of_an_unknown_family_the_rating_counts_at_once) {
    const auto course =
        run({part(0, {0}, 1.0 * hour, 110.0)}, {outage::MainFuse{.rating = 8.0 * ampere}});
    EXPECT_NEAR(course.lasts / second, 3600.0, 1e-3);
    EXPECT_TRUE(run({part(0, {0}, 1.0 * hour, 110.0)}, {outage::MainFuse{.rating = 9.0 * ampere}})
                    .survives);
}

// Two of 60 W, each behind 10 A of its own, both behind one of 6 A.
TEST(branch_fuses, what_hangs_on_a_circuit_counts_in_the_one_before_it) {
    const auto course = run({part(0, {0, 1}, 1.0 * hour, 60.0), part(1, {0, 2}, 1.0 * hour, 60.0)},
                            {fuse_of(6.0), fuse_of(10.0), fuse_of(10.0)});
    ASSERT_FALSE(course.events.empty());
    EXPECT_EQ(course.events.front().branch, 0U);
    EXPECT_EQ(course.out.size(), 2U);
    EXPECT_EQ(course.trace.back().served, Power{});
}

outage::Ready behind(const std::string& fuse) {
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
power = "100 W"
evidence = "metered"
hours = ["19:00-21:00"]
priority = 4
[[load]]
name = "lamp"
from = "12V"
power = "5 W"
priority = 2
[[circuit]]
name = "bed"
feeds = ["heater"]
links = [{fuse = ")" + fuse + R"(", family = "blade"}, {wire = "10 AWG", length = "5 ft"}]
)",
                                              "branch.toml");
    if (!read) throw std::runtime_error(words::in_english(read.error().front().found));
    return outage::make_ready(read->scenario).value();
}

TEST(branch_fuses, a_fuse_of_the_file_ends_the_promise_in_every_run) {
    const auto ready = behind("5 A");
    EXPECT_TRUE(ready.parts[1].may_open);
    const auto plan = outage::plan_outage(ready);
    EXPECT_EQ(plan.likely.limited_by, LimitedBy::fuse);
    EXPECT_GT(plan.likely.lasts, 1.0 * hour);
    EXPECT_LT(plan.likely.lasts, 1.1 * hour);
    ASSERT_EQ(plan.branch_names.size(), 1U);
    EXPECT_EQ(plan.branch_names.front(), "bed");
    // more packs hold the voltage and so the current, no more
    for (const auto& more : plan.more_packs)
        EXPECT_FALSE(more.survives);
    ASSERT_EQ(plan.ladder.size(), 2U);
    EXPECT_TRUE(plan.ladder.front().survives);  // the lamp alone
    EXPECT_FALSE(plan.ladder.back().survives);
    EXPECT_FALSE(behind("15 A").parts[1].may_open);
    EXPECT_TRUE(outage::plan_outage(behind("15 A")).likely.survives);
}

}  // namespace
