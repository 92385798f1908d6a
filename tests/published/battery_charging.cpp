// The voltage of lead-acid while charge goes in, against values worked out apart from this program
// and against batteries that were measured.
#include <cmath>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/percent.hpp"
#include "battery/pack_model.hpp"
#include "battery/substep.hpp"

namespace {

using namespace battery;
using namespace units;
using scenario::Chemistry;

constexpr Charge rated = 100.0 * ampere_hour;
constexpr double never_fast = 1e6;

// Above the rested table; sealed packs as [Schiffer 2007] has them. What is shipped for AGM counts
// from the level it is drawn from: below.
ChargingResistance resistance_of(Chemistry chemistry) {
    const auto typical =
        *defaults_of(chemistry == Chemistry::flooded ? chemistry : Chemistry::gel).charging.value;
    return {.when_empty = typical.when_empty,
            .rise = typical.rise,
            .rated = rated,
            .knee = never_fast * ampere,
            .beyond = 0.353};
}

// One well, so that nothing but the resistance adds to the rested voltage.
double first_moment(Chemistry chemistry, double charge, double current) {
    const Arrangement pack{.kinetics = {.total = rated},
                           .open_circuit = &open_circuit_of(chemistry),
                           .inner = defaults_of(chemistry).resistance_of_100_ampere_hours.value,
                           .charging = {.resistance = resistance_of(chemistry)}};
    const Wells wells = rested_with(rated, StateOfCharge(charge));
    return advance(prepare(pack), wells, -current * ampere, Duration{}).voltage / volt;
}

// Rested voltage + (a/C_r) (1 + b S/(1.001 - S)) I, worked by hand with the rested tables: 5 Ohm Ah
// and 0.30 for flooded, 2.52 and 0.888 for the others.
TEST(battery_charging, the_first_minutes_of_a_charge) {
    constexpr double charges[] = {0.1, 0.2, 0.3, 0.5, 0.6, 0.7, 0.8, 0.9};
    struct Line {
        Chemistry chemistry;
        double current;
        std::array<double, 8> volts;
    };
    const Line lines[] = {
        {Chemistry::flooded, 5.0, {11.766, 11.927, 12.096, 12.427, 12.602, 12.796, 13.047, 13.536}},
        {Chemistry::flooded,
         10.0,
         {12.025, 12.195, 12.378, 12.752, 12.964, 13.221, 13.595, 14.455}},
        {Chemistry::agm, 5.0, {11.988, 12.114, 12.284, 12.608, 12.773, 12.976, 13.241, 13.903}},
        {Chemistry::agm, 10.0, {12.127, 12.268, 12.458, 12.845, 13.067, 13.362, 13.813, 15.03}},
        {Chemistry::gel, 10.0, {12.077, 12.308, 12.448, 12.775, 12.987, 13.322, 13.843, 15.10}}};
    for (const Line& line : lines)
        for (std::size_t i = 0; i < std::size(charges); ++i)
            EXPECT_NEAR(first_moment(line.chemistry, charges[i], line.current), line.volts[i],
                        line.volts[i] > 15.0 ? 0.0051 : 0.00051)
                << defaults_of(line.chemistry).name << " at " << charges[i];
}

// Two wells whose rested table is one of the rated charge, as the values below were worked with.
struct Worked {
    Kinetics kinetics;
    OpenCircuit table;
};
Worked worked(Chemistry chemistry, double available, double rate) {
    const Kinetics unit{1.0 * coulomb, Share(available), rate * per_hour};
    const Kinetics kinetics{rated * (1.0 * coulomb / capacity_over(unit, 20.0 * hour)),
                            unit.available, unit.rate};
    const OpenCircuit& source = open_circuit_of(chemistry);
    std::vector<Knot> knots;
    const double lowest = lowest_charge(kinetics, rated).value();
    const Piece& first = source.piece(0);
    knots.push_back({StateOfCharge(0.0), (first.at_zero + first.slope * lowest) * volt});
    for (int i = 0; i <= source.pieces(); ++i) {
        const double charge = i < source.pieces() ? source.piece(i).low : 1.0;
        const double fill =
            charge < 1.0 ? fill_with(kinetics, rated, StateOfCharge(charge)).value() : 1.0;
        knots.push_back({StateOfCharge(fill), source.voltage(StateOfCharge(charge))});
    }
    return {kinetics, *OpenCircuit::through(knots)};
}

// Worked by closed form and by integration: from half charge at one current, 95 % of it stored.
TEST(battery_charging, absorption_is_reached_or_the_available_well_full) {
    struct Line {
        Chemistry chemistry;
        double available, rate, absorption;
        std::array<double, 3> reaches_after, reaches_at, full_after, full_at;
    };
    const Line lines[] = {{Chemistry::flooded,
                           0.43,
                           0.70,
                           14.82,
                           {9.696, 4.313, 1.484},
                           {0.9605, 0.9098, 0.7820},
                           {8.637, 3.530, 1.433},
                           {0.9103, 0.8353, 0.7722}},
                          {Chemistry::agm,
                           0.465,
                           0.87,
                           14.40,
                           {8.983, 3.713, 1.152},
                           {0.9267, 0.8528, 0.7189},
                           {9.204, 3.982, 1.630},
                           {0.9372, 0.8783, 0.8096}},
                          {Chemistry::gel,
                           0.63,
                           0.50,
                           14.10,
                           {8.494, 3.328, 0.949},
                           {0.9035, 0.8162, 0.6803},
                           {9.363, 4.230, 1.909},
                           {0.9447, 0.9019, 0.8627}}};
    for (const Line& line : lines) {
        const Worked made = worked(line.chemistry, line.available, line.rate);
        for (std::size_t i = 0; i < 3; ++i) {
            const Current current = std::array{5.0, 10.0, 20.0}[i] * ampere;
            Arrangement pack{.kinetics = made.kinetics,
                             .open_circuit = &made.table,
                             .charging = {.coulombic = Efficiency(0.95),
                                          .resistance = resistance_of(line.chemistry)}};
            const Wells half = rested_with(rated, StateOfCharge(0.5));
            pack.stops.voltage_above = line.absorption * volt;
            // the well is full first where that comes sooner; else nothing hinders the voltage
            const bool well_first = line.full_after[i] < line.reaches_after[i];
            const auto to_full = time_to_full(made.kinetics, half, -0.95 * current);
            ASSERT_TRUE(to_full);
            EXPECT_NEAR(*to_full / hour, line.full_after[i], 0.00051);
            EXPECT_NEAR(
                charge_left(rated, after(made.kinetics, half, -0.95 * current, *to_full)).value(),
                line.full_at[i], 0.000051);
            if (well_first) continue;
            const Advanced run = advance(prepare(pack), half, -current, 20.0 * hour);
            EXPECT_EQ(run.ending, Ending::voltage_restored);
            EXPECT_NEAR(run.time / hour, line.reaches_after[i], 0.00051)
                << defaults_of(line.chemistry).name << " " << current / ampere;
            EXPECT_NEAR(charge_left(rated, run.wells).value(), line.reaches_at[i], 0.000051);
        }
    }
}

struct Model {
    PackModel pack;
    Prepared charged_at(Current largest, double filled_to) const {
        Arrangement made = arranged(pack, {}, {});
        made.charging.largest = largest;
        made.stops.removed_below = (1.0 - filled_to) * pack.capacity;
        return prepare(made);
    }
};
Model model_of(Chemistry chemistry) {
    scenario::Assumptions taken;
    scenario::Pack pack;
    pack.chemistry = chemistry;
    pack.capacity = rated;
    return {*pack_model(pack, "pack", celsius(25.0), taken)};
}

// [AGM charge]: 31.2 A into a 100 Ah sealed battery from empty, 25 to 33 degC. Above 52 % its
// charge stands where the wells no longer take all of the current. With the inner resistance alone
// the same rows lie 0.4 to 0.7 V too low from 30 % on.
TEST(battery_charging, a_fast_charge_that_was_measured) {
    const Model agm = model_of(Chemistry::agm);
    Arrangement pack = arranged(agm.pack, {}, {});
    pack.path = Resistance{};
    pack.charging.largest.reset();
    pack.charging.absorption.reset();
    struct Row {
        double charge, volts;
    };
    constexpr Current current = 31.2 * ampere;
    Wells wells = rested_with(agm.pack.kinetics.total,
                              fill_with(agm.pack.kinetics, agm.pack.capacity, StateOfCharge(0.0)));
    double before = 0.0;
    for (const Row& row : {Row{0.08, 12.59},
                           {0.14, 12.76},
                           {0.22, 12.91},
                           {0.29, 13.05},
                           {0.37, 13.20},
                           {0.44, 13.37},
                           {0.52, 13.56}}) {
        const Charge in = (row.charge - before) * rated / 0.97;
        const Advanced run = advance(prepare(pack), wells, -current, in / current);
        EXPECT_NEAR(run.voltage / volt, row.volts, 0.25) << row.charge;
        std::printf("%.2f: measured %.2f V, here %+.3f V of it\n", row.charge, row.volts,
                    double(run.voltage / volt) - row.volts);
        wells = run.wells;
        before = row.charge;
    }
}

// [AGM charge log]: a used battery of 105 Ah that gave 95.7 Ah at its 20 h rate, 24.7 degC.
Model logged_battery() {
    scenario::Assumptions taken;
    scenario::Pack pack;
    pack.chemistry = Chemistry::agm;
    pack.capacity = 105.0 * ampere_hour;
    pack.tested_capacity = 95.69 * ampere_hour;
    return {*pack_model(pack, "pack", celsius(24.7), taken)};
}

// Drawn to 47.4 Ah: 14.4 V some 76 min after 21 A began, 26.7 Ah later, and some 20 min after 42 A
// began, 13.5 Ah later. The first is met within a minute. At 42 A it stands against [AGM charge],
// another battery, which showed 13.56 V at 52 % at 31 A, 0.12 V less than told: both cannot be met
// by one law, so this one is met to a half.
TEST(battery_charging, when_fourteen_point_four_volts_are_reached) {
    struct Row {
        double current, hours, in;
    };
    for (const Row& row : {Row{42.0, 20.0 / 60.0, 13.5}, {21.0, 76.0 / 60.0, 26.7}}) {
        const Model agm = logged_battery();
        Arrangement pack = arranged(agm.pack, {}, {});
        pack.path = Resistance{};
        pack.charging.largest.reset();
        pack.charging.absorption.reset();
        pack.stops.voltage_above = 14.4 * volt;
        const Advanced run =
            advance(prepare(pack), rested_with(agm.pack.capacity, StateOfCharge(47.36 / 95.69)),
                    -row.current * ampere, 10.0 * hour);
        EXPECT_EQ(run.ending, Ending::voltage_restored);
        std::printf("%.0f A: %.1f min (measured %.0f), %.1f Ah (%.1f)\n", row.current,
                    double(run.time / minute), 60.0 * row.hours,
                    double(run.charge_in / ampere_hour), row.in);
        const bool fast = row.current > 30.0;
        EXPECT_NEAR(run.time / minute, 60.0 * row.hours, fast ? 9.0 : 2.0);
        EXPECT_NEAR(run.charge_in / ampere_hour, row.in, fast ? 7.0 : 0.7);
    }
}

// The same battery, from 48.0 Ah, an hour at no more than 42 A and 14.4 V: 33.4 Ah could be drawn
// more. Told are 28.4: the model's available well is full too soon, on the cautious side.
TEST(battery_charging, what_an_hour_puts_back) {
    const Model agm = logged_battery();
    Arrangement pack = arranged(agm.pack, {}, {});
    pack.path = Resistance{};
    pack.charging.largest = 42.0 * ampere;
    pack.charging.absorption = 14.4 * volt;
    const auto before = rested_with(agm.pack.capacity, StateOfCharge(47.98 / 95.69));
    const Advanced run = advance(prepare(pack), before, -1000.0 * watt, 1.0 * hour);
    const double back = (before.removed - run.wells.removed) / ampere_hour;
    std::printf("an hour at 42 A, 14.4 V: %.1f Ah (measured 33.4)\n", back);
    EXPECT_LE(back, 33.43);
    EXPECT_GE(back, 0.84 * 33.43);
}

// [Slow charge chart], C/40. Told are 0.1 to 0.6 V less: the law is one of a resistance, and what a
// slow charge stands above rest hardly falls with the current. A known difference, in method.md.
TEST(battery_charging, flooded_charged_slowly) {
    const Model flooded = model_of(Chemistry::flooded);
    Arrangement pack = arranged(flooded.pack, {}, {});
    pack.path = Resistance{};
    pack.charging.largest.reset();
    pack.charging.absorption.reset();
    struct Row {
        double charge, volts;
    };
    for (const Row& row : {Row{0.2, 12.2},
                           {0.3, 12.55},
                           {0.4, 12.7},
                           {0.5, 12.8},
                           {0.6, 12.9},
                           {0.7, 12.95},
                           {0.8, 13.0},
                           {0.9, 13.15}}) {
        const Advanced run = advance(prepare(pack), rested_with(rated, StateOfCharge(row.charge)),
                                     -2.5 * ampere, Duration{});
        EXPECT_LT(run.voltage / volt, row.volts);
        EXPECT_GT(run.voltage / volt, row.volts - 0.62);
        std::printf("%.1f: chart %.2f V, here %+.3f V of it\n", row.charge, row.volts,
                    double(run.voltage / volt) - row.volts);
    }
}

// Common practice: 1.10 to 1.20 times what was drawn for flooded; for sealed ones a maker's notes
// give 1.02 to 1.05 at least.
TEST(battery_charging, recharge_factors) {
    for (const auto& [chemistry, least, most] :
         {std::tuple(Chemistry::flooded, 1.10, 1.20), std::tuple(Chemistry::agm, 1.02, 1.05),
          std::tuple(Chemistry::gel, 1.02, 1.05)})
        for (const double current : {5.0, 10.0, 20.0}) {
            const Model model = model_of(chemistry);
            const Advanced run = advance(model.charged_at(current * ampere, 0.99),
                                         rested_with(rated, StateOfCharge(0.5)),
                                         -current * 20.0 * watt, 100.0 * hour);
            EXPECT_EQ(run.ending, Ending::charge_restored);
            const double factor = run.charge_in / (0.49 * rated);
            EXPECT_GE(factor, least) << defaults_of(chemistry).name << " " << current;
            EXPECT_LE(factor, most) << defaults_of(chemistry).name << " " << current;
            // the controller's voltage is reached, and held
            EXPECT_NEAR(run.voltage / volt, defaults_of(chemistry).absorption.value / volt, 1e-6);
        }
}

// 12.50 V, 2 mV an ampere in the mean of the step, 0.05 ohm of path and charging, 95 % stored,
// 100 W: worked by hand.
TEST(battery_charging, a_power_into_a_pack) {
    const step::Ohms<double> resistance =
        step::resistance_of_step(step::Ohms<double>{0.05}, 0.95, step::Ohms<double>{0.002});
    const step::Added<double> none{};
    const step::Amperes<double> knee{never_fast};
    const auto taking = step::taking_of<double>({12.5}, resistance, none, knee);
    const auto current = step::charging_at<double>(
        {-100.0}, taking, knee, step::Amperes<double>{-100.0}, step::Volts<double>{99.0});
    EXPECT_NEAR(-current.amount.value, 7.750583, 1e-6);
    EXPECT_NEAR(100.0 / -current.amount.value, 12.902255, 1e-6);
}

}  // namespace
