// Each row of the swap table: this change dirties exactly these checks.
#include "fitting/swap.hpp"

#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Reach;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;
using wiring_builds::unit;  // not the folder of the engine

std::vector<std::string> kinds(const scenario::Scenario& before, const scenario::Scenario& after) {
    std::vector<std::string> found;
    for (const auto& change : fitting::changes_between(before, after)) {
        found.push_back(change.kind);
    }
    return found;
}

std::set<std::string> dirtied(const scenario::Scenario& before, const scenario::Scenario& after) {
    std::set<std::string> ids;
    for (const auto& change : fitting::changes_between(before, after)) {
        for (const auto& dirty : fitting::dirtied_by(change)) {
            ids.insert(dirty.check);
        }
    }
    return ids;
}

scenario::Scenario changed(void (*change)(scenario::Scenario&)) {
    auto build = unit(1500, 2);
    change(build);
    return build;
}

TEST(wiring_swap, a_build_does_not_differ_from_itself) {
    EXPECT_THAT(fitting::changes_between(unit(1500), unit(1500)), IsEmpty());
}

TEST(wiring_swap, a_bigger_inverter_reaches_to_every_pack) {
    const auto after = changed([](auto& build) { build.inverter->continuous = 2500.0 * watt; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("inverter"));
    EXPECT_THAT(dirtied(unit(1500), after), UnorderedElementsAre("C1", "C2", "C3", "C4", "C6", "C7",
                                                                 "C8", "C9", "C11", "C12", "C14"));
}

TEST(wiring_swap, a_weaker_switch_touches_its_own_branch) {
    const auto after = changed([](auto& build) { build.circuits[0].links[1] = dc_switch(5); });
    const auto changes = fitting::changes_between(unit(1500), after);
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].kind, "switch");
    EXPECT_EQ(changes[0].words, "the switch is 5 A instead of 10 A");
    EXPECT_THAT(dirtied(unit(1500), after),
                UnorderedElementsAre("C1", "C2", "C5", "C7", "C8", "C14"));
    for (const auto& dirty : fitting::dirtied_by(changes[0])) {
        EXPECT_EQ(dirty.reach, Reach::here);
        EXPECT_EQ(dirty.circuit, "lamps");
    }
}

