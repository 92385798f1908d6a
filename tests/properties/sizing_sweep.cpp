// The staircase against every cell run by itself, over generated households.
#include <cstdio>

#include "scenario/file/read.hpp"
#include "sizing/builds/sweep.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;

scenario::Scenario household() {
    static const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml", {});
    RC_ASSERT(read.has_value());
    auto scenario = read->scenario;
    scenario.outage.lasts = double(*rc::gen::inRange(20, 140)) * hour;
    scenario.packs.back().capacity = double(*rc::gen::inRange(20, 150)) * ampere_hour;
    scenario.packs.front().capacity = scenario.packs.back().capacity;
    scenario.packs.back().charge = scenario.packs.front().charge =
        StateOfCharge(*rc::gen::inRange(40, 101) / 100.0);
    scenario.panels.front().power = double(*rc::gen::inRange(40, 300)) * watt;
    if (*rc::gen::arbitrary<bool>()) scenario.outage.cause = scenario::Cause::clear;
    const auto loads = *rc::gen::inRange<std::size_t>(1, scenario.loads.size() + 1);
    scenario.loads.resize(loads);
    return scenario;
}

// A pack or a panel more never shortens an outage, so the walk down the staircase, which leaves
// most cells out, must give what all cells give.
TEST(sweep, walking_the_staircase_is_running_every_cell) {
    std::size_t run = 0;
    std::size_t of = 0;
    EXPECT_TRUE(tested::holds_for(200, [&] {
        const auto design = sizing::make_design(household(), {}, 6, 4);
        RC_PRE(design.has_value());
        const auto seed = std::uint64_t(*rc::gen::inRange(1, 1000));
        const auto swept =
            sizing::sweep(*design, {.sequences = 24, .timed = 0, .seed = seed, .threads = 1});
        RC_ASSERT(swept.has_value());
        for (int packs = 1; packs <= 6; ++packs)
            for (int panels = 1; panels <= 4; ++panels) {
                const int lasted = sizing::lasted_in(*design, packs, panels, 0, 24, seed, 1);
                RC_ASSERT(swept->at(packs, panels).chance.of == Probability(lasted / 24.0));
                if (packs > 1)
                    RC_ASSERT(swept->at(packs, panels).chance.of >=
                              swept->at(packs - 1, panels).chance.of);
                if (panels > 1)
                    RC_ASSERT(swept->at(packs, panels).chance.of >=
                              swept->at(packs, panels - 1).chance.of);
            }
        run += swept->outages_run;
        of += 24 * 6 * 4;
    }));
    std::printf("ran %zu of %zu\n", run, of);
    EXPECT_LT(run, of / 2);
}

}  // namespace
