// Worked by hand: packs of 14.2 V behind 10 mohm together, 20 A of 12 V loads at the bus, and an
// inverter behind 10 mohm that draws 1,200 W. 120 A leave 13.0 V at the bus; the inverter's own
// 100 A leave it 12.0 V. That is one answer to every question.
#include "outage/clock/inverter_draw.hpp"
#include "starting/direct_side.hpp"
#include "wiring/network.hpp"
#include "wiring/power_behind.hpp"

namespace {

using namespace units;

constexpr Resistance main_path = 0.010 * ohm;
constexpr Power drawn = 1200.0 * watt;
constexpr Current beside = 20.0 * ampere;

TEST(main_path_worked, wiring_has_the_inverter_one_volt_below_the_bus) {
    const auto fed = wiring::fed({.sources = {{.emf = 14.2 * volt, .resistance = 0.020 * ohm},
                                              {.emf = 14.2 * volt, .resistance = 0.020 * ohm}},
                                  .main = main_path,
                                  .drawn = drawn,
                                  .branches = beside});
    EXPECT_EQ(fed.how, wiring::Feeding::carries);
    EXPECT_NEAR(fed.bus / volt, 13.0, 1e-9);
    EXPECT_NEAR(fed.at_load / volt, 12.0, 1e-9);
    EXPECT_NEAR(fed.main / ampere, 100.0, 1e-9);
    EXPECT_NEAR(fed.shares[0] / ampere, 60.0, 1e-9);
}

TEST(main_path_worked, a_start_has_so_too) {
    const auto point = starting::at_power_and_current(
        {.emf = 14.2 * volt, .branches = 0.010 * ohm, .shared = main_path}, drawn, beside);
    EXPECT_TRUE(point.possible);
    EXPECT_NEAR(point.bus / volt, 13.0, 1e-9);
    EXPECT_NEAR(point.voltage / volt, 12.0, 1e-9);
    EXPECT_NEAR(point.current / ampere, 120.0, 1e-9);
}

TEST(main_path_worked, an_outage_has_so_too) {
    outage::Unit unit{.main_path = main_path};
    EXPECT_NEAR(outage::current_in_main(unit, drawn, 13.0 * volt) / ampere, 100.0, 1e-9);
    EXPECT_NEAR(wiring::needed_before(main_path, drawn, 12.0 * volt) / volt, 13.0, 1e-9);
}

// 4.4 V behind 10 mohm give 484 W at the most; at that point half the voltage is left.
TEST(main_path_worked, beyond_the_largest_power_it_is_that_of_the_largest) {
    EXPECT_NEAR(wiring::current_into(484.0 * watt, main_path, 4.4 * volt) / ampere, 220.0, 1e-4);
    EXPECT_NEAR(wiring::current_into(900.0 * watt, main_path, 4.4 * volt) / ampere, 220.0, 1e-9);
    EXPECT_EQ(wiring::current_into(900.0 * watt, main_path, {}), Current{});
    EXPECT_NEAR(wiring::current_into(440.0 * watt, {}, 4.4 * volt) / ampere, 100.0, 1e-9);
}

}  // namespace
