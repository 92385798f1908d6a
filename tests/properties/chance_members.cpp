// Fewer members against very many, and what must never make an outage end sooner.
// CANDLEMARK_CHANCE_SEEDS=200 tries as many seeds against CANDLEMARK_CHANCE_REFERENCE=65536
// members; CANDLEMARK_CHANCE_CELLS=20000 compares as many cells.
#include <algorithm>
#include <cstdlib>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "outage/in_threads.hpp"
#include "scenario/read.hpp"
#include "sizing/builds.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"

namespace {

using namespace units;
using chance::MemberEnd;

int wished(const char* name, int otherwise) {
    const char* value = std::getenv(name);
    return value ? std::atoi(value) : otherwise;
}

// A shipped scenario with so many packs of its last kind that something is left to chance.
struct Case {
    const char* name;
    int last_count;
    double days;
};
constexpr Case cases[] = {{"ice_storm", 7, 4.0},
                          {"summer_storm", 6, 3.0},
                          {"precautionary_shutoff", 3, 2.0},
                          {"breathing_at_night", 1, 9.0},
                          {"saw_and_pump", 2, 6.0}};

scenario::Scenario scenario_of(const Case& of) {
    auto read = scenario::read_scenario_file(
        fmt::format("{}/scenarios/{}.toml", CANDLEMARK_SOURCE_DIR, of.name));
    if (!read) throw std::runtime_error(read.error().front().found);
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
    for (const Case& each : cases) {
        const auto scenario = scenario_of(each);
        const auto many = members_of(scenario, 7'000'001, reference);
        const auto all = many.ends(chance::as_it_is(many.world()));
        const auto truth = many.figures(all, goal);
        int within_4 = 0, within_2 = 0, timed = 0, held = 0, held_of_256 = 0;
        double early = 0.0;
        const int tries = std::max(seeds, 3);
        const int count = seeds > 0 ? 1024 : 256;
        for (int seed = 1; seed <= tries; ++seed) {
            const auto members = members_of(scenario, std::uint64_t(seed), count);
            const auto ends = members.ends(chance::as_it_is(members.world()));
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
