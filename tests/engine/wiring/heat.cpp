#include "wiring/heat.hpp"

namespace {

using namespace units;
using namespace wiring;

// 1,800 W at 90 % turn 200 W into heat: 1,800/0.9 - 1,800.
TEST(heat, an_inverter_turns_what_it_does_not_pass_on_into_heat) {
    EXPECT_NEAR(loss_of(1800.0 * watt, Efficiency(0.9)) / watt, 200.0, 1e-9);
    EXPECT_NEAR(loss_of(1800.0 * watt, Efficiency(1.0)) / watt, 0.0, 1e-12);
}

// 35 W through 1 m2 of plastic of 3.5 W/(m2 K): 10 K; through steel of 5.5, 6.36 K.
TEST(heat, a_shut_case_warms_by_its_loss_over_its_walls) {
    const auto plastic = heat_transfer_of(false);
    EXPECT_NEAR(rise_in_case(35.0 * watt, 1.0 * square_metre, plastic) / kelvin, 10.0, 1e-9);
    EXPECT_NEAR(rise_in_case(35.0 * watt, 1.0 * square_metre, heat_transfer_of(true)) / kelvin,
                6.3636, 1e-4);
    EXPECT_NEAR(shed_within(10.0 * kelvin, 1.0 * square_metre, plastic) / watt, 35.0, 1e-9);
}

// Air of 1.2 kg/m3 and 1,005 J/(kg K) carries 1,206 J/K a cubic metre: 200 W within 10 K need
// 0.016584 m3/s, 59.7 m3/h, some 35 cubic feet a minute.
TEST(heat, a_fan_moves_the_air_that_carries_the_loss) {
    const auto air = air_for(200.0 * watt, 10.0 * kelvin);
    EXPECT_NEAR(air / cubic_metre_per_hour, 59.70, 0.01);
}

// [IEC 62485-2] as restated: Q = 0.05 n I C / 1000. Six cells of 100 Ah, valve-regulated at 8 mA/Ah:
// 0.05 x 6 x 8 x 100 / 1000 = 0.24 m3/h, and openings of 28 x 0.24 = 6.7 cm2.
TEST(heat, sealed_lead_needs_less_air_than_open_cells_and_lithium_none) {
    const auto sealed = hydrogen_vent(scenario::Chemistry::agm, 6, 100.0 * ampere_hour);
    ASSERT_TRUE(sealed);
    EXPECT_NEAR(sealed->air / cubic_metre_per_hour, 0.24, 1e-9);
    EXPECT_NEAR(sealed->opening / square_metre * 1e4, 6.72, 1e-9);
    const auto open = hydrogen_vent(scenario::Chemistry::flooded, 6, 100.0 * ampere_hour);
    EXPECT_NEAR(open->air / sealed->air, 2.5, 1e-12);  // 20 over 8 mA/Ah
    EXPECT_FALSE(hydrogen_vent(scenario::Chemistry::lifepo4, 4, 100.0 * ampere_hour));
}

}  // namespace
