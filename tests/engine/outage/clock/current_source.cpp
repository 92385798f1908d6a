#include "outage/clock/current_source.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "battery/pack_model.hpp"
#include "outage/clock/clock.hpp"

namespace {

using namespace units;

// 8 A beside a load on a source of 12.5 V behind 10 milliohm, 50 while it is charged: two roots of
// V = (E' + sqrt(E'^2 - 4 R P))/2 with E' = 12.5 V + R 8 A, worked by hand and solved again by
// bisection outside this program.
TEST(current_source, a_current_beside_a_load_charges_or_helps) {
    const auto voltage_at = [](Power net) {
        const double ohms = net < Power{} ? 0.05 : 0.01;
        return 0.5 * (12.5 + std::sqrt(12.5 * 12.5 - 4.0 * ohms * (net / watt))) * volt;
    };
    const auto packs_give = [&](double load, double& volts) {
        const Power net =
            load * watt - outage::power_passed(8.0 * ampere, load * watt, 100.0 * watt, voltage_at);
        volts = voltage_at(net) / volt;
        return net / watt / volts;
    };
    double volts = 0.0;
    EXPECT_NEAR(packs_give(60.0, volts), -3.261820, 5e-7);
    EXPECT_NEAR(volts, 12.663091, 5e-7);
    EXPECT_NEAR(packs_give(160.0, volts), 4.849856, 5e-7);
    EXPECT_NEAR(volts, 12.451501, 5e-7);
    EXPECT_EQ(outage::power_passed(Current{}, 60.0 * watt, {}, voltage_at), Power{});
}

outage::Unit unit_of(const battery::PackModel& model, int count) {
    outage::Unit unit;
    unit.bank = {.setup = battery::arranged(model, 0.002 * ohm, {}),
                 .count = count,
                 .rated = model.capacity,
                 .usable = model.usable,
                 .at_start = model.at_start};
    return unit;
}

battery::PackModel agm(double charge) {
    scenario::Pack pack{.name = "main", .chemistry = scenario::Chemistry::agm};
    pack.capacity = 100.0 * ampere_hour;
    pack.charge = StateOfCharge(charge);
    scenario::Assumptions untold;
    return battery::pack_model(pack, "pack[0]", celsius(25.0), untold).value();
}

// Ampere-hours out of the panels are those into loads and packs. What the packs keep is told by
// their wells, 97 % of what comes in.
TEST(current_source, no_charge_comes_from_nowhere) {
    const auto model = agm(0.5);
    const auto unit = unit_of(model, 2);
    for (const double load : {0.0, 40.0, 90.0, 97.0, 150.0, 400.0}) {
        outage::LikePacks packs(unit);
        const Duration time = 15.0 * minute;
        const Current passes = 8.0 * ampere;
        const double before = packs.charge().value();
        const Power given = outage::power_passed_over(packs, outage::Duty::serving_direct, passes,
                                                      load * watt, 100.0 * watt, time);
        const outage::Leg leg =
            packs.advance(outage::Duty::serving_direct, load * watt - given, time);
        ASSERT_EQ(leg.ending, battery::Ending::completed);
        const Charge out_of_panels = passes * time;
        const Charge into_loads = load * watt / outage::mean_voltage(leg) * time;
        EXPECT_NEAR((into_loads - leg.charge) / out_of_panels, 1.0, 1e-12) << load;
        const double kept = (packs.charge().value() - before) * 2.0 * (model.capacity / coulomb);
        const double into_packs = -leg.charge / coulomb;
        EXPECT_NEAR(kept, into_packs > 0.0 ? 0.97 * into_packs : into_packs,
                    1e-9 * (out_of_panels / coulomb))
            << load;
    }
}

// Against a march of one second a step: the current of the panels all day, beside a load that comes
// and goes, until absorption holds its voltage.
TEST(current_source, a_day_by_the_clock_is_a_day_by_seconds) {
    const auto model = agm(0.4);
    const auto unit = unit_of(model, 1);
    std::vector<demand::DemandStep> demand;
    std::vector<outage::SunChange> sun;
    for (int quarter = 0; quarter < 40; ++quarter) {
        const Duration from = 0.25 * quarter * hour;
        const Power load = (quarter % 8 < 2 ? 120.0 : 20.0) * watt;
        demand.push_back({.from = from, .direct = load, .direct_useful = load});
        const Current passes = (quarter < 4 ? 3.0 : 14.0) * ampere;
        sun.push_back({.from = from, .offered = passes * 13.2 * volt, .passes = passes});
    }
    const auto course = outage::run(unit, demand, sun, 10.0 * hour, 6.0 * hour);
    const auto pack = battery::prepare(unit.bank.setup);
    battery::Wells wells = unit.bank.at_start;
    double voltage = 13.0;
    double highest = 0.0;
    for (int second_of = 0; second_of < 36'000; ++second_of) {
        const auto quarter = std::size_t(second_of / 900);
        const Power net = demand[quarter].direct - sun[quarter].passes * voltage * volt;
        const auto step = battery::advance(pack, wells, net, 1.0 * second);
        wells = step.wells;
        voltage = step.voltage / volt;
        highest = std::max(highest, voltage);
    }
    EXPECT_NEAR(highest, 14.4, 1e-6);
    EXPECT_NEAR(course.trace.back().voltage / volt, voltage, 0.005);
    EXPECT_NEAR(course.trace.back().charge.value(), 1.0 - wells.removed / model.capacity, 2e-4);
    EXPECT_LT(course.ledger.relative_residual, 1e-9);
}

}  // namespace
