#include "fitting/wiring.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using wiring_builds::unit;  // not the folder of the engine

// One pack behind a 15 A fuse and 16 AWG; no inverter.
scenario::Scenario thin_lead() {
    auto build = branch_of({fuse(80, "maxi blade"), wire(AmericanGauge{4}, 3.0)});
    build.circuits.push_back({.name = "lead",
                              .feeds = {"main"},
                              .links = {wire(AmericanGauge{16}, 2.0), fuse(15, "blade")}});
    return build;
}

// 600 W at 10.5 V are 57.1 A, and a 60 A charger pushes 60 A back: both through that lead.
TEST(wiring, a_lead_carries_the_12_volt_loads_and_the_charging) {
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
TEST(wiring, charging_is_shared_by_the_packs_that_are_left) {
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

// 375 W of panels pass 35.7 A at 10.5 V; a controller that passes current gives the panels' own.
TEST(wiring, panels_charge_at_the_lowest_voltage) {
    auto build = branch_of({fuse(60, "maxi blade"), wire(AmericanGauge{6}, 3.0)});
    build.circuits[0].feeds = {"charge_controller"};
    build.panels = {{.count = 3, .power = 125.0 * watt, .short_circuit_current = 7.0 * ampere}};
    build.controller = scenario::ChargeController{.kind = scenario::ControllerKind::mppt};
    EXPECT_NEAR(fitted(build, drawing(0.0)).circuits[0].carries() / ampere, 35.71, 0.005);
    build.controller->kind = scenario::ControllerKind::pwm;
    EXPECT_NEAR(fitted(build, drawing(0.0)).circuits[0].carries() / ampere, 21.0, 1e-9);
}

// What fails at the worst of what is open and not at its best may fail; what fails at both does.
TEST(wiring, a_circuit_fails_for_sure_where_one_of_its_checks_does) {
    fitting::Fit fit;
    fit.checks = {{.circuit = "lamps", .verdict = Verdict::fails, .best = Verdict::fits},
                  {.circuit = "main", .verdict = Verdict::fails}};
    EXPECT_EQ(fitting::word_for(fit, "lamps"), "may fail");
    EXPECT_FALSE(fitting::fails_for_sure(fit, "lamps"));
    EXPECT_EQ(fitting::word_for(fit, "main"), "fails");
    EXPECT_TRUE(fitting::fails_for_sure(fit, "main"));
    EXPECT_EQ(fitting::word_for(fit, "outlet"), "fits");
}

}  // namespace
