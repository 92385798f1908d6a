#include "estimate/outlook.hpp"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <limits>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "estimate/likelihood.hpp"
#include "estimate/lives.hpp"
#include "estimate/weights.hpp"
#include "outage/clock.hpp"
#include "scenario/read.hpp"
#include "sizing/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"
#include "units/clock.hpp"

namespace {

using namespace units;
using estimate::Outlook;
using estimate::Sure;

// Two days and a half on three packs; 100 W and 60 W through an inverter, and a lamp.
constexpr std::string_view plan = R"(format = 1
[outage]
starts = 2026-01-14T18:00:00
lasts = "60 h"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
voltage = "12.8 V"
charge = "100 %"
[[pack]]
name = "expansion"
count = 2
[inverter]
continuous = "1000 W"
idle = "10 W"
[[load]]
name = "freezer"
label = "440 kWh/yr"
evidence = "label"
priority = 2
[[load]]
name = "blower"
power = "30 W"
evidence = "guess"
priority = 3
[[load]]
name = "breathing machine"
from = "12V"
power = "12 W"
evidence = "metered"
medical = true
priority = 1
)";

scenario::Scenario with(std::string_view log) {
    const auto read = scenario::read_scenario(std::string(plan) + std::string(log), "plan.toml");
    if (!read) {
        for (const auto& error : read.error())
            ADD_FAILURE() << units::print(error);
        return {};
    }
    return read->scenario;
}

std::shared_ptr<const outage::Ready> ready_of(const scenario::Scenario& scenario) {
    auto ready = outage::make_ready(scenario);
    EXPECT_TRUE(ready.has_value());
    return std::make_shared<const outage::Ready>(std::move(*ready));
}

Outlook outlook(std::string_view log, const char* now, bool steps = false, unsigned threads = 0) {
    const auto scenario = with(log);
    const auto made = estimate::outlook_of(
        scenario, "", ready_of(scenario),
        {.now = *units::read_local_time(now), .threads = threads, .steps = steps});
    EXPECT_TRUE(made.has_value());
    return made ? *made : Outlook{};
}

void expect_same(const chance::Figures& one, const chance::Figures& other) {
    EXPECT_EQ(one.of, other.of);
    EXPECT_EQ(one.low, other.low);
    EXPECT_EQ(one.high, other.high);
    EXPECT_EQ(one.members, other.members);
    EXPECT_EQ(one.nine_in_ten, other.nine_in_ten);
    EXPECT_EQ(one.half, other.half);
    EXPECT_EQ(one.one_in_ten, other.one_in_ten);
    EXPECT_EQ(one.count_on, other.count_on);
}

void expect_in_order(const Outlook& found) {
    EXPECT_LE(found.figures.nine_in_ten, found.figures.half);
    EXPECT_LE(found.figures.half, found.figures.one_in_ten);
    EXPECT_LE(found.charge_low, found.charge_likely);
    EXPECT_LE(found.charge_likely, found.charge_high);
    EXPECT_LE(found.figures.effective, double(found.figures.members) * (1.0 + 1e-9));
}

constexpr const char* start = "2026-01-14T18:00:00";
constexpr const char* next_noon = "2026-01-15T12:00:00";

std::string shows(const char* at, int percent) {
    return fmt::format("[[log]]\nat = {}\nshows = \"{} %\"\n", at, percent);
}

std::string meter(const char* load, const char* energy) {
    return fmt::format(
        "[[log]]\nat = 2026-01-15T12:00:00\nload = \"{}\"\nmetered = {{ energy = \"{}\", over = "
        "\"18 h\" }}\n",
        load, energy);
}

TEST(outlook, an_empty_log_gives_the_outage_to_the_last_bit) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 1);
    const auto figures =
        members.figures(sizing::MemberRuns(members).ends(), sizing::goal_of(scenario));
    const auto found = outlook("", start);
    expect_same(found.figures, figures);
    EXPECT_TRUE(found.fits);
    EXPECT_TRUE(found.departures.empty());
    EXPECT_EQ(found.readings, 0);
}

TEST(outlook, any_number_of_threads_gives_the_same_bits) {
    const auto log = shows("2026-01-15T06:00:00", 70) + shows("2026-01-15T11:00:00", 55);
    expect_same(outlook(log, next_noon, false, 1).figures,
                outlook(log, next_noon, false, 3).figures);
}

