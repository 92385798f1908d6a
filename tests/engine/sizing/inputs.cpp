#include "sizing/inputs.hpp"

#include "support/holds.hpp"

#include "outage/demand_power.hpp"
#include "scenario/read.hpp"
#include "sizing/sweep.hpp"

namespace {

using namespace units;

scenario::Scenario ice_storm() {
    const auto read =
        scenario::read_scenario_file(CANDLEMARK_SOURCE_DIR "/scenarios/ice_storm.toml", {});
    EXPECT_TRUE(read.has_value());
    return read->scenario;
}

sizing::Design design_of(const scenario::Scenario& scenario) {
    auto design = sizing::make_design(scenario, {}, 6, 4);
    EXPECT_TRUE(design.has_value());
    return std::move(*design);
}

// A net in base 2: of the first 2^k points of a Sobol sequence exactly one lies in each of the 2^k
// slices along every coordinate ([Joe 2008]); a shift modulo 1 moves the slices, not their number.
TEST(inputs, quasi_random_points_fill_each_coordinate_evenly) {
    constexpr int points = 32;
    const auto at = sizing::quasi_random(points, 5, 9);
    ASSERT_EQ(at.size(), std::size_t(points));
    for (std::size_t coordinate = 0; coordinate < 5; ++coordinate) {
        std::vector<double> sorted;
        for (const auto& point : at) {
            EXPECT_GE(point[coordinate], 0.0);
            EXPECT_LT(point[coordinate], 1.0);
            sorted.push_back(point[coordinate]);
        }
        std::ranges::sort(sorted);
        for (std::size_t i = 1; i < sorted.size(); ++i)
            EXPECT_NEAR(sorted[i] - sorted[i - 1], 1.0 / points, 1e-9);
    }
    EXPECT_NE(at, sizing::quasi_random(points, 5, 10));
    EXPECT_EQ(at, sizing::quasi_random(points, 5, 9));
}

TEST(inputs, the_middle_of_every_range_is_what_is_likely) {
    const auto scenario = ice_storm();
    const auto design = design_of(scenario);
    const auto inputs = sizing::inputs_of(scenario, *design.ready);
    ASSERT_GT(inputs.coordinates, 1);
    const std::vector<double> middle(std::size_t(inputs.coordinates), 0.5);
    const auto moved = sizing::with_inputs(*design.ready, inputs, middle);
    for (std::size_t i = 0; i < moved.demand.loads.size(); ++i)
        EXPECT_NEAR(moved.demand.loads[i].power.likely / watt,
                    design.ready->demand.loads[i].power.likely / watt, 1e-12);
    const std::vector<double> most(std::size_t(inputs.coordinates), 1.0 - 1e-12);
    const auto hungry = sizing::with_inputs(*design.ready, inputs, most);
    for (std::size_t i = 0; i < moved.demand.loads.size(); ++i)
        EXPECT_NEAR(hungry.demand.loads[i].power.likely / watt,
                    design.ready->demand.loads[i].power.high / watt, 1e-6);
}

TEST(inputs, compressors_move_together) {
    auto scenario = ice_storm();
    const auto freezer = std::ranges::find_if(
        scenario.loads, [](const auto& load) { return outage::has_compressor(load); });
    ASSERT_NE(freezer, scenario.loads.end());
    auto second = *freezer;
    second.name = "second freezer";
    scenario.loads.push_back(second);
    const auto design = design_of(scenario);
    const auto inputs = sizing::inputs_of(scenario, *design.ready);
    int shared = 0;
    for (std::size_t i = 0; i < scenario.loads.size(); ++i)
        if (outage::has_compressor(scenario.loads[i]) && inputs.of_load[i] == inputs.of_load.back())
            ++shared;
    EXPECT_GE(shared, 2);
}

TEST(inputs, doubt_about_the_loads_widens_what_is_known_of_a_chance) {
    auto scenario = ice_storm();
    const auto design = design_of(scenario);
    const std::vector<sizing::BuildSize> builds{{4, 3}, {6, 3}};
    const auto chances = sizing::chances_over_inputs(scenario, design, builds, 1);
    ASSERT_TRUE(chances);
    ASSERT_EQ(chances->size(), 2U);
    EXPECT_LE(chances->front().of, chances->back().of);
    for (const auto& chance : *chances) {
        EXPECT_LE(chance.low, chance.of);
        EXPECT_LE(chance.of, chance.high);
        EXPECT_EQ(chance.outages, 1024);
        const auto alone = sizing::counted(
            static_cast<int>(std::lround(chance.of.value() * chance.outages)), chance.outages);
        EXPECT_LE(chance.low, alone.low);
        EXPECT_GE(chance.high, alone.high);
    }
    EXPECT_EQ(chances->front().of,
              sizing::chances_over_inputs(scenario, design, builds, 1, 1)->front().of);
}

TEST(inputs, without_a_range_nothing_is_moved) {
    const auto scenario = ice_storm();
    auto ready = *design_of(scenario).ready;
    for (auto& load : ready.demand.loads)
        load.power.low = load.power.high = load.power.likely;
    for (auto& unit : ready.units)
        unit.inverter->idle_low = unit.inverter->idle_high = unit.inverter->losses.idle;
    EXPECT_EQ(sizing::inputs_of(scenario, ready).coordinates, 0);
    const auto design =
        sizing::design_of(std::make_shared<const outage::Ready>(std::move(ready)), 2, 1);
    EXPECT_FALSE(sizing::chances_over_inputs(scenario, design, {{1, 1}}, 1));
}

}  // namespace
