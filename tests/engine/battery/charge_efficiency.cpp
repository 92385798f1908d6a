#include "battery/cell/charge_efficiency.hpp"

#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

constexpr Chemistry lead[] = {Chemistry::flooded, Chemistry::agm, Chemistry::gel};

Kinetics wells_of(Chemistry chemistry) {
    return {110.0 * ampere_hour, defaults_of(chemistry).available.value,
            defaults_of(chemistry).rate.value};
}

TEST(charge_efficiency, one_number_is_the_same_at_every_fill) {
    const ChargeEfficiency one = Efficiency(0.9);
    ASSERT_EQ(one.pieces(), 1);
    EXPECT_EQ(one.of_piece(0), Efficiency(0.9));
    EXPECT_EQ(one.end_of_piece(0), StateOfCharge(1.0));
}

TEST(charge_efficiency, of_lead_acid_falls_as_it_fills_and_stays_within_its_bounds) {
    for (const Chemistry chemistry : lead) {
        const Kinetics kinetics = wells_of(chemistry);
        Efficiency last(0.95);
        for (int i = 0; i <= 1000; ++i) {
            const Efficiency here =
                lead_acid_efficiency(kinetics, kinetics.total, StateOfCharge(0.001 * i));
            EXPECT_LE(here, last) << i;
            last = here;
        }
        EXPECT_EQ(lead_acid_efficiency(kinetics, kinetics.total, StateOfCharge(0.0)),
                  Efficiency(0.95));
        EXPECT_EQ(last, Efficiency(0.20));
        const ChargeEfficiency pieces = lead_acid_efficiency(kinetics, kinetics.total);
        for (int piece = 1; piece < pieces.pieces(); ++piece)
            EXPECT_LT(pieces.of_piece(piece), pieces.of_piece(piece - 1));
    }
}

// The sum of a hundred thousand strips is other code than the quadrature.
TEST(charge_efficiency, from_edge_to_edge_a_piece_asks_for_the_charge_that_the_law_asks_for) {
    for (const Chemistry chemistry : lead) {
        const Kinetics kinetics = wells_of(chemistry);
        const ChargeEfficiency pieces = lead_acid_efficiency(kinetics, kinetics.total);
        double low = 0.0;
        for (int piece = 0; piece < pieces.pieces(); ++piece) {
            const double high = pieces.end_of_piece(piece).value();
            constexpr int strips = 100'000;
            double asked = 0.0;
            for (int i = 0; i < strips; ++i) {
                const StateOfCharge fill(low + (high - low) * (i + 0.5) / strips);
                asked += (high - low) / strips /
                         lead_acid_efficiency(kinetics, kinetics.total, fill).value();
            }
            EXPECT_NEAR((high - low) / pieces.of_piece(piece).value(), asked, 1e-8) << piece;
            low = high;
        }
        EXPECT_EQ(low, 1.0);
    }
}

// Absorption leaves less than the ten-hour current to gas with; one well has no absorption.
TEST(charge_efficiency, of_two_wells_is_that_of_the_current_they_still_take) {
    const Kinetics agm = wells_of(Chemistry::agm);
    Kinetics one_well = agm;
    one_well.available = Share(1.0);
    for (const double fill : {0.90, 0.95, 0.98})
        EXPECT_GT(lead_acid_efficiency(agm, agm.total, StateOfCharge(fill)),
                  lead_acid_efficiency(one_well, one_well.total, StateOfCharge(fill)));
    EXPECT_EQ(lead_acid_efficiency(one_well, one_well.total, StateOfCharge(0.95)),
              charge_efficiency(StateOfCharge(0.95), 1.0 * ampere, 1.0 * ampere));
    // At 97 %: the bound well stands 0.03 C/(1 - c) low, so k c (1 - c) times that flows.
    const Current ten_hour = capacity_over(agm, 10.0 * hour) / (10.0 * hour);
    const Wells absorbing{
        .removed = 3.3 * ampere_hour,
        .head_difference = -3.3 / agm.available.complement().value() * ampere_hour};
    ASSERT_NEAR(available_fill(agm, absorbing).value(), 1.0, 1e-12);
    const Current flows = -taper(agm, absorbing, Duration{}).current;
    EXPECT_NEAR(lead_acid_efficiency(agm, agm.total, StateOfCharge(0.97)).value(),
                charge_efficiency(StateOfCharge(0.97), flows, ten_hour).value(), 1e-12);
}

}  // namespace
