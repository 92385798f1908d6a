#include "fitting/circuit.hpp"
#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using wiring_builds::unit;  // not the folder of the engine

// [NEC] 310.10(G): in parallel from 1/0 AWG on.
TEST(circuit_checks, thin_wires_are_not_laid_in_parallel) {
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
TEST(circuit_checks, a_far_battery_needs_a_fuse_of_its_own) {
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

TEST(circuit_checks, a_ground_fault_outlet_on_a_split_or_unknown_neutral_is_in_doubt) {
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

// [33 CFR 183.455]: 7 in of bare wire from the source to its fuse, 40 in of sheathed. 1 ft is too
// much bare and not sheathed; 4 ft, 48 in, is too much either way.
TEST(circuit_checks, a_fuse_lies_within_7_inches_of_its_source_or_40_where_sheathed) {
    auto cable = wire(AmericanGauge{12}, 1.0);
    auto build = branch_of({cable, fuse(10, "blade")});
    const auto says = [&](std::string_view words) {
        for (const auto& check : fitted(build, drawing(1.0)).checks)
            if (check.id == "C1" && in_english(check.text).find(words) != std::string::npos) return true;
        return false;
    };
    EXPECT_TRUE(says("of wire lies between the bus and its fuse"));
    cable.sheathed = true;
    build.circuits[0].links[0] = cable;
    EXPECT_FALSE(says("of wire lies between"));
    cable.length = 4.0 * 0.3048 * metre;
    build.circuits[0].links[0] = cable;
    EXPECT_TRUE(says("of wire lies between"));
}

}  // namespace
