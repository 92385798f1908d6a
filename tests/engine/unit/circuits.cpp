#include "unit/circuits.hpp"

namespace {

using namespace units;

// 1 - 0.005 x 15 and 1 - 0.002 x 15 at 40 degC; a builder's own 1 % a kelvin leaves 0.85.
TEST(circuits, heat_takes_from_a_fuse) {
    const auto kept = ::unit::kept_by({.rating = 10.0 * ampere}, celsius(40.0));
    EXPECT_NEAR(kept.hard, 0.925, 1e-12);
    EXPECT_NEAR(kept.likely, 0.97, 1e-12);
    const auto own =
        ::unit::kept_by({.rating = 10.0 * ampere, .derate_per_kelvin = Share(0.01)}, celsius(40.0));
    EXPECT_NEAR(own.hard, 0.85, 1e-12);
    EXPECT_NEAR(::unit::kept_by({.rating = 10.0 * ampere}, celsius(-10.0)).hard, 1.0, 1e-12);
}

// 2 AWG of 0.194 ohm a 1,000 ft at 75 degC, [NEC] ch. 9 table 8: 2 x 1 ft is 0.388 mohm; four lugs of
// 0.05 mohm; a switch of 0.1 mohm; a connector of two contacts of 0.3 mohm: 1.288 mohm.
TEST(circuits, a_circuit_resists_what_its_parts_do) {
    scenario::Circuit circuit{
        .name = "main",
        .feeds = {"inverter"},
        .links = {scenario::Wire{.size = AmericanGauge{2}, .length = 0.3048 * metre},
                  scenario::Switch{.rating = 300.0 * ampere, .resistance = 1e-4 * ohm},
                  scenario::Connector{.rating = 50.0 * ampere, .resistance = 3e-4 * ohm}}};
    EXPECT_NEAR(::unit::resistance_of(circuit, celsius(75.0)) / ohm, 1.288e-3, 5e-6);
    EXPECT_NEAR(::unit::joints_of(circuit) / ohm, 2e-4, 1e-12);
    circuit.joints = 5e-5 * ohm;
    EXPECT_NEAR(::unit::resistance_of(circuit, celsius(75.0)) / ohm, 1.138e-3, 5e-6);
    EXPECT_TRUE(::unit::names_a_wire(circuit));
    circuit.links.erase(circuit.links.begin());
    EXPECT_FALSE(::unit::names_a_wire(circuit));
}

// Two cables side by side resist half, each behind its own fuse of 1 mohm.
TEST(circuits, cables_in_parallel_share_wire_and_fuse) {
    scenario::Circuit circuit{
        .name = "main",
        .feeds = {"inverter"},
        .links = {scenario::Wire{.size = AmericanGauge{2}, .length = 0.3048 * metre, .runs = 2},
                  scenario::Fuse{.rating = 100.0 * ampere, .resistance = 1e-3 * ohm}},
        .joints = Resistance{}};
    EXPECT_EQ(::unit::runs_of(circuit), 2.0);
    EXPECT_NEAR(::unit::resistance_of(circuit, celsius(75.0)) / ohm, 0.194e-3 + 0.5e-3, 5e-6);
}

TEST(circuits, what_a_circuit_feeds_says_what_it_is) {
    using ::unit::Role;
    scenario::Scenario scenario;
    scenario.packs.push_back({.name = "pack"});
    scenario::Load lamp;
    lamp.name = "lamp";
    lamp.from = scenario::Outlet::twelve_volt;
    scenario::Load kettle;
    kettle.name = "kettle";
    scenario.loads = {lamp, kettle};
    const auto role = [&](std::string feeds, std::optional<std::string> from = {}) {
        return ::unit::role_of(scenario, {.name = "it", .feeds = {std::move(feeds)}, .from = from});
    };
    EXPECT_EQ(role("inverter"), Role::main);
    EXPECT_EQ(role("pack"), Role::pack_lead);
    EXPECT_EQ(role("panels"), Role::charging);
    EXPECT_EQ(role("lamp"), Role::branch);
    EXPECT_EQ(role("kettle"), Role::ac);
    EXPECT_EQ(role("lamp", "inverter"), Role::ac);
    scenario.circuits = {{.name = "first", .feeds = {"lamp"}},
                         {.name = "second", .feeds = {"lamp"}}};
    EXPECT_EQ(::unit::circuit_feeding(scenario, "lamp"), std::optional<std::size_t>(0));
    EXPECT_FALSE(::unit::circuit_feeding(scenario, "kettle"));
}

// [NEC] ch. 9 table 8 is printed for 75 degC.
TEST(circuits, wires_are_reckoned_at_75_degrees_or_as_warm_as_the_case) {
    EXPECT_EQ(::unit::conductor_temperature(celsius(40.0)), celsius(75.0));
    EXPECT_EQ(::unit::conductor_temperature(celsius(82.0)), celsius(82.0));
}

}  // namespace
