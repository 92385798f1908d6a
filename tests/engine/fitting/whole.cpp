#include "fitting/whole.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using wiring_builds::unit;  // not the folder of the engine

scenario::Load load(std::string name, scenario::Outlet from, double volts = 0.0) {
    scenario::Load made{.name = std::move(name), .from = from};
    made.draw = scenario::StatedPower{30.0 * watt};
    if (volts > 0.0) {
        made.draw = scenario::Nameplate{volts * volt, 2.0 * ampere, std::nullopt};
    }
    return made;
}

// 16 packs of unknown resistance: 20 kA are not enough by the program's own usual 10 mohm
// (13.4 V/10 mohm x 16 = 21 kA), so they are not enough at the worst of it either.
TEST(whole, many_packs_of_unknown_resistance_are_not_taken_as_few) {
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

// A 30 A blade behind a 40 A one of the same family: at 80 A both may take 0.15 to 5 s.
TEST(whole, a_fuse_behind_one_that_is_hardly_larger_is_in_doubt) {
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

TEST(whole, alternating_and_direct_loads_on_one_circuit_are_refused) {
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

TEST(whole, a_240_volt_load_on_a_120_volt_inverter_is_a_stop) {
    auto build = unit(2000);
    build.loads = {load("pump", scenario::Outlet::ac, 240.0),
                   load("saw", scenario::Outlet::ac, 115.0)};
    const auto fit = fitted(build, draws_for(build));
    ASSERT_NE(find(fit, "C11", "", "load pump"), nullptr);
    EXPECT_EQ(find(fit, "C11", "", "load pump")->verdict, Verdict::fails);
    EXPECT_EQ(find(fit, "C11", "", "load saw"), nullptr);
}

// Two packs of 4 mohm behind 250 A fuses, one of them into a short of the other's lead: 250 A of
// fuses against 250 A of lead holds, 500 A of a third one's would not.
TEST(whole, a_lead_without_a_fuse_at_the_bus_bears_the_other_packs_fuses) {
    auto build = unit(1500, 2);
    build.circuits[2].links = {wire(AmericanGauge{0}, 2.0), fuse(250, "class T")};
    // 1/0 AWG of 105 degC: 285 A, [33 CFR 183.425] table 5.
    EXPECT_EQ(find(fitted(build, draws_for(build)), "C10", "leads")->verdict, Verdict::fits);
    build.packs[0].count = 3;
    EXPECT_EQ(find(fitted(build, draws_for(build)), "C10", "leads")->verdict, Verdict::fails);
}

// [IEC 60529]: the code of a case holds for it as it was tested, shut.
TEST(whole, a_case_used_open_is_asked_about) {
    auto build = unit(1500);
    build.enclosure->lid = "open";
    build.enclosure->rating = "IP65";
    const auto fit = fitted(build, draws_for(build));
    EXPECT_EQ(find(fit, "C13", "", "water")->verdict, Verdict::asked);
}

}  // namespace
