// Packs whose outage can be worked out without the engine: a rested voltage that is one straight
// line, no protection of their own, one 12 V load.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "abreast/own.hpp"
#include "outage/clock/clock.hpp"

namespace by_hand {

using namespace units;

// 12.5 V when empty, 13.5 V when full.
inline const battery::OpenCircuit& straight() {
    static const auto line = battery::OpenCircuit::through(
                                 std::vector<battery::Knot>{{StateOfCharge(0.0), 12.5 * volt, {}},
                                                            {StateOfCharge(1.0), 13.5 * volt, {}}})
                                 .value();
    return line;
}

// One pack; nine tenths of its charge may be used.
inline outage::Bank pack_of(Charge charge, Resistance resistance) {
    outage::Bank bank;
    bank.setup = {.kinetics = {.total = charge},
                  .open_circuit = &straight(),
                  .inner = resistance,
                  .charging = {.allowed = false}};
    bank.rated = charge;
    bank.usable = 0.9 * charge;
    return bank;
}

inline demand::DemandStep draws(Power direct, Duration from = {}) {
    return {.from = from, .direct = direct, .direct_useful = direct, .lowest = 10.5 * volt};
}

// Until nine tenths are drawn, the current being I = (E - sqrt(E^2 - 4 R P)) / (2 R) at each fill:
// the integral of dq / I by Simpson's rule.
inline Duration lasts_at(Charge charge, Resistance resistance, Power power) {
    const double coulombs = charge / coulomb;
    const double ohms = resistance / ohm;
    const double watts = power / watt;
    const auto per_coulomb = [&](double removed) {
        const double rested = 13.5 - removed;
        const double amperes =
            (rested - std::sqrt(rested * rested - 4.0 * ohms * watts)) / (2.0 * ohms);
        return coulombs / amperes;
    };
    constexpr int parts = 200;
    double sum = per_coulomb(0.0) + per_coulomb(0.9);
    for (int i = 1; i < parts; ++i)
        sum += (i % 2 == 1 ? 4.0 : 2.0) * per_coulomb(0.9 * i / parts);
    return 0.9 / parts / 3.0 * sum * second;
}

// Thirty outages that differ in their draw, 40 W and a watt more from each to the next, of a unit
// that holds 90 Ah behind 20/3 milliohm in all.
struct Outages {
    outage::Unit unit;
    std::vector<std::vector<demand::DemandStep>> demands;
    std::vector<abreast::Outage> all;

    explicit Outages(outage::Unit of) : unit(std::move(of)) {
        // switched on the same once more every five minutes
        for (int i = 0; i < 30; ++i) {
            auto& demand = demands.emplace_back();
            for (int part = 0; part < 12 * 40; ++part)
                demand.push_back(draws((40.0 + i) * watt, 5.0 * minute * double(part)));
        }
        for (const auto& demand : demands)
            all.push_back({.unit = &unit, .demand = demand});
    }
};

// 60 Ah behind 10 milliohm and 30 Ah behind 20: they empty together.
inline outage::Unit unlike_packs() {
    return {.bank = pack_of(60.0 * ampere_hour, 0.010 * ohm),
            .others = {pack_of(30.0 * ampere_hour, 0.020 * ohm)}};
}
// Three of 30 Ah behind 20 milliohm each.
inline outage::Unit like_packs() {
    outage::Unit unit{.bank = pack_of(30.0 * ampere_hour, 0.020 * ohm)};
    unit.bank.count = 3;
    return unit;
}

// As worked out without the engine, to the second; and to the last bit as by the clock.
inline void expect_ends(const outage::Unit& unit, abreast::Width width) {
    const auto widths = abreast::widths_here();
    if (std::ranges::find(widths, width) == widths.end())
        GTEST_SKIP() << "not a width of this processor";
    const Outages outages(unit);
    const Duration lasts = 40.0 * hour;
    std::vector<abreast::OwnEnding> ended(outages.all.size());
    abreast::LaneCost cost;
    abreast::run_own(outages.all, lasts, 6.0 * hour, ended, &cost, width);
    EXPECT_EQ(cost.by_clock, 0U);
    EXPECT_LT(10 * cost.one_by_one, cost.steps);  // the rest went abreast
    for (std::size_t i = 0; i < ended.size(); ++i) {
        EXPECT_EQ(ended[i].limited_by, outage::LimitedBy::usable) << i;
        EXPECT_NEAR(
            ended[i].lasts / second,
            lasts_at(90.0 * ampere_hour, 0.020 / 3.0 * ohm, (40.0 + double(i)) * watt) / second,
            1.0)
            << i;
        const auto clock = outage::run(outages.unit, outages.demands[i], {}, lasts, 6.0 * hour,
                                       {.trace = false, .after_failure = false});
        EXPECT_EQ(ended[i].lasts, clock.lasts) << i;
    }
}

}  // namespace by_hand
