// Fewer members against very many, and what must never make an outage end sooner.
// CANDLEMARK_CHANCE_SEEDS=200 tries as many seeds against CANDLEMARK_CHANCE_REFERENCE=65536
// members; CANDLEMARK_CHANCE_CELLS=20000 compares as many cells.
#include <algorithm>
#include <cstdlib>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "outage/in_threads.hpp"
#include "scenario/file/read.hpp"
#include "sizing/builds/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;
using chance::MemberEnd;

int wished(const char* name, int otherwise) {
    const char* value = std::getenv(name);
    return value ? std::atoi(value) : otherwise;
}

// A shipped scenario with so many packs of its last kind that something is left to chance; or one
// written here.
struct Case {
    const char* name;
    int last_count = 0;
    double days = 0.0;
    const char* written = nullptr;
};
constexpr Case cases[] = {{"ice_storm", 7, 4.0},
                          {"summer_storm", 6, 3.0},
                          {"precautionary_shutoff", 3, 2.0},
                          {"breathing_at_night", 1, 9.0},
                          {"saw_and_pump", 2, 6.0}};

// Tried only where many seeds are: each has something that none of the shipped ones has.
constexpr Case further_cases[] = {
    {.name = "no panels, steady and guessed loads, alike packs", .written = R"(
format = 1
title = "No sun"
[outage]
starts = 2026-02-03T22:00:00
lasts = "30 h"
cause = "storm"
[place]
name = "Cleveland OH"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
count = 2
[inverter]
continuous = "1500 W"
surge = "3000 W"
[[load]]
name = "modem"
from = "ac"
power = "15 W"
evidence = "label"
[[load]]
name = "television"
from = "ac"
power = "60 W"
hours = ["17:00-22:00"]
evidence = "guess"
[[load]]
name = "lamps"
from = "12V"
power = "25 W"
evidence = "guess"
)"},
    {.name = "cold blowers of a furnace over a week, much sun", .written = R"(
format = 1
title = "A week of frost"
[outage]
starts = 2026-03-02T16:00:00
lasts = "7 d"
cause = "unknown"
battery_temperature = "12 degC"
[place]
name = "Chicago IL"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
count = 4
[inverter]
continuous = "2000 W"
surge = "4000 W"
[[panel]]
power = "200 W"
count = 5
[[load]]
name = "blower"
like = "variable-speed furnace blower"
[[load]]
name = "radio"
from = "usb"
power = "5 W"
evidence = "label"
)"},
    {.name = "medical, packs part full and unlike", .written = R"(
format = 1
title = "Four nights"
[outage]
starts = 2026-08-20T20:00:00
lasts = "4 d"
cause = "clear"
[place]
name = "Houston TX"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "50 Ah"
charge = "80 %"
[[pack]]
name = "old"
chemistry = "lifepo4"
capacity = "100 Ah"
charge = "60 %"
lead_resistance = "6 mohm"
[inverter]
continuous = "1000 W"
surge = "2000 W"
off = ["08:00-20:00"]
[[panel]]
power = "100 W"
count = 1
[[load]]
name = "breathing machine"
from = "ac"
power = "35 W"
hours = ["22:00-07:00"]
medical = true
evidence = "label"
)"},
    {.name = "freezer metered for hours, lead packs, small panel", .written = R"(
format = 1
title = "A freezer"
[outage]
starts = 2026-05-11T10:00:00
lasts = "60 h"
cause = "unknown"
battery_temperature = "22 degC"
[place]
name = "San Francisco CA"
[[pack]]
name = "flooded"
chemistry = "flooded"
capacity = "105 Ah"
count = 4
[inverter]
continuous = "1500 W"
surge = "3000 W"
[[panel]]
power = "100 W"
count = 2
[charge_controller]
kind = "pwm"
[[load]]
name = "freezer"
from = "ac"
metered = { energy = "0.35 kWh", over = "6 h" }
runs = { on = "15 min", every = "45 min" }
evidence = "metered"
[[load]]
name = "pump"
from = "12V"
power = "60 W"
runs = { on = "5 min", every = "1 h" }
evidence = "guess"
)"},
    {.name = "ten days of little draw, one panel", .written = R"(
format = 1
title = "Ten days"
[outage]
starts = 2026-10-05T08:00:00
lasts = "10 d"
cause = "unknown"
[place]
name = "Tacoma WA"
[[pack]]
name = "agm"
chemistry = "agm"
capacity = "80 Ah"
count = 2
[[panel]]
power = "50 W"
count = 1
[[load]]
name = "router"
from = "12V"
power = "7 W"
evidence = "metered"
[[load]]
name = "lamp"
from = "12V"
power = "6 W"
hours = ["17:00-23:00"]
evidence = "label"
)"}};

scenario::Scenario scenario_of(const Case& of) {
    auto read = of.written ? scenario::read_scenario(of.written, of.name, {})
                           : scenario::read_scenario_file(fmt::format(
                                 "{}/scenarios/{}.toml", CANDLEMARK_SOURCE_DIR, of.name));
    if (!read)
        throw std::runtime_error(read.error().front().where + ": " + read.error().front().found);
    if (of.written) return read->scenario;
    read->scenario.packs.back().count = of.last_count;
    read->scenario.outage.lasts = of.days * day;
    return read->scenario;
}

chance::Members members_of(const scenario::Scenario& scenario, std::uint64_t seed, int count) {
    return sizing::members_of(
        scenario, {}, std::make_shared<const outage::Ready>(outage::make_ready(scenario).value()),
        seed, count);
}

std::vector<MemberEnd> first(const std::vector<MemberEnd>& ends, std::size_t count) {
    return {ends.begin(), ends.begin() + std::ptrdiff_t(std::min(count, ends.size()))};
}

// Chance and the time that nine in ten outlast, of 256 and 1,024 members, against the reference.
TEST(chance_members, few_tell_what_very_many_do) {
    const int seeds = wished("CANDLEMARK_CHANCE_SEEDS", 0);
    const int reference = wished("CANDLEMARK_CHANCE_REFERENCE", 2048);
    constexpr Probability goal(0.9);
    std::vector<Case> tried(std::begin(cases), std::end(cases));
    if (seeds > 0) tried.insert(tried.end(), std::begin(further_cases), std::end(further_cases));
    for (const Case& each : tried) {
        const auto scenario = scenario_of(each);
        const auto many = members_of(scenario, 7'000'001, reference);
        const auto all = sizing::MemberRuns(many).ends();
        const auto truth = many.figures(all, goal);
        int within_4 = 0, within_2 = 0, timed = 0, held = 0, held_of_256 = 0;
        double early = 0.0;
        const int tries = std::max(seeds, 3);
        const int count = seeds > 0 ? 1024 : 256;
        for (int seed = 1; seed <= tries; ++seed) {
            const auto members = members_of(scenario, std::uint64_t(seed), count);
            const auto ends = sizing::MemberRuns(members).ends();
            const auto of_256 = members.figures(first(ends, 256), goal);
            const auto figures = members.figures(ends, goal);
            const auto off = [&](const chance::Figures& told) {
                return std::abs(told.of.value() - truth.of.value());
            };
            const auto holds = [&](const chance::Figures& told) {
                return told.low.value() <= truth.of.value() &&
                       truth.of.value() <= told.high.value();
            };
            within_4 += off(of_256) <= 0.04 ? 1 : 0;
            within_2 += off(figures) <= 0.02 ? 1 : 0;
            held += holds(figures) ? 1 : 0;
            held_of_256 += holds(of_256) ? 1 : 0;
            timed += abs(figures.count_on - truth.count_on) <= 0.01 * scenario.outage.lasts ? 1 : 0;
            early += double(std::ranges::count_if(all,
                                                  [&](const MemberEnd& end) {
                                                      return !end.survives &&
                                                             end.lasts < figures.count_on;
                                                  })) /
                     double(all.size());
            if (seeds == 0) {
                EXPECT_LE(off(of_256), 0.08) << each.name;
            }
        }
        if (seeds == 0) continue;
        fmt::print(
            "{}: chance {:.4f}, count on {:.2f} h of {} h; of {} seeds within 2 points (1,024) "
            "{}, within 4 points (256) {}, time within 1 % {}, interval holds (1,024) {}, (256) "
            "{}; ends before the time counted on {:.2f} %\n",
            each.name, truth.of.value(), truth.count_on / hour, scenario.outage.lasts / hour, seeds,
            within_2, within_4, timed, held, held_of_256, 100.0 * early / tries);
        EXPECT_GE(within_2, 95 * tries / 100) << each.name;
        EXPECT_GE(within_4, 95 * tries / 100) << each.name;
        // Told, not held: of 1,024 members 60 to 100 in 100 seeds come so near.
        if (truth.of < Probability(0.85)) {
            EXPECT_NEAR(early / tries, 0.10, 0.01) << each.name;
        }
    }
}

// A pack more, a panel more, a load less, member by member; packs that differ may be minutes off.
TEST(chance_members, a_pack_or_a_panel_more_or_a_load_less_never_ends_sooner) {
    const int wanted = wished("CANDLEMARK_CHANCE_CELLS", 1200);
    int compared = 0;
    int sooner = 0;
    Duration furthest{};
    const auto not_sooner = [&](const std::vector<MemberEnd>& less,
                                const std::vector<MemberEnd>& more) {
        for (std::size_t i = 0; i < less.size(); ++i, ++compared) {
            const Duration by = less[i].lasts - more[i].lasts;
            if (by > 1e-3 * second) ++sooner;
            furthest = std::max(furthest, by);
        }
    };
    for (std::uint64_t seed = 1; compared < wanted; ++seed)
        for (const Case& each : cases) {
            const auto members = members_of(scenario_of(each), seed, 64);
            const auto& world = members.world();
            sizing::MemberRuns runs(members);
            const auto now = runs.ends();
            not_sooner(now, runs.ends(world.packs() + 1, world.panels()));
            if (world.panels() > 0) not_sooner(now, runs.ends(world.packs(), world.panels() + 1));
            chance::SwitchedOff off(world.ready().demand.loads.size(), false);
            off.back() = true;
            not_sooner(now, sizing::MemberRuns(members, off).ends());
        }
    fmt::print("{} cells, {} sooner, by {:.3g} s at most\n", compared, sooner, furthest / second);
    EXPECT_LE(furthest, 5.0 * minute);
    EXPECT_LE(sooner, compared / 200);
}

}  // namespace
