// Rules of wiring against figures worked by hand from the tables and codes named at each.
#include "fitting/silent.hpp"
#include "fitting/ways.hpp"
#include "support/wiring_builds.hpp"
#include "unit/built.hpp"
#include "wiring/ampacity.hpp"
#include "wiring/conductor.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using testing::HasSubstr;
using wiring_builds::unit;  // not the folder of the engine

fitting::Fit fitted(const scenario::Scenario& scenario, const fitting::Draws& draws) {
    auto fit = fitting::fit(scenario, draws);
    EXPECT_TRUE(fit) << (fit ? "" : print(fit.error().front()));
    return std::move(*fit);
}

Verdict worst(const fitting::Fit& fit, std::string_view id, std::string_view circuit) {
    Verdict found = Verdict::fits;
    for (const auto& check : fit.checks) {
        if (check.id == id && check.circuit == circuit &&
            fitting::rank_of(check.verdict) > fitting::rank_of(found)) {
            found = check.verdict;
        }
    }
    return found;
}

// One pack behind a 15 A fuse and 16 AWG; no inverter.
scenario::Scenario thin_lead() {
    auto build = branch_of({fuse(80, "maxi blade"), wire(AmericanGauge{4}, 3.0)});
    build.circuits.push_back({.name = "lead",
                              .feeds = {"main"},
                              .links = {wire(AmericanGauge{16}, 2.0), fuse(15, "blade")}});
    return build;
}

// 600 W at 10.5 V are 57.1 A, and a 60 A charger pushes 60 A back: both through that lead.
TEST(wiring_rules, a_lead_carries_the_12_volt_loads_and_the_charging) {
    auto build = thin_lead();
    auto draws = drawing(600.0 / 10.5);
    draws.direct = draws.circuits[0].at_bus;
    draws.circuits.push_back({.circuit = "lead", .at_bus = {}, .at_outlet = {}});
    const auto winch = fitted(build, draws);
    EXPECT_NEAR(winch.circuits[1].carries() / ampere, 57.14, 0.01);
    EXPECT_EQ(worst(winch, "C2", "lead"), Verdict::fails);
    EXPECT_EQ(worst(winch, "C6", "lead"), Verdict::fails);  // 25 A by [33 CFR 183.425]
    build.chargers = {{.name = "wall", .current = 60.0 * ampere}};
    const auto charging = fitted(build, draws_for(build, 0.0));
    EXPECT_NEAR(charging.circuits[1].carries() / ampere, 60.0, 1e-9);
    EXPECT_NEAR(charging.circuits[1].charging / ampere, 60.0, 1e-9);
    EXPECT_EQ(worst(charging, "C2", "lead"), Verdict::fails);
    EXPECT_EQ(worst(charging, "C6", "lead"), Verdict::fails);
}

// Three like packs, one missing: two share 60 A. A feeder that others charge through carries it.
TEST(wiring_rules, charging_is_shared_by_the_packs_that_are_left) {
    auto build = unit(1000, 3);
    build.chargers = {{.name = "wall", .current = 600.0 * ampere}};
    build.circuits[0].feeds = {"wall"};
    build.circuits.push_back({.name = "feeder",
                              .feeds = {},
                              .links = {fuse(100, "class T"), wire(AmericanGauge{4}, 1.0)}});
    build.circuits[0].from = "feeder";
    const auto fit = fitted(build, draws_for(build, 0.0));
    EXPECT_NEAR(fit.circuits[2].carries() / ampere, 300.0, 1e-6);
    EXPECT_NEAR(fit.circuits[4].carries() / ampere, 600.0, 1e-6);
}

// 40 A fuse, 8 AWG of 105 degC out (80 A) and 18 AWG back: 20 A by [33 CFR 183.425] table 5.
TEST(wiring_rules, a_thin_return_is_the_weakest_part) {
    auto supply = wire(AmericanGauge{8}, 3.0);
    supply.return_size = AmericanGauge{18};
    const auto fit = fitted(branch_of({fuse(40, "blade"), supply}), drawing(15.0));
    EXPECT_NEAR(*fit.circuits[0].links[1].derated / ampere, 20.0, 1e-9);
    EXPECT_EQ(find(fit, "C1", "lamps", "40 A fuse")->verdict, Verdict::fails);
    EXPECT_THAT(find(fit, "C1", "lamps", "40 A fuse")->text, HasSubstr("return of 18 AWG"));
}

