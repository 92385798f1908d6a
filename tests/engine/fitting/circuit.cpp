#include "fitting/circuit.hpp"

#include "support/wiring_builds.hpp"
#include "unit/built.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using testing::HasSubstr;
using wiring_builds::unit;  // not the folder of the engine

// 40 A fuse, 8 AWG of 105 degC out (80 A) and 18 AWG back: 20 A by [33 CFR 183.425] table 5.
TEST(circuit, a_thin_return_is_the_weakest_part) {
    auto supply = wire(AmericanGauge{8}, 3.0);
    supply.return_size = AmericanGauge{18};
    const auto fit = fitted(branch_of({fuse(40, "blade"), supply}), drawing(15.0));
    EXPECT_NEAR(*fit.circuits[0].links[1].derated / ampere, 20.0, 1e-9);
    EXPECT_EQ(find(fit, "C1", "lamps", "40 A fuse")->verdict, Verdict::fails);
    EXPECT_THAT(find(fit, "C1", "lamps", "40 A fuse")->text, HasSubstr("return of 18 AWG"));
}

// 8 AWG of 90 degC, terminals not marked: 40 A by the 60 degC column of [NEC] 310.16 as 110.14(C)
// asks, so a 50 A breaker is too large.
TEST(circuit, terminals_that_are_not_marked_count_as_made_for_60_degrees) {
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

// [Fuse derating guide] prints up to 0.5 % a kelvin: 15 K above 25 degC leave 92.5 % of 125 A, here
// and where the outage lets the fuse open.
TEST(circuit, heat_takes_as_much_of_a_fuse_as_in_the_outage) {
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

// A lead of connector, wire and fuse: the fuse stands at the pack and guards all that lies towards
// the bus. With a second one at the bus, that guards what follows it up to the other.
TEST(circuit, the_last_fuse_of_a_lead_stands_at_the_pack) {
    scenario::Circuit lead{.name = "lead",
                           .links = {scenario::Connector{.rating = 50.0 * ampere},
                                     wire(AmericanGauge{6}, 2.0), fuse(50, "class T")}};
    EXPECT_TRUE(fitting::is_at_pack(lead, fitting::Role::pack_lead, 2));
    EXPECT_FALSE(fitting::is_at_pack(lead, fitting::Role::branch, 2));
    EXPECT_THAT(fitting::protected_by(lead, fitting::Role::pack_lead, 2),
                testing::ElementsAre(0U, 1U));
    lead.links.insert(lead.links.begin(), fuse(50, "class T"));
    EXPECT_FALSE(fitting::is_at_pack(lead, fitting::Role::pack_lead, 0));
    EXPECT_THAT(fitting::protected_by(lead, fitting::Role::pack_lead, 0),
                testing::ElementsAre(1U, 2U));
}

// 20 A through joints of 1 mohm and a switch of 2 mohm: 60 mV and 1.2 W, of which the switch has
// 40 mV.
TEST(circuit, drop_and_loss_are_those_of_parts_and_joints) {
    const scenario::Circuit circuit{
        .name = "lamps",
        .links = {scenario::Switch{.rating = 30.0 * ampere, .resistance = 2e-3 * ohm}},
        .joints = 1e-3 * ohm};
    const auto state = fitting::circuit_state(
        circuit, {.nominal = 12.8 * volt, .for_drop = 20.0 * ampere}, {.inside = celsius(30.0)});
    EXPECT_NEAR(state.drop / volt, 0.060, 1e-12);
    EXPECT_NEAR(state.loss / watt, 1.2, 1e-12);
    EXPECT_NEAR(state.links[*state.worst_drop].drop / volt, 0.040, 1e-12);
    EXPECT_NEAR(state.resistance / ohm, 3e-3, 1e-15);
}

}  // namespace
