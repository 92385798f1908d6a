#include "outage/clock/serving.hpp"

#include <array>
#include <cmath>

#include "battery/cell/open_circuit.hpp"

namespace {

using namespace units;

// 10 V empty to 14 V full.
const battery::OpenCircuit& straight() {
    static const auto line =
        *battery::OpenCircuit::through(std::array{battery::Knot{StateOfCharge(0.0), 10.0 * volt},
                                                  battery::Knot{StateOfCharge(1.0), 14.0 * volt}});
    return line;
}

outage::Bank two_of_100_ampere_hours() {
    outage::Bank bank;
    bank.setup = {.kinetics = {.total = 100.0 * ampere_hour},
                  .open_circuit = &straight(),
                  .inner = 0.010 * ohm};
    bank.count = 2;
    bank.rated = 100.0 * ampere_hour;
    bank.usable = 80.0 * ampere_hour;
    bank.cut_off = 10.5 * volt;
    bank.current_limit = 90.0 * ampere;
    return bank;
}

// Through the inverter both count, the higher first; without it that of the 12 V loads alone.
TEST(serving, the_higher_voltage_that_somebody_needs_ends_a_discharge) {
    EXPECT_EQ(outage::cut_off_of(true, 10.8 * volt, 11.2 * volt), 11.2 * volt);
    EXPECT_EQ(outage::cut_off_of(true, 11.5 * volt, 11.2 * volt), 11.5 * volt);
    EXPECT_EQ(outage::cut_off_of(false, 10.8 * volt, 11.2 * volt), 10.8 * volt);
    const auto pack = outage::serving(two_of_100_ampere_hours(), true, 10.8 * volt, 11.2 * volt);
    EXPECT_NEAR(pack.cut_off, 11.2, 1e-12);
    EXPECT_NEAR(pack.pack_cut_off, 10.5, 1e-12);
    EXPECT_NEAR(pack.current_above, 90.0, 1e-12);
    EXPECT_NEAR(pack.removed_above, 80.0 * 3600.0, 1e-6);
    EXPECT_NEAR(pack.filled_to, 0.005 * 100.0 * 3600.0, 1e-6);
}

// Of 100 Ah the cold lets out 70: less than the 80 that a person allows.
TEST(serving, choice_and_cold_both_bound_what_is_taken_out) {
    auto bank = two_of_100_ampere_hours();
    EXPECT_NEAR(outage::most_removed(bank) / ampere_hour, 80.0, 1e-9);
    bank.setup.reachable = Share(0.7);
    EXPECT_NEAR(outage::most_removed(bank) / ampere_hour, 70.0, 1e-9);
    bank.at_start = {.removed = 69.0 * ampere_hour};
    EXPECT_FALSE(outage::starts_empty(bank));
    bank.at_start = {.removed = 70.0 * ampere_hour};
    EXPECT_TRUE(outage::starts_empty(bank));
}

// A fuse of 40 A whose times are not known bears its rating: 2 packs x 40 A x 10 V when empty.
TEST(serving, what_is_offered_to_the_packs_is_held_against_their_fuses) {
    auto bank = two_of_100_ampere_hours();
    EXPECT_TRUE(std::isinf(outage::charge_borne(bank) / watt));
    bank.fuse = 40.0 * ampere;
    EXPECT_NEAR(outage::charge_borne(bank) / watt, 800.0, 1e-9);
    EXPECT_NEAR(*outage::first_limit(bank) / ampere, 40.0, 1e-9);
    // one that takes no more than its fuse bears is never too much for it
    bank.setup.charging.largest = 30.0 * ampere;
    EXPECT_TRUE(std::isinf(outage::charge_borne(bank) / watt));
}

TEST(serving, a_day_brings_its_own_resistance_charge_and_limit) {
    outage::Unit unit{.bank = two_of_100_ampere_hours()};
    EXPECT_EQ(outage::on_day(unit, 0, 0).setup.inner, 0.010 * ohm);
    unit.days = {
        {.from = {},
         .banks = {
             {.inner = 0.015 * ohm, .reachable = Share(0.6), .current_limit = 50.0 * ampere}}}};
    const auto cold = outage::on_day(unit, 0, 0);
    EXPECT_EQ(cold.setup.inner, 0.015 * ohm);
    EXPECT_EQ(cold.current_limit, std::optional<Current>(50.0 * ampere));
    EXPECT_NEAR(outage::most_removed(cold) / ampere_hour, 60.0, 1e-9);
}

// 1,000 W with a tenth and 10 W lost are 1,110 W: at 10 V 111 A, beyond a fuse of 100 A and not of
// 120 A.
TEST(serving, the_main_fuse_may_open_where_the_inverter_draws_more_at_its_cut_off) {
    outage::Unit unit{.bank = two_of_100_ampere_hours()};
    unit.inverter =
        inverter::Model{.continuous = 2000.0 * watt,
                        .continuous_apparent = 2000.0 * volt_ampere,
                        .losses = {.idle = 10.0 * watt, .linear = 0.1, .rating = 2000.0 * watt},
                        .cutoff_voltage = 10.0 * volt,
                        .restart_voltage = 12.0 * volt};
    const std::array steps{demand::DemandStep{.ac = 1000.0 * watt, .inverter_on = true}};
    EXPECT_FALSE(outage::main_fuse_may_open(unit, steps));
    unit.main_fuse = outage::MainFuse{.rating = 100.0 * ampere};
    EXPECT_TRUE(outage::main_fuse_may_open(unit, steps));
    unit.main_fuse->rating = 120.0 * ampere;
    EXPECT_FALSE(outage::main_fuse_may_open(unit, steps));
}

}  // namespace