// 16 packs of unknown resistance: 20 kA are not enough by the program's own usual 10 mohm
// (13.4 V/10 mohm x 16 = 21 kA), so they are not enough at the worst of it either.
TEST(wiring_rules, many_packs_of_unknown_resistance_are_not_taken_as_few) {
    auto build = unit(1500, 16);
    build.packs[0].resistance.reset();
    const auto unknown = fitted(build, draws_for(build));
    EXPECT_EQ(worst(unknown, "C4", "main path"), Verdict::fails);
    EXPECT_GT(*unknown.prospective, 50'000.0 * ampere);  // 4 mohm each
    // A figure within the range punishes nobody.
    for (const double milliohms : {4.0, 6.0, 10.0, 20.0}) {
        build.packs[0].resistance = milliohms * 1e-3 * ohm;
        const auto stated = fitted(build, draws_for(build));
        for (const auto& circuit : stated.circuits) {
            EXPECT_LE(fitting::rank_of(worst(stated, "C4", circuit.name)),
                      fitting::rank_of(worst(unknown, "C4", circuit.name)));
        }
    }
}

// 8 AWG of 90 degC, terminals not marked: 40 A by the 60 degC column of [NEC] 310.16 as 110.14(C)
// asks, so a 50 A breaker is too large.
TEST(wiring_rules, terminals_that_are_not_marked_count_as_made_for_60_degrees) {
    auto build = unit(6000);
    build.circuits[3].links = {fuse(50, "breaker"), wire(AmericanGauge{8}, 3.0, 90.0)};
    const auto unmarked = fitted(build, draws_for(build));
    EXPECT_NEAR(*unmarked.circuits[3].links[1].derated / ampere, 40.0, 1e-9);
    EXPECT_EQ(worst(unmarked, "C1", "outlet"), Verdict::fails);
    std::get<scenario::Wire>(build.circuits[3].links[1]).terminals = celsius(75.0);
    const auto marked = fitted(build, draws_for(build));
    EXPECT_NEAR(*marked.circuits[3].links[1].derated / ampere, 50.0, 1e-9);
    EXPECT_EQ(worst(marked, "C1", "outlet"), Verdict::fits);
}

// [NEC] 310.10(G): in parallel from 1/0 AWG on.
TEST(wiring_rules, thin_wires_are_not_laid_in_parallel) {
    auto build = unit(3000);
    auto pair = wire(AmericanGauge{12}, 3.0, 90.0);
    pair.runs = 2;
    build.circuits[3].links[1] = pair;
    EXPECT_EQ(worst(fitted(build, draws_for(build)), "C6", "outlet"), Verdict::fails);
    auto thick = wire(AmericanGauge{0}, 3.0, 90.0);
    thick.runs = 2;
    build.circuits[3].links[1] = thick;
    EXPECT_EQ(worst(fitted(build, draws_for(build)), "C6", "outlet"), Verdict::fits);
}

// A vehicle's battery 15 ft away, fused at the bus alone: [33 CFR 183.455], 7 in of the source.
TEST(wiring_rules, a_far_battery_needs_a_fuse_of_its_own) {
    auto build = branch_of({fuse(40, "blade"), wire(AmericanGauge{6}, 15.0)});
    build.circuits[0].feeds = {"car"};
    build.chargers = {
        {.name = "car", .kind = scenario::ChargerKind::vehicle, .current = 25.0 * ampere}};
    const auto bare = fitted(build, drawing(0.0));
    ASSERT_NE(find(bare, "C1", "lamps", "far end"), nullptr);
    EXPECT_EQ(find(bare, "C1", "lamps", "far end")->verdict, Verdict::fails);
    build.circuits[0].links.push_back(fuse(40, "blade"));
    EXPECT_EQ(find(fitted(build, drawing(0.0)), "C1", "lamps", "far end")->verdict, Verdict::fits);
    build.chargers[0].kind = scenario::ChargerKind::wall;
    EXPECT_EQ(find(fitted(build, drawing(0.0)), "C1", "lamps", "far end"), nullptr);
}

// [ABYC E-11] as a cable maker's page prints it: 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, 25
// and above 0.40.
TEST(wiring_rules, a_bundle_of_25_keeps_two_fifths) {
    const auto factor = [](int conductors) {
        return wiring::bundle_factor(wiring::AmpacityTable::boat, conductors);
    };
    EXPECT_EQ(factor(2), 1.0);
    EXPECT_EQ(factor(3), 0.7);
    EXPECT_EQ(factor(6), 0.6);
    EXPECT_EQ(factor(24), 0.5);
    EXPECT_EQ(factor(25), 0.4);
}

// 375 W of panels pass 35.7 A at 10.5 V; a controller that passes current gives the panels' own.
TEST(wiring_rules, panels_charge_at_the_lowest_voltage) {
    auto build = branch_of({fuse(60, "maxi blade"), wire(AmericanGauge{6}, 3.0)});
    build.circuits[0].feeds = {"charge_controller"};
    build.panels = {{.count = 3, .power = 125.0 * watt, .short_circuit_current = 7.0 * ampere}};
    build.controller = scenario::ChargeController{.kind = scenario::ControllerKind::mppt};
    EXPECT_NEAR(fitted(build, drawing(0.0)).circuits[0].carries() / ampere, 35.71, 0.005);
    build.controller->kind = scenario::ControllerKind::pwm;
    EXPECT_NEAR(fitted(build, drawing(0.0)).circuits[0].carries() / ampere, 21.0, 1e-9);
}

// 16 cells of 3.65 V, [LFP 100 sheet]: 58.4 V, above what a 58 V part stands.
TEST(wiring_rules, sixteen_cells_are_charged_to_58_4_volts_where_nothing_is_said) {
    auto build = branch_of({fuse(10, "terminal"), wire(AmericanGauge{12}, 3.0)});
    build.packs[0].voltage = 51.2 * volt;
    build.packs[0].resistance.reset();
    const auto silent = fitted(build, drawing(1.0, 42.0));
    EXPECT_NEAR(silent.top / volt, 58.4, 1e-9);
    EXPECT_EQ(worst(silent, "C5", "lamps"), Verdict::fails);
    build.packs[0].absorption_voltage = 57.6 * volt;
    EXPECT_EQ(worst(fitted(build, drawing(1.0, 42.0)), "C5", "lamps"), Verdict::fits);
}

TEST(wiring_rules, a_ground_fault_outlet_on_a_split_or_unknown_neutral_is_in_doubt) {
    auto build = unit(1500);
    for (const char* neutral : {"split", "unknown", "floating"}) {
        build.circuits[3].neutral = neutral;
        EXPECT_EQ(find(fitted(build, draws_for(build)), "C11", "outlet", "neutral")->verdict,
                  Verdict::may_not)
            << neutral;
    }
    build.circuits[3].neutral = "bonded";
    EXPECT_EQ(find(fitted(build, draws_for(build)), "C11", "outlet", "neutral"), nullptr);
}

TEST(wiring_rules, a_switch_that_does_not_say_what_it_is_rated_for_may_fail) {
    auto build = branch_of({fuse(10, "blade"), scenario::Switch{.rating = 20.0 * ampere},
                            wire(AmericanGauge{16}, 3.0)});
    const auto fit = fitted(build, drawing(4.0));
    const auto* check = find(fit, "C1", "lamps", "20 A switch");
    ASSERT_NE(check, nullptr);
    EXPECT_EQ(check->verdict, Verdict::fails);
    EXPECT_EQ(check->best, Verdict::fits);
    EXPECT_EQ(fitting::word_for(*check), "may fail");
    EXPECT_THAT(check->text, HasSubstr("rated_for"));
    std::get<scenario::Switch>(build.circuits[0].links[1]).rated_for = "dc";
    EXPECT_EQ(find(fitted(build, drawing(4.0)), "C1", "lamps", "20 A switch"), nullptr);
}

// [Fuse derating guide] prints up to 0.5 % a kelvin: 15 K above 25 degC leave 92.5 % of 125 A, here
// and where the outage lets the fuse open.
TEST(wiring_rules, heat_takes_as_much_of_a_fuse_as_in_the_outage) {
    auto build = unit(1000, 2);
    build.circuits[2].links = {wire(AmericanGauge{2}, 1.0),
                               scenario::Fuse{.rating = 125.0 * ampere, .family = "class T"}};
    build.enclosure = scenario::Case{.lid = "open", .inside = celsius(40.0)};
    const auto fit = fitted(build, draws_for(build));
    const auto& state = fit.circuits[2];
    EXPECT_NEAR(*state.links[state.fuses.front().link].derated / ampere, 115.6, 0.05);
    const auto built = ::unit::built(build, ::unit::usual_warmth(build));
    ASSERT_TRUE(built);
    const auto& guard = built->packs.front().lead.fuse->value;
    EXPECT_NEAR(guard.kept.hard * guard.rating / ampere, 115.6, 0.05);
}

// A 30 A blade behind a 40 A one of the same family: at 80 A both may take 0.15 to 5 s.
TEST(wiring_rules, a_fuse_behind_one_that_is_hardly_larger_is_in_doubt) {
    auto build = branch_of({fuse(30, "blade"), wire(AmericanGauge{8}, 3.0)});
    build.circuits.push_back(
        {.name = "feeder", .links = {fuse(40, "blade"), wire(AmericanGauge{6}, 3.0)}});
    build.circuits[0].from = "feeder";
    auto draws = drawing(10.0);
    draws.circuits.push_back({.circuit = "feeder", .at_bus = {}, .at_outlet = {}});
    const auto near = fitted(build, draws);
    ASSERT_NE(find(near, "C3", "lamps"), nullptr);
    EXPECT_EQ(find(near, "C3", "lamps")->verdict, Verdict::may_not);
    build.circuits[0].links[0] = fuse(2, "blade");
    draws.circuits[0].at_bus.continuous = 5.0 * watt;
    const auto apart = fitted(build, draws);
    EXPECT_EQ(find(apart, "C3", "lamps")->verdict, Verdict::fits);
}

// [IEC 60228] class 5: 39.0 ohm/km plain and 40.1 tinned for 0.5 mm2 at 20 degC.
TEST(wiring_rules, half_a_square_millimetre_has_a_row_and_tin_counts) {
    const auto of = [](double area, bool tinned) {
        return wiring::resistance_of(
                   wiring::ConductorKind{area * 1e-6 * square_metre, wiring::BuiltTo::nec, tinned},
                   celsius(20.0)) /
               wiring::ohm_per_metre * 1e3;
    };
    EXPECT_NEAR(of(0.5, false), 39.0, 1e-9);
    EXPECT_NEAR(of(0.5, true), 40.1, 1e-9);
    EXPECT_GT(of(0.3, true), of(0.3, false));
}

scenario::Load load(std::string name, scenario::Outlet from, double volts = 0.0) {
    scenario::Load made{.name = std::move(name), .from = from};
    made.draw = scenario::StatedPower{30.0 * watt};
    if (volts > 0.0) {
        made.draw = scenario::Nameplate{volts * volt, 2.0 * ampere, std::nullopt};
    }
    return made;
}

TEST(wiring_rules, alternating_and_direct_loads_on_one_circuit_are_refused) {
    auto build = unit(2000);
    build.loads = {load("lamps", scenario::Outlet::twelve_volt),
                   load("heater", scenario::Outlet::ac)};
    build.circuits[0].feeds = {"lamps", "heater"};
    const auto mixed = fitted(build, draws_for(build));
    ASSERT_NE(find(mixed, "C1", "lamps", "mixed"), nullptr);
    EXPECT_EQ(find(mixed, "C1", "lamps", "mixed")->verdict, Verdict::fails);
    build.circuits[0].feeds = {"lamps"};
    build.circuits[3].feeds = {"heater"};
    EXPECT_EQ(find(fitted(build, draws_for(build)), "C1", "lamps", "mixed"), nullptr);
}

TEST(wiring_rules, a_240_volt_load_on_a_120_volt_inverter_is_a_stop) {
    auto build = unit(2000);
    build.loads = {load("pump", scenario::Outlet::ac, 240.0),
                   load("saw", scenario::Outlet::ac, 115.0)};
    const auto fit = fitted(build, draws_for(build));
    ASSERT_NE(find(fit, "C11", "", "load pump"), nullptr);
    EXPECT_EQ(find(fit, "C11", "", "load pump")->verdict, Verdict::fails);
    EXPECT_EQ(find(fit, "C11", "", "load saw"), nullptr);
}

// 17 A for hours ask for a fuse of 25 A where 18 AWG of 105 degC carries 20 A, and its 20 ft drop
// more than a tenth: what would fit keeps the drop's limit as well as the fuse's.
TEST(wiring_rules, what_would_fit_keeps_every_limit) {
    const auto build = branch_of({fuse(20, "blade"), dc_switch(40), wire(AmericanGauge{18}, 20.0)});
    auto draws = drawing(17.0);
    draws.direct = draws.circuits[0].at_bus;
    const auto fit = fitted(build, draws);
    EXPECT_EQ(worst(fit, "C8", "lamps"), Verdict::may_not);
    const auto ways = fitting::ways_out(build, draws, fit);
    ASSERT_FALSE(ways.empty());
    // 1.28 V/17 A are 75.3 mohm for 40 ft and its contacts: 12 AWG of vehicle cable has 89 mohm
    // (1.98 ohm/kft by [NEC tables], 11 % less metal), 10 AWG (1.24) has 55.
    EXPECT_THAT(ways[0].change, HasSubstr("10 AWG wire instead of 18 AWG"));
}

}  // namespace
