// Packs of 100 Ah whose rested voltage runs straight from 10 V empty to 14 V full, behind 10 mohm
// each: worked by hand. Half full they stand at 12 V and hold 50 Ah at a mean of 11 V.
#include "outage/clock/packs.hpp"

#include <array>

#include "battery/cell/open_circuit.hpp"

namespace {

using namespace units;
using outage::Duty;

const battery::OpenCircuit& straight() {
    static const auto line =
        *battery::OpenCircuit::through(std::array{battery::Knot{StateOfCharge(0.0), 10.0 * volt},
                                                  battery::Knot{StateOfCharge(1.0), 14.0 * volt}});
    return line;
}

outage::Bank half_full(int count) {
    outage::Bank bank;
    bank.setup = {.kinetics = {.total = 100.0 * ampere_hour},
                  .open_circuit = &straight(),
                  .inner = 0.010 * ohm};
    bank.count = count;
    bank.rated = 100.0 * ampere_hour;
    bank.usable = 60.0 * ampere_hour;
    bank.at_start = {.removed = 50.0 * ampere_hour};
    return bank;
}

outage::Unit alike() {
    return {.bank = half_full(2)};
}
outage::Unit unlike() {
    return {.bank = half_full(1), .others = {half_full(1)}};
}

// 12 V behind 5 mohm: 100 A leave 11.5 V, which is 1,150 W. 2 x 50 Ah x 11 V are 1,100 Wh.
template <class Packs>
void stand_as_by_hand(const outage::Unit& unit) {
    Packs packs(unit);
    const auto point = packs.operating_point(Duty::serving_direct, 1150.0 * watt);
    EXPECT_NEAR(point.voltage / volt, 11.5, 1e-9);
    EXPECT_NEAR(point.current / ampere, 100.0, 1e-7);
    EXPECT_NEAR(packs.voltage_at_rest(Duty::serving_direct) / volt, 12.0, 1e-9);
    EXPECT_NEAR(packs.stored() / watt_hour, 1100.0, 1e-6);
    EXPECT_NEAR(packs.charge().value(), 0.5, 1e-9);
    EXPECT_FALSE(packs.beyond_usable());
}
TEST(packs, alike_or_not_they_stand_as_by_hand) {
    stand_as_by_hand<outage::LikePacks>(alike());
    stand_as_by_hand<outage::UnlikePacks>(unlike());
}

// 10 Ah each are left of what may be used; a twentieth of the charge is 5 Ah each.
template <class Packs>
void usable_limit(const outage::Unit& unit) {
    Packs packs(unit);
    auto leg = packs.advance(Duty::serving_direct, 100.0 * watt, 10.0 * hour);
    EXPECT_EQ(leg.ending, battery::Ending::usable_limit);
    EXPECT_NEAR(leg.charge / ampere_hour, 20.0, 1e-6);
    // between 12 V and 11.6 V, less at most 45 mV in 5 mohm: 20 Ah at 100 W last 2.32 to 2.4 h
    EXPECT_GT(leg.time / hour, 2.31);
    EXPECT_LT(leg.time / hour, 2.40);
    packs.pass_usable();
    EXPECT_FALSE(packs.restored().usable);
    leg = packs.advance(Duty::serving_direct, -100.0 * watt, 10.0 * hour);
    EXPECT_EQ(leg.ending, battery::Ending::charge_restored);
    EXPECT_NEAR(leg.charge / ampere_hour, -10.0, 1e-6);
    EXPECT_TRUE(packs.restored().usable);
}
TEST(packs, the_usable_limit_ends_a_leg_until_a_twentieth_is_back) {
    usable_limit<outage::LikePacks>(alike());
    usable_limit<outage::UnlikePacks>(unlike());
}

template <class Packs>
void waits(const outage::Unit& unit) {
    Packs packs(unit);
    packs.wait_for_charge();
    EXPECT_FALSE(packs.restored().charge);
    const auto leg = packs.advance(Duty::waiting, -200.0 * watt, 10.0 * hour);
    EXPECT_EQ(leg.ending, battery::Ending::charge_restored);
    EXPECT_NEAR(leg.charge / ampere_hour, -10.0, 1e-6);
    EXPECT_TRUE(packs.restored().charge);
    EXPECT_NEAR(packs.charge().value(), 0.55, 1e-9);
}
TEST(packs, what_waits_for_charge_waits_for_a_twentieth) {
    waits<outage::LikePacks>(alike());
    waits<outage::UnlikePacks>(unlike());
}

// The most that 12 V behind 5 mohm gives is 144 / (4 x 0.005) = 7,200 W.
TEST(packs, no_more_is_given_than_there_is) {
    outage::LikePacks packs(alike());
    EXPECT_TRUE(packs.gives(Duty::serving_direct, 7100.0 * watt, Voltage{}, false));
    EXPECT_FALSE(packs.gives(Duty::serving_direct, 7300.0 * watt, Voltage{}, false));
    EXPECT_FALSE(packs.gives(Duty::serving_direct, 1150.0 * watt, 11.6 * volt, false));
    const auto tried = packs.tried(Duty::serving_direct, 7300.0 * watt, 1.0 * hour);
    EXPECT_EQ(tried.ending, battery::Ending::cannot_be_delivered);
    EXPECT_NEAR(tried.at_most / watt, 7200.0, 1e-6);
    EXPECT_NEAR(packs.charge().value(), 0.5, 1e-12);  // tried is not done
}

}  // namespace