TEST(wiring_swap, a_pack_more_makes_every_fuse_break_more) {
    const auto after = changed([](auto& build) { build.packs[0].count = 3; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("pack added"));
    EXPECT_THAT(dirtied(unit(1500), after),
                UnorderedElementsAre("C1", "C2", "C3", "C4", "C5", "C6", "C7", "C8", "C9", "C10",
                                     "C12", "C13"));
    for (const auto& dirty : fitting::dirtied_by({"pack added", "", ""})) {
        EXPECT_EQ(dirty.reach == Reach::everywhere, dirty.check == "C4");
    }
}

TEST(wiring_swap, a_pack_less_leaves_more_to_the_others) {
    const auto after = changed([](auto& build) { build.packs[0].count = 1; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("pack removed"));
    EXPECT_THAT(dirtied(unit(1500), after),
                UnorderedElementsAre("C1", "C2", "C3", "C4", "C5", "C6", "C7", "C8", "C9", "C10",
                                     "C12", "C13"));
}

TEST(wiring_swap, another_chemistry_charges_otherwise) {
    const auto after =
        changed([](auto& build) { build.packs[0].chemistry = scenario::Chemistry::agm; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("chemistry"));
    EXPECT_THAT(dirtied(unit(1500), after), UnorderedElementsAre("C1", "C2", "C3", "C4", "C5", "C6",
                                                                 "C7", "C8", "C9", "C12", "C13"));
    EXPECT_NE(in_english(fitting::advice_for({"chemistry", "", ""})).find("charger"), std::string::npos);
}

TEST(wiring_swap, another_pack_altogether_is_told_by_each_of_its_rows) {
    const auto after = changed([](auto& build) {
        build.packs[0].chemistry = scenario::Chemistry::agm;
        build.packs[0].voltage = 24.0 * volt;
        build.packs[0].capacity = 55.0 * ampere_hour;
        build.packs[0].weight = 17.0 * kilogram;
    });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("burden", "chemistry", "pack", "voltage"));
    EXPECT_FALSE(dirtied(unit(1500), after).empty());
}

TEST(wiring_swap, a_thinner_or_longer_wire) {
    const auto thinner =
        changed([](auto& build) { build.circuits[0].links[2] = wire(AmericanGauge{18}, 3.0); });
    const auto longer =
        changed([](auto& build) { build.circuits[0].links[2] = wire(AmericanGauge{16}, 9.0); });
    for (const auto& after : {thinner, longer}) {
        EXPECT_THAT(kinds(unit(1500), after), ElementsAre("wire"));
        EXPECT_THAT(dirtied(unit(1500), after), UnorderedElementsAre("C1", "C6", "C8", "C14"));
    }
}

TEST(wiring_swap, another_connector) {
    const auto after = changed([](auto& build) {
        build.circuits[2].links[1] =
            scenario::Connector{.rating = 120.0 * ampere, .part = "two-pole 50"};
    });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("connector"));
    EXPECT_THAT(dirtied(unit(1500), after), UnorderedElementsAre("C1", "C2", "C3", "C5", "C6", "C7",
                                                                 "C8", "C9", "C10", "C12", "C14"));
}

TEST(wiring_swap, twice_the_voltage_dirties_everything) {
    const auto after = changed([](auto& build) { build.packs[0].voltage = 25.6 * volt; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("voltage"));
    EXPECT_EQ(dirtied(unit(1500), after).size(), 16U);
    EXPECT_NE(in_english(fitting::advice_for({"voltage", "", ""})).find("C5"), std::string::npos);
}

TEST(wiring_swap, a_closed_lid_lowers_what_parts_may_carry) {
    const auto after = changed([](auto& build) { build.enclosure->lid = "closed"; });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("case"));
    EXPECT_THAT(dirtied(unit(1500), after),
                UnorderedElementsAre("C1", "C2", "C3", "C6", "C7", "C8", "C9", "C12", "C13"));
}

TEST(wiring_swap, another_outlet) {
    const auto after = changed([](auto& build) {
        std::get<scenario::SocketOutlet>(build.circuits[3].links[2]).rating = 20.0 * ampere;
    });
    EXPECT_THAT(kinds(unit(1500), after), ElementsAre("outlet"));
    EXPECT_THAT(dirtied(unit(1500), after),
                UnorderedElementsAre("C1", "C5", "C6", "C7", "C8", "C11", "C14"));
}

// What moved lies among what was dirtied, for swaps that do not change the current of others.
TEST(wiring_swap, verdicts_move_only_where_the_table_says) {
    const auto before = unit(1500, 2);
    const auto old_fit = fitting::fit(before, draws_for(before));
    ASSERT_TRUE(old_fit);
    for (const auto change : std::vector<void (*)(scenario::Scenario&)>{
             [](auto& build) { build.circuits[0].links[1] = dc_switch(5); },
             [](auto& build) { build.circuits[0].links[2] = wire(AmericanGauge{18}, 30.0); },
             [](auto& build) { build.packs[0].count = 6; },
             [](auto& build) { build.packs[0].count = 1; },
             [](auto& build) { build.enclosure->inside = celsius(95.0); },
             [](auto& build) { build.inverter->continuous = 2900.0 * watt; },
             [](auto& build) {
                 std::get<scenario::SocketOutlet>(build.circuits[3].links[2]).rating = 5.0 * ampere;
             }}) {
        const auto after = changed(change);
        const auto new_fit = fitting::fit(after, draws_for(after));
        ASSERT_TRUE(new_fit);
        const auto allowed = dirtied(before, after);
        const auto moved = fitting::moved_verdicts(*old_fit, *new_fit);
        EXPECT_FALSE(moved.empty());
        for (const auto& one : moved) {
            if (!one.after) {
                continue;  // a question that is not asked any more, such as both ends of one pack
            }
            EXPECT_TRUE(allowed.contains(one.check))
                << one.check << " " << one.circuit << ": " << one.text;
        }
    }
}

TEST(wiring_swap, the_five_ampere_switch_is_told_from_the_data) {
    const auto before = unit(1500);
    const auto after = changed([](auto& build) { build.circuits[0].links[1] = dc_switch(5); });
    const auto moved = fitting::moved_verdicts(*fitting::fit(before, draws_for(before)),
                                               *fitting::fit(after, draws_for(after)));
    ASSERT_FALSE(moved.empty());
    EXPECT_TRUE(fitting::is_worse(moved.front()));
    EXPECT_EQ(moved.front().check, "C1");
    EXPECT_NE(in_english(moved.front().mend).find("Fit a 5 A fuse"), std::string::npos);
}

}  // namespace
