#include "battery/cell/gassing.hpp"

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/percent.hpp"
#include "battery/pack_model.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

Kinetics wells_of(Chemistry chemistry) {
    return {106.6123 * ampere_hour, defaults_of(chemistry).available.value,
            defaults_of(chemistry).rate.value};
}

// By hand: 10 mA exp(11 (V - 2.23) + 0.06 (T - 25)) of 100 Ah.
TEST(gassing, what_gasses_rises_with_voltage_and_warmth) {
    const auto milliamperes = [](double volts, double degrees) {
        return 1000.0 *
               (gassing_current(100.0 * ampere_hour, volts * volt, celsius(degrees)) / ampere);
    };
    EXPECT_NEAR(milliamperes(2.23, 25.0), 10.0, 1e-9);
    EXPECT_NEAR(milliamperes(2.25, 25.0), 12.46, 0.005);
    EXPECT_NEAR(milliamperes(2.40, 25.0), 64.88, 0.005);
    EXPECT_NEAR(milliamperes(2.47, 25.0), 140.1, 0.05);
    EXPECT_NEAR(milliamperes(2.40, 35.0) / milliamperes(2.40, 25.0), 1.822, 0.001);
    EXPECT_NEAR(milliamperes(2.40, 0.0) / milliamperes(2.40, 25.0), 0.223, 0.001);
}

// By hand at 97 %: k c 3 Ah = 0.87 x 0.465 x 3 = 1.2137 A stored, 1.2512 A at 97 %, 0.0649 A gas.
TEST(gassing, of_a_sealed_pack_falls_towards_full) {
    const Kinetics agm = wells_of(Chemistry::agm);
    const Charge rated = 100.0 * ampere_hour;
    const Efficiency far(0.97);
    const Current gas = 0.0649 * ampere;
    EXPECT_NEAR(sealed_efficiency(agm, rated, far, gas, StateOfCharge(0.97)).value(),
                1.2137 / (1.2512 + 0.0649), 1e-4);
    Efficiency last = far;
    for (int i = 0; i <= 1000; ++i) {
        const Efficiency here = sealed_efficiency(agm, rated, far, gas, StateOfCharge(0.001 * i));
        EXPECT_LE(here, last) << i;
        EXPECT_GE(here, sealed_efficiency(agm, rated, far, 2.0 * gas, StateOfCharge(0.001 * i)));
        last = here;
    }
    EXPECT_EQ(last, Efficiency(0.20));
    EXPECT_EQ(sealed_efficiency(agm, rated, far, gas, StateOfCharge(0.74)), far);
    const ChargeEfficiency pieces = sealed_efficiency(agm, rated, far, gas);
    double low = 0.0;
    for (int piece = 0; piece < pieces.pieces(); ++piece) {
        const double high = charge_at_fill(agm, rated, pieces.end_of_piece(piece)).value();
        if (piece > 0) {
            constexpr int strips = 100'000;
            double asked = 0.0;
            for (int i = 0; i < strips; ++i)
                asked += (high - low) / strips /
                         sealed_efficiency(agm, rated, far, gas,
                                           StateOfCharge(low + (high - low) * (i + 0.5) / strips))
                             .value();
            EXPECT_NEAR((high - low) / pieces.of_piece(piece).value(), asked, 1e-7) << piece;
            EXPECT_LT(pieces.of_piece(piece), pieces.of_piece(piece - 1));
        }
        low = high;
    }
    EXPECT_EQ(sealed_efficiency(agm, rated, far, Current{}, StateOfCharge(0.999)), far);
}

// From far down to full and on: the energy closes, and absorption comes to an end.
TEST(gassing, what_gasses_is_a_loss_of_charging_and_the_pack_comes_to_full) {
    for (const Chemistry chemistry : {Chemistry::agm, Chemistry::gel})
        for (const double degrees : {0.0, 25.0, 40.0})
            for (const double watts : {30.0, 150.0, 600.0}) {
                scenario::Pack pack;
                pack.chemistry = chemistry;
                pack.capacity = 100.0 * ampere_hour;
                scenario::Assumptions taken;
                const PackModel model =
                    pack_model(pack, "pack[0]", celsius(degrees), taken).value();
                const Prepared ready =
                    prepare(arranged(model, {}, {.filled_to = 0.005 * model.capacity}));
                const Wells from = rested_with(model.capacity, StateOfCharge(0.3));
                const auto run = advance(ready, from, -watts * watt, 400.0 * hour);
                ASSERT_EQ(run.ending, Ending::full) << degrees << " " << watts;
                const auto stored = [&](const Wells& wells) {
                    return stored_energy(model.kinetics, model.open_circuit, wells);
                };
                const auto& flow = run.energy;
                const Energy open = stored(run.wells) - stored(from) - flow.accepted +
                                    flow.in_resistance + flow.between_wells + flow.in_charging;
                EXPECT_LT(std::abs(open / flow.accepted), 1e-9);
                EXPECT_GT(flow.in_charging, Energy{});
                const double factor = run.charge_in / (from.removed - run.wells.removed);
                EXPECT_GT(factor, 1.0 / 0.97);
                EXPECT_LT(factor, 1.12);
            }
}

}  // namespace
