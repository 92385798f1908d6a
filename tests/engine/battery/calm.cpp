#include "battery/calm.hpp"

#include <limits>

#include "battery/bus_solver.hpp"
#include "battery/cell/chemistry.hpp"

namespace {

using namespace battery;
using namespace units;

constexpr double never = std::numeric_limits<double>::infinity();
constexpr CalmLimits free_of_all{-never, never, never, -never, -never};
constexpr double coarse = 1.0;  // V, more than any test moves

// An AGM pack of so many Ah and milliohms, at a charge, its bound well higher by `head`.
struct Made {
    Prepared pack;
    WellState state;
    double count = 1.0;

    Made(double hours, double milliohms, double fill, double head = 0.0,
         scenario::Chemistry chemistry = scenario::Chemistry::agm) {
        const auto& defaults = defaults_of(chemistry);
        pack = prepare({.kinetics = {.total = hours * ampere_hour,
                                     .available = defaults.available.value,
                                     .rate = defaults.rate.value},
                        .open_circuit = &open_circuit_of(chemistry),
                        .inner = 0.7e-3 * milliohms * ohm,
                        .path = 0.3e-3 * milliohms * ohm,
                        .charging = {.absorption = 14.4 * volt, .coulombic = Efficiency(0.9)}});
        state = state_of(pack, (1.0 - fill) * pack.total, head * pack.total);
    }
};

Calm calm_of(const std::vector<Made>& made, double shared = 0.0) {
    std::vector<CalmPack> packs;
    for (const Made& each : made)
        packs.push_back({.pack = each.pack,
                         .state = each.state,
                         .count = each.count,
                         .restored_below = -never});
    Calm calm;
    calm.load(packs, shared);
    return calm;
}

// The substep of one pack (substep.hpp) is other code.
TEST(calm, one_pack_does_as_a_substep_of_one_pack_does) {
    for (const double power : {-60.0, 0.0, 90.0}) {
        const Made made(100.0, 8.0, 0.76, 0.03);
        auto calm = calm_of({made});
        ASSERT_EQ(calm.step(power, 300.0, coarse, free_of_all), Calm::Tried::done) << power;
        const Trial trial = try_for(made.pack, made.state, AtPower{power}, 300.0);
        EXPECT_NEAR(calm.wells(0).removed, trial.removed, 1e-9 * made.pack.total);
        EXPECT_NEAR(calm.wells(0).head, trial.head, 1e-12 * made.pack.total);
        Flow flow;
        add(flow, made.pack, made.state, trial);
        EXPECT_NEAR(calm.energy().between, flow.between_wells, 1e-9);
        EXPECT_NEAR(calm.energy().in_charging, flow.in_charging, 1e-9);
        EXPECT_NEAR(calm.energy().in_inner + calm.energy().in_paths, flow.in_resistance, 1e-9);
    }
}

// What charging meets: 25 mohm when empty, ever more towards full, from a knee on a third of it.
void resist(Made& made) {
    made.pack.resists = true;
    made.pack.charging_empty = 0.025;
    made.pack.charging_rise = 0.9;
    made.pack.per_rated = made.pack.per_total;
    made.pack.charging_knee = 14.0;
    made.pack.charging_beyond = 0.35;
}

TEST(calm, a_pack_that_resists_charging_does_as_a_substep_of_one_does) {
    Made made(100.0, 8.0, 0.76, 0.03);
    resist(made);
    auto calm = calm_of({made});
    ASSERT_EQ(calm.step(-60.0, 300.0, coarse, free_of_all), Calm::Tried::done);
    const Trial trial = try_for(made.pack, made.state, AtPower{-60.0}, 300.0);
    EXPECT_NEAR(calm.wells(0).removed, trial.removed, 1e-9 * made.pack.total);
    Flow flow;
    add(flow, made.pack, made.state, trial);
    // a pack alone takes a step of Newton's where the bus draws the root: 1e-8 of it seen
    EXPECT_NEAR(calm.energy().in_charging, flow.in_charging, 1e-7 * flow.in_charging);
    EXPECT_NEAR(calm.energy().at_bus, -flow.accepted, 1e-9);
    // 4.4 A on some 70 mohm
    EXPECT_GT(flow.in_charging, 0.1 * 60.0 * 300.0 * 0.9);
}

TEST(calm, what_flows_beyond_a_knee_is_no_calm) {
    Made made(100.0, 8.0, 0.5);
    resist(made);
    auto calm = calm_of({made});
    EXPECT_TRUE(calm.meets(-100.0));
    EXPECT_FALSE(calm.meets(-250.0));
}

// Five packs are one lane full and one that is not.
TEST(calm, currents_are_those_of_the_bus) {
    const std::vector<Made> made{{100.0, 8.0, 0.70},
                                 {80.0, 12.0, 0.66},
                                 {120.0, 5.0, 0.74},
                                 {60.0, 9.0, 0.69},
                                 {90.0, 7.0, 0.75}};
    auto calm = calm_of(made, 5e-4);
    ASSERT_TRUE(calm.stands(400.0, free_of_all));
    std::vector<Branch> branches;
    for (const Made& each : made)
        branches.push_back({.rested = rested_voltage(each.pack, each.state),
                            .giving = 1.0 / each.pack.resistance,
                            .taking = 1.0 / each.pack.resistance});
    const auto point = bus_at_power(branches, 400.0, 5e-4);
    EXPECT_NEAR(calm.point().voltage, point.voltage, 1e-12);
    EXPECT_NEAR(calm.point().current, point.current, 1e-9);
    for (std::size_t i = 0; i < made.size(); ++i)
        EXPECT_NEAR(calm.current(i), branches[i].current_at(point.node), 1e-9);
}

// The least charged ones are charged by the others.
TEST(calm, without_power_the_voltage_is_that_of_packs_left_alone) {
    const std::vector<Made> made{{100.0, 8.0, 0.70}, {80.0, 12.0, 0.30}, {60.0, 9.0, 0.95}};
    auto calm = calm_of(made, 5e-4);
    std::vector<Branch> branches;
    for (const Made& each : made)
        branches.push_back({.rested = rested_voltage(each.pack, each.state),
                            .giving = 1.0 / each.pack.resistance,
                            .taking = 1.0 / each.pack.resistance});
    double voltage = 0.0;
    ASSERT_TRUE(calm.rests(voltage));
    EXPECT_NEAR(voltage, bus_at_current(branches, 0.0, 5e-4).voltage, 1e-12);
}

// What was worked out for one power is not taken for another, nor for another state.
TEST(calm, a_look_at_the_bus_changes_no_step) {
    const std::vector<Made> made{{100.0, 8.0, 0.78}, {80.0, 12.0, 0.65}, {60.0, 9.0, 0.72}};
    auto looked = calm_of(made);
    auto blind = calm_of(made);
    for (const double power : {40.0, -30.0, 0.0, 90.0, 90.0}) {
        double voltage = 0.0;
        ASSERT_TRUE(looked.meets(power));
        ASSERT_TRUE(looked.rests(voltage));
        ASSERT_TRUE(looked.meets(-power));
        ASSERT_TRUE(looked.stands(power, free_of_all));
        ASSERT_TRUE(blind.stands(power, free_of_all));
        EXPECT_NEAR(looked.point().voltage, blind.point().voltage, 1e-12) << power;
        ASSERT_EQ(looked.step(power, 60.0, coarse, free_of_all), Calm::Tried::done);
        ASSERT_EQ(blind.step(power, 60.0, coarse, free_of_all), Calm::Tried::done);
        for (std::size_t i = 0; i < made.size(); ++i)
            EXPECT_NEAR(looked.wells(i).removed, blind.wells(i).removed, 1e-6);
        ASSERT_EQ(looked.step(power, 3600.0, 1e-6, free_of_all), Calm::Tried::too_long);
        ASSERT_TRUE(looked.meets(power));
        ASSERT_TRUE(blind.meets(power));
        EXPECT_NEAR(looked.point().voltage, blind.point().voltage, 1e-12) << power;
    }
}

TEST(calm, a_limit_that_is_met_hides_no_voltage) {
    auto limits = free_of_all;
    limits.cut_off = 12.6;
    auto calm = calm_of({{100.0, 8.0, 0.72}});
    EXPECT_FALSE(calm.stands(100.0, limits));
    EXPECT_TRUE(calm.meets(100.0));
    EXPECT_LT(calm.point().voltage, 12.6);
    EXPECT_FALSE(calm.meets(1e6));  // more than there is
}

// The integral of the voltage over each well's charge is other code. method.md (15)
TEST(calm, stores_what_its_packs_store) {
    const auto lithium = scenario::Chemistry::lifepo4;
    std::vector<Made> made{{100.0, 8.0, 0.70, 0.03},
                           {80.0, 12.0, 0.10, -0.02},
                           {60.0, 9.0, 1.0},
                           {90.0, 7.0, 0.0},
                           {100.0, 8.0, 0.55, 0.0, lithium}};
    made[1].count = 3.0;
    Energy sum{};
    for (const Made& each : made)
        sum += each.count * stored_energy({.total = each.pack.total * coulomb,
                                           .available = Share(each.pack.width),
                                           .rate = each.pack.rate * hertz},
                                          *each.pack.open_circuit,
                                          {.removed = each.state.removed * coulomb,
                                           .head_difference = each.state.head * coulomb});
    EXPECT_NEAR(calm_of(made).stored() / (sum / joule), 1.0, 1e-12);
}

TEST(calm, what_goes_beyond_the_tolerance_moves_nothing) {
    auto calm = calm_of({{100.0, 8.0, 0.72}, {50.0, 9.0, 0.60}});
    const double before = calm.wells(0).removed;
    EXPECT_EQ(calm.step(300.0, 1200.0, 0.010, free_of_all), Calm::Tried::too_long);
    EXPECT_GT(calm.moved(), 0.010);
    EXPECT_EQ(calm.wells(0).removed, before);
}

TEST(calm, a_knot_a_limit_and_an_empty_well_are_no_calm) {
    const Made made(100.0, 8.0, 0.72);  // a knot lies at 70 %
    EXPECT_EQ(calm_of({made}).step(100.0, 3.0 * 3600.0, coarse, free_of_all),
              Calm::Tried::disturbed);
    auto limits = free_of_all;
    limits.cut_off = 12.6;
    EXPECT_FALSE(calm_of({made}).stands(100.0, limits));
    EXPECT_FALSE(calm_of({{100.0, 8.0, 0.0}}).stands(100.0, free_of_all));
    auto limited = made;
    limited.pack.current_above = 5.0;
    EXPECT_FALSE(calm_of({limited}).stands(100.0, free_of_all));
}

// Removed charge beyond which less is stored, or more: the one that is met depends on the power.
TEST(calm, a_change_of_the_charging_efficiency_is_no_calm) {
    const Made same(100.0, 8.0, 0.55);
    Made falls = same;
    falls.pack.coulombic = {0.9, 0.8, 0.7};
    falls.pack.coulombic_edge = {never, 0.4505 * falls.pack.total, 0.4495 * falls.pack.total,
                                 -never};
    falls.state = state_of(falls.pack, same.state.removed, 0.0);
    ASSERT_EQ(falls.state.charging_piece, 1);
    for (const double power : {100.0, -100.0}) {
        EXPECT_EQ(calm_of({same}).step(power, 60.0, coarse, free_of_all), Calm::Tried::done);
        EXPECT_EQ(calm_of({falls}).step(power, 5.0, coarse, free_of_all), Calm::Tried::done);
        EXPECT_EQ(calm_of({falls}).step(power, 60.0, coarse, free_of_all), Calm::Tried::disturbed);
    }
}

// Where charging has a curve of its own, somebody must look who takes and who does not.
TEST(calm, a_nearly_full_lithium_pack_that_is_charged_is_no_calm) {
    const auto lithium = scenario::Chemistry::lifepo4;
    EXPECT_FALSE(calm_of({Made(100.0, 8.0, 0.99, 0.0, lithium)}).meets(-100.0));
    EXPECT_TRUE(calm_of({Made(100.0, 8.0, 0.99, 0.0, lithium)}).meets(100.0));
    EXPECT_TRUE(calm_of({Made(100.0, 8.0, 0.97, 0.0, lithium)}).meets(-100.0));
}

TEST(calm, a_full_pack_takes_nothing_and_the_other_does) {
    const auto steep =
        OpenCircuit::through(std::array<Knot, 3>{{{StateOfCharge(0.0), 12.0 * volt},
                                                  {StateOfCharge(0.995), 13.672 * volt},
                                                  {StateOfCharge(1.0), 14.392 * volt}}});
    ASSERT_TRUE(steep);
    const auto made_of = [&](double fill) {
        Made made(100.0, 8.0, fill, 0.0, scenario::Chemistry::lifepo4);
        made.pack.open_circuit = &*steep;
        made.state = state_of(made.pack, (1.0 - fill) * made.pack.total, 0.0);
        return made;
    };
    Made full = made_of(1.0);
    Made nearly = made_of(0.999);  // 0.14 V below it
    full.pack.absorption = nearly.pack.absorption = 15.0;
    auto calm = calm_of({full, nearly});
    ASSERT_EQ(calm.step(-300.0, 5.0, coarse, free_of_all), Calm::Tried::done);
    EXPECT_NEAR(calm.wells(0).removed, 0.0, 1e-6);
    EXPECT_NEAR(calm.wells(1).removed, 360.0 - 5.0 * 0.9 * 20.8, 1.0);  // 300 W at 14.42 V
}

TEST(calm, offered_power_stops_at_the_absorption_voltage_and_at_the_weakest_limit) {
    Made full(100.0, 8.0, 0.95);
    full.pack.absorption = 12.9;
    auto calm = calm_of({full});
    ASSERT_TRUE(calm.stands(-500.0, free_of_all));
    EXPECT_NEAR(calm.point().voltage, 12.9, 1e-12);
    Made weak(100.0, 8.0, 0.5);
    weak.pack.charge_floor = -4.0;
    calm = calm_of({weak, Made(100.0, 8.0, 0.5)});
    ASSERT_TRUE(calm.stands(-500.0, free_of_all));
    EXPECT_NEAR(calm.current(0), -4.0, 1e-9);
    EXPECT_NEAR(calm.current(1), -4.0, 1e-9);
}

}  // namespace