TEST(outlook, the_order_of_entries_and_an_entry_written_twice_change_nothing) {
    const auto a = shows("2026-01-15T06:00:00", 72);
    const auto b = shows("2026-01-15T11:00:00", 60);
    const auto one = outlook(a + b, next_noon);
    expect_same(one.figures, outlook(b + a, next_noon).figures);
    expect_same(one.figures, outlook(a + b + a, next_noon).figures);
    expect_in_order(one);
}

TEST(outlook, what_is_written_after_now_is_not_known_yet) {
    const auto early = shows("2026-01-15T06:00:00", 72);
    expect_same(outlook(early, next_noon).figures,
                outlook(early + shows("2026-01-15T18:00:00", 10), next_noon).figures);
}

TEST(outlook, a_reading_moves_the_end_towards_it_and_narrows) {
    const auto none = outlook("", next_noon);
    const auto low = outlook(shows("2026-01-15T11:00:00", 45), next_noon);
    const auto high = outlook(shows("2026-01-15T11:00:00", 68), next_noon);
    EXPECT_LT(low.figures.half, none.figures.half);
    EXPECT_GT(high.figures.half, low.figures.half);
    EXPECT_LT(low.width, none.width);
    for (const auto* found : {&none, &low, &high})
        expect_in_order(*found);
}

TEST(outlook, a_voltage_under_a_load_says_something_and_on_the_plateau_little) {
    const auto none = outlook("", next_noon);
    const auto plateau = outlook(
        "[[log]]\nat = 2026-01-15T11:00:00\nreads = \"13.1 V\"\nunder = \"150 W\"\n", next_noon);
    EXPECT_FALSE(plateau.contradiction.has_value());
    EXPECT_GT(plateau.width, 0.5 * none.width);
    expect_in_order(plateau);
}

TEST(outlook, a_reading_that_cannot_be_is_said_and_not_averaged) {
    const auto none = outlook("", next_noon);
    const auto odd = outlook(shows("2026-01-14T19:00:00", 5), next_noon);
    ASSERT_TRUE(odd.contradiction.has_value());
    EXPECT_EQ(odd.contradiction->odd, std::vector<std::size_t>{0});
    EXPECT_NEAR(odd.width / none.width, 1.0, 0.25);
    // Beside two that agree the odd one is named.
    const auto one_of = outlook(shows("2026-01-15T06:00:00", 72) + shows("2026-01-15T08:00:00", 5) +
                                    shows("2026-01-15T11:00:00", 60),
                                next_noon);
    ASSERT_TRUE(one_of.contradiction.has_value());
    EXPECT_TRUE(one_of.contradiction->one_of_them);
    EXPECT_EQ(one_of.contradiction->odd, std::vector<std::size_t>{1});
}

TEST(outlook, a_meter_says_surely_what_the_charge_alone_cannot) {
    // The plan has 50 W: 0.9 kWh in 18 h.
    const auto planned = outlook(meter("freezer", "0.91 kWh"), next_noon);
    EXPECT_TRUE(planned.fits);
    const auto hungry = outlook(meter("freezer", "1.9 kWh"), next_noon);
    ASSERT_EQ(hungry.departures.size(), 1U);
    EXPECT_EQ(hungry.departures.front().what, "what freezer draws");
    EXPECT_EQ(hungry.departures.front().sure, Sure::surely);
    EXPECT_GT(hungry.departures.front().low, 1.0);
    EXPECT_LT(hungry.figures.half, planned.figures.half);
}

TEST(outlook, what_the_readings_cannot_tell_apart_is_one_of_these) {
    const auto low =
        outlook(shows("2026-01-15T06:00:00", 48) + shows("2026-01-15T11:00:00", 30), next_noon);
    EXPECT_FALSE(low.fits);
    ASSERT_FALSE(low.departures.empty());
    for (const auto& departure : low.departures) {
        if (!departure.or_else.empty()) EXPECT_EQ(departure.sure, Sure::perhaps);
        EXPECT_NE(departure.sure, Sure::surely) << departure.what;
    }
}

