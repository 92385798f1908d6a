// Tables of wiring against figures printed by the codes and standards named at each.
#include "wiring/ampacity.hpp"
#include "wiring/conductor.hpp"

namespace {

using namespace units;

// [ABYC E-11] as a cable maker's page prints it: 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25
// and above 0.40.
TEST(wiring_rules, a_bundle_of_25_keeps_two_fifths) {
    const auto factor = [](int conductors) {
        return wiring::bundle_factor(wiring::AmpacityTable::boat, conductors);
    };
    EXPECT_EQ(factor(2), 1.0);
    EXPECT_EQ(factor(3), 0.7);
    EXPECT_EQ(factor(6), 0.6);
    EXPECT_EQ(factor(24), 0.5);
    EXPECT_EQ(factor(25), 0.4);
}

// [IEC 60228] class 5: 39.0 ohm/km plain and 40.1 tinned for 0.5 mm2 at 20 degC.
TEST(wiring_rules, half_a_square_millimetre_has_a_row_and_tin_counts) {
    const auto of = [](double area, bool tinned) {
        return wiring::resistance_of(
                   wiring::ConductorKind{area * 1e-6 * square_metre, wiring::BuiltTo::nec, tinned},
                   celsius(20.0)) /
               wiring::ohm_per_metre * 1e3;
    };
    EXPECT_NEAR(of(0.5, false), 39.0, 1e-9);
    EXPECT_NEAR(of(0.5, true), 40.1, 1e-9);
    EXPECT_GT(of(0.3, true), of(0.3, false));
}

}  // namespace
