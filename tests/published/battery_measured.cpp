// Measured batteries that nobody here had in hand, against what is taken where a file is silent.
#include <array>
#include <cmath>

#include <gtest/gtest.h>

#include "battery/advance.hpp"
#include "battery/pack_model.hpp"

namespace {

using namespace battery;
using namespace units;

// [AGM charge] gave 92.3 Ah at 10 A to 10.45 V; what is taken for 100 Ah gives 93.4.
constexpr Charge its_own = 98.8 * ampere_hour;

PackModel agm(Charge holds = 100.0 * ampere_hour) {
    scenario::Pack pack{.name = "main", .chemistry = scenario::Chemistry::agm};
    pack.capacity = 100.0 * ampere_hour;
    pack.tested_capacity = holds;
    pack.lead_resistance = Resistance{};
    scenario::Assumptions untold;
    return pack_model(pack, "pack[0]", celsius(25.0), untold).value();
}

// [AGM charge]: 100 Ah at 10 A from full, volts by what is left of 100 Ah. On its rested table and
// 8 milliohm an AGM battery stands 0.11 to 1.0 V too high here.
TEST(published_measured, an_agm_battery_while_it_is_drawn) {
    const PackModel model = agm(its_own);
    const Prepared pack = prepare(arranged(model, Resistance{}, {.removed_above = 1e9 * coulomb}));
    struct Row {
        double left;
        double volts;
    };
    constexpr std::array rows{Row{0.80, 12.377}, Row{0.70, 12.238}, Row{0.60, 12.095},
                              Row{0.50, 11.947}, Row{0.40, 11.787}, Row{0.30, 11.599},
                              Row{0.20, 11.353}, Row{0.15, 11.172}, Row{0.10, 10.854},
                              Row{0.08, 10.537}};
    double largest = 0.0;
    for (const Row& row : rows) {
        const Duration until = (1.0 - row.left) * 10.0 * hour;
        const auto there = advance(pack, model.at_start, 10.0 * ampere, until);
        const double off = there.voltage / volt - row.volts;
        EXPECT_NEAR(off, 0.0, 0.05) << row.left;
        largest = std::max(largest, std::abs(off));
    }
    RecordProperty("largest_mV", static_cast<int>(std::lround(1000.0 * largest)));
    std::cout << "largest error below 90 %: " << 1000.0 * largest << " mV\n";
}

// [AGM charge], about 119 W: Wh until each cut-off. On the rested table 1,114 Wh down to 11.6 V,
// 939 and 750 Wh at 11.8 and 12.0 V: 15 to 31 % too much from 11.6 V on.
TEST(published_measured, what_an_agm_battery_gives_to_each_cut_off) {
    const PackModel model = agm();
    struct Row {
        double cut_off;
        double watt_hours;
    };
    constexpr std::array rows{Row{10.5, 1100.0}, Row{11.0, 1058.0}, Row{11.3, 985.0},
                              Row{11.6, 850.0},  Row{11.8, 724.0},  Row{12.0, 574.0}};
    for (const Row& row : rows) {
        const Prepared pack = prepare(arranged(
            model, Resistance{}, {.cut_off = row.cut_off * volt, .removed_above = 1e9 * coulomb}));
        const auto run = advance(pack, model.at_start, 119.0 * watt, 100.0 * hour);
        const double given = run.energy.delivered / watt_hour;
        EXPECT_NEAR(given, row.watt_hours, 0.08 * row.watt_hours) << row.cut_off;
        std::cout << row.cut_off << " V: " << given << " Wh, measured " << row.watt_hours << "\n";
    }
}

// [AGM charge]: 31.2 A from empty. Other batteries lie 0.3 V off as well.
TEST(published_measured, an_agm_battery_while_it_is_charged) {
    const PackModel model = agm();
    auto arrangement = arranged(model, Resistance{}, {});
    arrangement.charging.largest = 40.0 * ampere;
    arrangement.charging.absorption = 16.0 * volt;
    const Prepared pack = prepare(arrangement);
    struct Row {
        double left;
        double volts;
    };
    constexpr std::array rows{Row{0.14, 12.76}, Row{0.22, 12.91}, Row{0.29, 13.05},
                              Row{0.37, 13.20}, Row{0.44, 13.37}, Row{0.52, 13.56},
                              Row{0.59, 13.78}, Row{0.64, 13.97}};
    const Wells empty = rested_with(model.capacity, StateOfCharge(0.0));
    for (const Row& row : rows) {
        const Duration until = row.left * model.capacity / (0.97 * 31.2 * ampere);
        const auto there = advance(pack, empty, -31.2 * ampere, until);
        EXPECT_NEAR(there.voltage / volt, row.volts, 0.25) << row.left;
        std::cout << row.left << ": " << there.voltage / volt << " V, measured " << row.volts
                  << "\n";
    }
}

}  // namespace
