#include "outage/clock/inverter_draw.hpp"

#include "battery/cell/chemistry.hpp"
#include "outage/clock/clock.hpp"
#include "support/holds.hpp"

namespace {

using namespace units;
using outage::EventKind;

// Ten packs of 100 Ah, 10 mohm each and no leads: 1 mohm together.
outage::Bank ten_packs() {
    outage::Bank bank{.count = 10};
    bank.setup = {.kinetics = {.total = 100.0 * ampere_hour},
                  .open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4),
                  .inner = 0.010 * ohm};
    bank.rated = 100.0 * ampere_hour;
    bank.usable = 100.0 * ampere_hour;
    return bank;
}

// It gives what it draws, so that 1,200 W at its outlets are 100 A at 12.0 V.
outage::Unit behind(Resistance main_path, Voltage cut_off = 12.0 * volt) {
    return {.bank = ten_packs(),
            .main_path = main_path,
            .inverter = inverter::Model{.continuous = 2000.0 * watt,
                                        .continuous_apparent = 2000.0 * volt_ampere,
                                        .losses = {.rating = 2000.0 * watt},
                                        .cutoff_voltage = cut_off,
                                        .restart_voltage = 13.6 * volt}};
}

demand::DemandStep step(Power ac, Power direct) {
    return {.ac = ac, .direct = direct, .direct_useful = direct, .inverter_on = true};
}

// 100 A through 10 mohm lose 1.0 V and 100 W; the bus at 13.0 V then.
TEST(inverter_draw, the_main_path_takes_what_its_own_current_makes_of_it) {
    const auto unit = behind(0.010 * ohm);
    EXPECT_NEAR(outage::current_in_main(unit, 1200.0 * watt, 13.0 * volt) / ampere, 100.0, 1e-9);
    for (const Power direct : {Power{}, 260.0 * watt}) {  // 20 A of 12 V loads beside it
        const auto draw = outage::drawn_by_inverter(unit, step(1200.0 * watt, direct));
        EXPECT_EQ(draw.at_terminals, 1200.0 * watt);
        EXPECT_NEAR(draw.needs / volt, 13.0, 1e-9);  // and not 13.2 V
        EXPECT_TRUE(draw.carried);
    }
    // with packs half full and 3 % of it lost in them: what is lost and what arrives are what the
    // bus gives
    const auto draw = outage::drawn_by_inverter(unit, step(600.0 * watt, {}));
    const auto half = unit.bank.setup.open_circuit->voltage(StateOfCharge(0.5));
    const double current = std::sqrt(draw.in_main / watt / 0.010);
    EXPECT_NEAR((0.97 * half / volt - 0.010 * current) * current, 600.0, 1e-9);
    EXPECT_EQ(draw.at_bus(), draw.at_terminals + draw.in_main);
}

TEST(inverter_draw, nothing_resists_or_nothing_is_drawn) {
    const auto thick = outage::drawn_by_inverter(behind({}), step(1200.0 * watt, {}));
    EXPECT_EQ(thick.in_main, Power{});
    EXPECT_EQ(thick.needs, 12.0 * volt);
    const auto idle = outage::drawn_by_inverter(behind(0.010 * ohm), step({}, {}));
    EXPECT_EQ(idle.in_main, Power{});
    EXPECT_EQ(idle.needs, 12.0 * volt);
    auto off = step(1200.0 * watt, {});
    off.inverter_on = false;
    EXPECT_EQ(outage::drawn_by_inverter(behind(0.010 * ohm), off).at_bus(), Power{});
    EXPECT_EQ(outage::drawn_by_inverter(behind(0.010 * ohm), off).needs, Voltage{});
    EXPECT_FALSE(outage::drawn_by_inverter(behind(0.010 * ohm), step(2001.0 * watt, {})).carried);
}

// 1,200 W behind 100 mohm come at no voltage below 2 sqrt(120) = 21.9 V of the bus.
TEST(inverter_draw, more_than_the_path_can_carry_needs_more_than_there_is) {
    const auto draw =
        outage::drawn_by_inverter(behind(0.100 * ohm, 10.0 * volt), step(1200.0 * watt, {}));
    EXPECT_NEAR(draw.needs / volt, 21.9089, 1e-4);
    EXPECT_NEAR(draw.in_main / watt, 1200.0, 1e-6);  // half of it, at the largest power
}

