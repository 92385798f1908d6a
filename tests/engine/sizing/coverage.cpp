// How often the stated interval holds the chance that very many weathers show.
#include <cstdio>

#include "scenario/read.hpp"
#include "sizing/sweep.hpp"
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

}  // namespace
