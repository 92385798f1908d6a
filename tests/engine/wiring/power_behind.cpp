#include "wiring/power_behind.hpp"

namespace {

using namespace units;
using namespace wiring;

// 13 V behind 10 milliohm. 1,200 W at V with V (13 - V)/0.01 = 1,200: V = (13 + sqrt(169 - 48))/2
// = 12 V and 100 A.
TEST(power_behind, of_two_voltages_the_higher_holds) {
    const auto current = current_into(1200.0 * watt, 0.010 * ohm, 13.0 * volt);
    EXPECT_NEAR(current / ampere, 100.0, 1e-9);
}

// The most that comes through is 13^2/(4 x 0.01) = 4,225 W, with 650 A at half the voltage.
TEST(power_behind, beyond_the_largest_power_the_current_is_that_of_it) {
    EXPECT_NEAR(current_into(4225.0 * watt, 0.010 * ohm, 13.0 * volt) / ampere, 650.0, 1e-4);
    EXPECT_NEAR(current_into(9000.0 * watt, 0.010 * ohm, 13.0 * volt) / ampere, 650.0, 1e-9);
}

TEST(power_behind, nothing_resists_or_nothing_is_there) {
    EXPECT_NEAR(current_into(1200.0 * watt, {}, 12.0 * volt) / ampere, 100.0, 1e-9);
    EXPECT_EQ(current_into(1200.0 * watt, 0.010 * ohm, {}), Current());
    EXPECT_EQ(current_into({}, 0.010 * ohm, 13.0 * volt), Current());
}

// 12 V wanted at the end and 1,200 W drawn there: 100 A lose 1 V on the way. Below sqrt(0.01 x
// 1200) = 3.46 V the power no longer comes, and twice that is needed before it.
TEST(power_behind, what_is_needed_before_is_what_is_wanted_and_the_loss) {
    EXPECT_NEAR(needed_before(0.010 * ohm, 1200.0 * watt, 12.0 * volt) / volt, 13.0, 1e-12);
    EXPECT_NEAR(needed_before(0.010 * ohm, 1200.0 * watt, 1.0 * volt) / volt, 6.9282, 1e-4);
    EXPECT_EQ(needed_before({}, 1200.0 * watt, 12.0 * volt), 12.0 * volt);
}

}  // namespace
