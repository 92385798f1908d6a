// Who is in, who goes first and who comes back at what voltage: by hand from method.md (15).
#include "outage/clock/supply.hpp"

#include <cmath>

namespace {

using namespace units;
using outage::LimitedBy;

// An inverter that switches off at 10.5 V and on again at 12.5 V by itself, without loss but 10 W.
outage::Unit with_inverter(scenario::Restart restart = scenario::Restart::by_itself) {
    outage::Unit unit;
    unit.inverter =
        inverter::Model{.continuous = 1000.0 * watt,
                        .continuous_apparent = 1000.0 * volt_ampere,
                        .losses = {.idle = 10.0 * watt, .linear = 0.1, .rating = 1000.0 * watt},
                        .cutoff_voltage = 10.5 * volt,
                        .restart_voltage = 12.5 * volt};
    unit.inverter->restart = restart;
    return unit;
}

// A lamp of 20 W that bears 10.5 V and a cooler of 60 W that bears 11 V.
outage::Parts lamp_and_cooler() {
    return {.direct = {{.load = 4,
                        .lowest = 10.5 * volt,
                        .ways = {},
                        .draws = {{{}, 20.0 * watt, 18.0 * watt}}},
                       {.load = 7,
                        .lowest = 11.0 * volt,
                        .ways = {},
                        .draws = {{{}, 60.0 * watt, 60.0 * watt}}}},
            .ways = {},
            .bus = 12.8 * volt};
}

const demand::DemandStep step{
    .ac = 100.0 * watt, .direct = 80.0 * watt, .direct_useful = 78.0 * watt, .inverter_on = true};

// 100 W through the inverter are 100 + 10 + 10 W.
TEST(supply, all_that_is_in_is_taken_at_the_bus) {
    const auto unit = with_inverter();
    const auto parts = lamp_and_cooler();
    outage::Supply supply(unit, &parts);
    supply.weigh(step);
    supply.look_at(step, {});
    auto taken = supply.taken(step, {});
    EXPECT_NEAR(taken.at_bus() / watt, 200.0, 1e-9);
    EXPECT_NEAR(taken.served / watt, 178.0, 1e-9);
    supply.set_out(supply.parts()[2], true);  // the cooler
    taken = supply.taken(step, {});
    EXPECT_NEAR(taken.at_bus() / watt, 140.0, 1e-9);
    EXPECT_NEAR(taken.wanted / watt, 178.0, 1e-9);
    EXPECT_NEAR(taken.served / watt, 118.0, 1e-9);
    EXPECT_NEAR(taken.converter / watt, 2.0, 1e-9);
    supply.set_out(supply.inverter(), true);
    EXPECT_NEAR(supply.taken(step, {}).at_bus() / watt, 20.0, 1e-9);
}

// The cooler needs 11 V, lamp and inverter 10.5 V, of which the inverter draws more.
TEST(supply, who_needs_the_most_voltage_goes_first_and_of_equal_ones_the_heaviest) {
    const auto unit = with_inverter();
    const auto parts = lamp_and_cooler();
    outage::Supply supply(unit, &parts);
    supply.weigh(step);
    supply.look_at(step, {});
    EXPECT_EQ(supply.first_to_go(step)->id, 7U);
    EXPECT_EQ(supply.lowest(), 11.0 * volt);
    supply.set_out(*supply.first_to_go(step), true);
    EXPECT_TRUE(supply.first_to_go(step)->is_inverter());
    EXPECT_TRUE(supply.heaviest(step)->is_inverter());
    supply.set_out(supply.inverter(), true);
    EXPECT_EQ(supply.first_to_go(step)->id, 4U);
    EXPECT_EQ(supply.lowest(), 10.5 * volt);
}

// 0.3 V above its own 11 V after a minute, where low voltage put it out; an empty well lets it ask
// at its own.
TEST(supply, a_load_comes_back_a_little_above_where_it_went_out) {
    const auto unit = with_inverter();
    const auto parts = lamp_and_cooler();
    outage::Supply supply(unit, &parts);
    supply.weigh(step);
    supply.look_at(step, {});
    auto& cooler = supply.parts()[2];
    supply.set_out(cooler, true);
    cooler.why = LimitedBy::low_voltage;
    cooler.since = 1.0 * hour;
    EXPECT_NEAR(supply.needed(cooler) / volt, 11.3, 1e-12);
    EXPECT_FALSE(supply.comes_by_itself(cooler, 1.0 * hour + 59.0 * second));
    EXPECT_TRUE(supply.comes_by_itself(cooler, 1.0 * hour + 60.0 * second));
    EXPECT_NEAR(supply.rest_ends(1.0 * hour) / minute, 61.0, 1e-9);
    cooler.why = LimitedBy::charge;
    EXPECT_NEAR(supply.needed(cooler) / volt, 11.0, 1e-12);
    EXPECT_TRUE(std::isinf(supply.rest_ends(1.0 * hour) / second));
}

// Five minutes of rest; by hand only when somebody asks, 0.2 V above its cut-off.
TEST(supply, an_inverter_rests_five_minutes) {
    for (const auto restart : {scenario::Restart::by_itself, scenario::Restart::by_hand}) {
        const auto unit = with_inverter(restart);
        outage::Supply supply(unit, nullptr);
        supply.weigh(step);
        supply.look_at(step, {});
        auto& inverter = supply.inverter();
        supply.set_out(inverter, true);
        inverter.since = 1.0 * hour;
        const bool by_itself = restart == scenario::Restart::by_itself;
        EXPECT_TRUE(supply.rests(inverter, 1.0 * hour + 299.0 * second));
        EXPECT_FALSE(supply.comes_by_itself(inverter, 1.0 * hour + 299.0 * second));
        EXPECT_EQ(supply.comes_by_itself(inverter, 1.0 * hour + 300.0 * second), by_itself);
        EXPECT_EQ(supply.by_hand(inverter), !by_itself);
        EXPECT_EQ(std::isinf(supply.rest_ends(1.0 * hour) / second), !by_itself);
        supply.ask_all();
        EXPECT_NEAR(supply.rest_ends(1.0 * hour) / minute, 65.0, 1e-9);
        EXPECT_NEAR(supply.by_hand_above() / volt, 10.7, 1e-12);
        EXPECT_NEAR(supply.comes_on_at() / volt, 12.5, 1e-12);
    }
}

}  // namespace
