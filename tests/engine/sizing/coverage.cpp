// How often the stated interval holds the chance that very many weathers show, and how many outages
// end before the time that is to be counted on. CANDLEMARK_TRUTHS=10000 draws as many of them.
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include "scenario/file/read.hpp"
#include "sizing/builds/sweep.hpp"
#include "sizing/member_runs.hpp"
#include "sizing/members_of.hpp"
#include "support/holds.hpp"

namespace {

sizing::Design ice_storm() {
    const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml", {});
    EXPECT_TRUE(read.has_value());
    auto design = sizing::make_design(read->scenario, {}, 8, 6);
    EXPECT_TRUE(design.has_value());
    return std::move(*design);
}

struct Size {
    int packs = 1;
    int panels = 1;
    double chance = 0.0;
};

// The cell of the grid whose chance is nearest to the one asked for.
Size nearest(const sizing::Sweep& sweep, double chance) {
    Size best{.chance = 2.0};
    for (const auto& cell : sweep.cells)
        if (cell.panels > 0 &&
            std::abs(cell.chance.of.value() - chance) < std::abs(best.chance - chance))
            best = {cell.packs, cell.panels, cell.chance.of.value()};
    return best;
}

// Two hundred small sweeps, each with weathers of its own. Of 200 intervals that hold 19 times in
// 20, between 90 and 99 % hold but once in several hundred tries.
TEST(chance, holds_the_large_sweeps_value_as_often_as_it_says) {
    const auto design = ice_storm();
    const auto grid = sizing::sweep(design, {.sequences = 256, .timed = 0});
    ASSERT_TRUE(grid);
    constexpr int many = 16384;
    constexpr int few = 64;
    constexpr int repeats = 200;
    for (const double middle : {0.5, 0.85}) {
        const auto size = nearest(*grid, middle);
        ASSERT_NEAR(size.chance, middle, 0.2) << "the grid has no such cell";
        const double truth =
            sizing::lasted_in(design, size.packs, size.panels, 0, many, 1) / double(many);
        int held = 0;
        for (int repeat = 0; repeat < repeats; ++repeat) {
            const auto chance =
                sizing::counted(sizing::lasted_in(design, size.packs, size.panels, 0, few,
                                                  std::uint64_t(1000 + repeat)),
                                few);
            if (chance.low.value() <= truth && truth <= chance.high.value()) ++held;
        }
        std::printf("%d packs, %d panels, chance %.3f: %d of %d intervals hold it\n", size.packs,
                    size.panels, truth, held, repeats);
        EXPECT_GE(held, 180) << size.packs << " packs, " << size.panels << " panels: " << truth;
        EXPECT_LE(held, 198) << size.packs << " packs, " << size.panels << " panels: " << truth;
    }
}

// Truths drawn from what is not known, each an outage of its own; the time to count on is that of
// 256 other members. One in ten end before it: of 10,000 between 9 and 11 in a hundred, of fewer as
// many as three standard deviations of their own and of the 256 allow.
TEST(chance, one_in_ten_end_before_the_time_to_count_on) {
    const char* wished = std::getenv("CANDLEMARK_TRUTHS");
    const int truths = wished ? std::atoi(wished) : 640;
    const int seeds = std::max(5, truths / 500);
    const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml", {});
    ASSERT_TRUE(read.has_value());
    const auto ready =
        std::make_shared<const outage::Ready>(outage::make_ready(read->scenario).value());
    const auto ends_of = [&](std::uint64_t seed, int count) {
        const auto members = sizing::members_of(read->scenario, {}, ready, seed, count);
        const auto ends = sizing::MemberRuns(members).ends();
        return std::pair{ends, members.figures(ends, units::Probability(0.9))};
    };
    int sooner = 0;
    int drawn = 0;
    for (int seed = 1; seed <= seeds; ++seed) {
        const auto told = ends_of(std::uint64_t(seed), 256).second;
        for (const auto& end : ends_of(std::uint64_t(1'000'000 + seed), truths / seeds).first) {
            sooner += !end.survives && end.lasts < told.count_on ? 1 : 0;
            ++drawn;
        }
    }
    const double share = double(sooner) / drawn;
    std::printf("%d of %d outages, %.2f %%, end before it\n", sooner, drawn, 100.0 * share);
    const double own = std::sqrt(0.09 / drawn + 0.09 / (256.0 * seeds));
    EXPECT_NEAR(share, 0.10, std::max(0.01, 3.0 * own));
}

}  // namespace