TEST(outlook, switched_off_lasts_longer_and_on_again_less_so) {
    const auto none = outlook("", next_noon);
    const auto off = outlook(
        "[[log]]\nat = 2026-01-14T20:00:00\nload = \"blower\"\nhappened = \"switched off\"\n",
        next_noon);
    const auto again = outlook(
        "[[log]]\nat = 2026-01-14T20:00:00\nload = \"blower\"\nhappened = \"switched off\"\n"
        "[[log]]\nat = 2026-01-15T08:00:00\nload = \"blower\"\nhappened = \"switched on\"\n",
        next_noon);
    EXPECT_GT(off.figures.half, again.figures.half);
    EXPECT_GT(again.figures.half, none.figures.half);
}

TEST(outlook, packs_that_leave_shorten_and_come_back_with_what_they_had) {
    const auto none = outlook("", next_noon);
    const std::string left =
        "[[log]]\nat = 2026-01-14T20:00:00\npack = \"expansion\"\ncount = 1\nhappened = \"pack "
        "left\"\n";
    const auto away = outlook(left, next_noon);
    const auto back = outlook(left +
                                  "[[log]]\nat = 2026-01-14T20:30:00\npack = \"expansion\"\n"
                                  "happened = \"pack back\"\n",
                              next_noon);
    EXPECT_LT(away.figures.half, 0.85 * none.figures.half);
    EXPECT_NEAR(back.figures.half / none.figures.half, 1.0, 0.05);
    EXPECT_GT(away.charge_likely.value(), 0.0);
}

TEST(outlook, what_goes_off_next_is_never_of_somebodys_health) {
    const auto found = outlook(shows("2026-01-15T11:00:00", 45), next_noon, true);
    ASSERT_FALSE(found.next_off.empty());
    for (const auto& step : found.next_off)
        EXPECT_NE(step.load, 2U);
    EXPECT_EQ(found.next_off.front().load, 1U);  // the least needed
    Duration before{};
    for (const auto& step : found.next_off) {
        EXPECT_GE(step.alone, 0.0 * second);
        EXPECT_GE(step.figures.half, before);
        before = step.figures.half;
    }
    ASSERT_TRUE(found.was.has_value());
    EXPECT_GT(found.was->half, found.figures.half);
    for (const auto& next : found.read_next)
        EXPECT_LT(next.width_after, found.width);
    ASSERT_FALSE(found.read_next.empty());
}

TEST(outlook, a_supply_that_is_expected_has_its_own_chance) {
    const auto found = outlook(
        "[[log]]\nat = 2026-01-15T08:00:00\nhappened = \"expected back\"\nby = "
        "2026-01-15T13:00:00\n",
        next_noon);
    ASSERT_TRUE(found.to_expected.has_value());
    EXPECT_GE(*found.to_expected, found.figures.of);
}

// ---- One member.

TEST(lives, a_member_stands_where_the_clock_has_it) {
    const auto scenario = with("");
    const auto ready = ready_of(scenario);
    const auto members = sizing::members_of(scenario, "", ready, 7, 64);
    const auto lives = estimate::Lives::of(scenario, "", ready,
                                           estimate::story_of(scenario, scenario.outage.starts));
    ASSERT_TRUE(lives.has_value());
    const Duration at[] = {5.5 * hour, 17.25 * hour};
    for (int number = 0; number < 8; ++number) {
        const auto values = members.values(number);
        const auto states = lives->states(values, at);
        ASSERT_EQ(states.size(), 2U);
        const auto lived = lives->world().lived(values);
        const auto course = lives->world().run(lived, lives->world().packs(), lived.sun,
                                               {.trace = true, .intervals = 0.25 * hour});
        for (std::size_t i = 0; i < 2; ++i) {
            const auto interval = std::ranges::find_if(course.intervals, [&](const auto& one) {
                return std::abs((one.to - at[i]) / second) < 1.0;
            });
            ASSERT_NE(interval, course.intervals.end());
            EXPECT_NEAR(states[i].charge.value(), interval->charge.value(), 1e-6);
        }
        const auto ends = lives->ends({std::vector<double>(values.begin(), values.end())});
        EXPECT_EQ(ends.front(), members.end_of(number, chance::as_it_is(members.world())));
    }
}

TEST(likelihood, a_reading_with_an_infinite_error_says_nothing) {
    EXPECT_EQ(
        estimate::log_likelihood(
            {.read = 3.0, .expected = -7.0, .error = std::numeric_limits<double>::infinity()}),
        0.0);
    EXPECT_DOUBLE_EQ(estimate::log_likelihood({.read = 3.0, .expected = 1.0, .error = 2.0}), -0.5);
}

}  // namespace
