#include "wiring/conductor.hpp"

namespace {

using namespace units;
using namespace wiring;

scenario::Wire wire(WireSize size, double feet) {
    return {.size = size, .length = feet * 0.3048 * metre};
}

TEST(conductor, a_round_trip_is_half_out_and_half_back_unless_the_return_differs) {
    scenario::Wire both = wire(AmericanGauge{12}, 10.0);
    EXPECT_DOUBLE_EQ(run_of(both).supply / metre, 3.048);
    EXPECT_DOUBLE_EQ(run_of(both).back / metre, 3.048);
    both.round_trip = 8.0 * metre;
    EXPECT_DOUBLE_EQ(run_of(both).supply / metre, 4.0);
    both.return_length = 1.0 * metre;
    EXPECT_DOUBLE_EQ(run_of(both).back / metre, 1.0);
}

// [NEC] ch. 9 table 8: stranded 12 AWG has 1.98 ohm per 1,000 ft at 75 degC, stranded 8 AWG 0.778.
// 10 ft out in 12 AWG and 10 ft back in 8 AWG: 0.01 x (1.98 + 0.778) = 0.02758 ohm; two runs beside
// each other have half of it.
TEST(conductor, the_two_ways_of_a_wire_add_up_and_runs_share) {
    scenario::Wire mixed = wire(AmericanGauge{12}, 10.0);
    mixed.return_size = AmericanGauge{8};
    EXPECT_NEAR(resistance_of(mixed, celsius(75.0)) / ohm, 0.02758, 0.00001);
    mixed.runs = 2;
    EXPECT_NEAR(resistance_of(mixed, celsius(75.0)) / ohm, 0.01379, 0.00001);
}

// Each three gauges halve the metal, nearly: 92^(3/39 x 2) = 2.0050.
TEST(conductor, three_gauges_are_half_the_metal) {
    EXPECT_NEAR(area_of(AmericanGauge{10}) / area_of(AmericanGauge{13}), 2.0050, 0.00005);
    EXPECT_TRUE(thicker(AmericanGauge{10}, AmericanGauge{13}));
    EXPECT_TRUE(thicker(2.5e-6 * square_metre, AmericanGauge{14}));  // 2.08 mm2
    EXPECT_FALSE(thicker(AmericanGauge{10}, AmericanGauge{10}));
}

TEST(conductor, the_next_thicker_size_is_one_that_is_made) {
    EXPECT_EQ(next_thicker(AmericanGauge{12}), WireSize(AmericanGauge{10}));
    EXPECT_EQ(next_thicker(AmericanGauge{-3}), std::nullopt);  // 4/0
    const auto metric = next_thicker(2.5e-6 * square_metre);
    ASSERT_TRUE(metric);
    EXPECT_NEAR(std::get<Area>(*metric) / square_metre * 1e6, 4.0, 1e-9);  // [IEC 60228]
}

// The make of boats and vehicles has 5,833 circular mils where building wire of 12 AWG has 6,530:
// [SAE J1128] as the table has it.
TEST(conductor, a_boats_wire_of_one_gauge_has_less_metal) {
    const auto nec = resistance_of(ConductorKind{AmericanGauge{12}, BuiltTo::nec}, celsius(30.0));
    const auto sae = resistance_of(ConductorKind{AmericanGauge{12}, BuiltTo::sae}, celsius(30.0));
    EXPECT_NEAR(sae / nec, 6530.0 / 5833.0, 0.002);
}

}  // namespace