// A lamp of 20 A at the bus. The inverter goes off where its own 100 A leave it 12.0 V: the bus at
// 13.0 V, though 120 A come from the packs.
TEST(inverter_draw, its_cut_off_is_seen_at_its_own_terminals) {
    const auto unit = behind(0.010 * ohm);
    const std::vector demand{step(1200.0 * watt, 260.0 * watt)};
    const auto course = outage::run(unit, demand, {}, 12.0 * hour, 12.0 * hour);
    ASSERT_EQ(course.limited_by, outage::LimitedBy::low_voltage);
    EXPECT_GT(course.lasts, 1.0 * hour);
    const auto off =
        std::ranges::find(course.events, EventKind::inverter_off_low_voltage, &outage::Event::kind);
    ASSERT_NE(off, course.events.end());
    EXPECT_EQ(off->at, course.lasts);
    // up to that moment
    const auto before = outage::run(unit, demand, {}, course.lasts, 12.0 * hour);
    EXPECT_NEAR(before.lowest_voltage / volt, 13.0, 1e-3);
    EXPECT_NEAR(before.highest_main_current / ampere, 100.0, 0.1);
    EXPECT_LT(before.ledger.relative_residual, 1e-9);
}

// What charges the packs and what 12 V loads draw does not go that way: to the last bit the same.
TEST(inverter_draw, charging_and_loads_at_the_bus_lose_nothing_in_the_main_path) {
    const auto course = [](Resistance main_path) {
        auto unit = behind(main_path);
        unit.bank.at_start.removed = 50.0 * ampere_hour;
        auto dark = step({}, 260.0 * watt);
        dark.inverter_on = false;
        const std::vector demand{dark};
        const std::vector<outage::SunChange> sun{{.offered = 660.0 * watt}};  // 30 A for the packs
        return outage::run(unit, demand, sun, 6.0 * hour, 12.0 * hour);
    };
    const auto thin = course(0.100 * ohm);
    const auto thick = course({});
    EXPECT_EQ(thin.trace.back().voltage, thick.trace.back().voltage);
    EXPECT_EQ(thin.ledger.sun_stored, thick.ledger.sun_stored);
    EXPECT_EQ(thin.ledger.wiring_loss, Energy{});
    EXPECT_GT(thin.ledger.sun_stored / (30.0 * ampere * 13.0 * volt), 5.5 * hour);
}

// What the ledger calls lost in the wiring: 1,200 W for an hour.
TEST(inverter_draw, its_loss_is_in_the_ledger) {
    const auto unit = behind(0.010 * ohm, 10.0 * volt);
    const auto draw = outage::drawn_by_inverter(unit, step(1200.0 * watt, {}));
    const std::vector demand{step(1200.0 * watt, {})};
    const auto course = outage::run(unit, demand, {}, 1.0 * hour, 12.0 * hour);
    ASSERT_TRUE(course.survives);
    EXPECT_NEAR(course.ledger.wiring_loss / (draw.in_main * hour), 1.0, 1e-12);
    EXPECT_GT(draw.in_main, 90.0 * watt);
    EXPECT_LT(course.ledger.relative_residual, 1e-9);
}

// It bears 95 A and 1,200 W are 92 A from full packs: it opens within a minute of the moment at
// which the falling voltage makes 95 A of them, though nothing switches in between.
TEST(inverter_draw, the_main_fuse_is_looked_at_as_the_voltage_falls) {
    auto unit = behind({}, 10.0 * volt);
    unit.main_fuse = outage::MainFuse{.rating = 95.0 * ampere};
    const std::vector demand{step(1200.0 * watt, {})};
    const auto course = outage::run(unit, demand, {}, 24.0 * hour, 12.0 * hour);
    ASSERT_EQ(course.limited_by, outage::LimitedBy::fuse);
    const auto opens =
        std::ranges::find(course.events, EventKind::main_fuse_opens, &outage::Event::kind);
    ASSERT_NE(opens, course.events.end());
    EXPECT_GT(opens->at, 1.0 * hour);
    EXPECT_GE(opens->current, 95.0 * ampere);
    EXPECT_LT(opens->current, 95.5 * ampere);
}

}  // namespace
