#include "handling/join.hpp"

#include <algorithm>

namespace {

using namespace units;
using scenario::Chemistry;

scenario::Scenario two(scenario::Pack unit, scenario::Pack pack) {
    scenario::Scenario made;
    unit.name = "main";
    pack.name = "spare";
    made.packs = {std::move(unit), std::move(pack)};
    made.outage.battery_temperature = celsius(25.0);
    return made;
}

scenario::Pack lithium(double charge) {
    return {.count = 1,
            .chemistry = Chemistry::lifepo4,
            .capacity = 100.0 * ampere_hour,
            .charge = StateOfCharge(charge),
            .fuse = 100.0 * ampere};
}

bool says(const handling::Joining& joining, std::string_view words) {
    return std::ranges::any_of(joining.findings, [&](const scenario::Finding& finding) {
        return finding.severity == scenario::Severity::stop &&
               in_english(finding.text).find(words) != std::string::npos;
    });
}

TEST(join, packs_at_one_charge_may_meet) {
    const auto joining = handling::join(two(lithium(0.6), lithium(0.6)));
    ASSERT_TRUE(joining);
    EXPECT_TRUE(joining->allowed);
    EXPECT_EQ(joining->direction, handling::Joins::level);
    EXPECT_EQ(joining->settles_in, Duration{});
}

TEST(join, the_current_falls_and_what_one_gives_the_other_takes) {
    const auto joining = handling::join(two(lithium(0.3), lithium(0.9)));
    ASSERT_TRUE(joining);
    for (std::size_t i = 1; i < joining->course.size(); ++i)
        EXPECT_LE(joining->course[i].current, joining->course[i - 1].current + 1e-6 * ampere);
    EXPECT_GT(joining->moved, Charge{});
    EXPECT_NEAR(joining->course.front().current / ampere, joining->current / ampere, 0.01);
}

TEST(join, an_emptier_pack_is_charged_by_the_unit) {
    EXPECT_EQ(handling::join(two(lithium(0.9), lithium(0.05)))->direction,
              handling::Joins::unit_charges_pack);
}

TEST(join, other_chemistries_are_refused) {
    auto lead = lithium(0.8);
    lead.chemistry = Chemistry::agm;
    EXPECT_TRUE(says(*handling::join(two(lithium(0.8), lead)), "never") ||
                says(*handling::join(two(lithium(0.8), lead)), "AGM"));
}

TEST(join, another_number_of_cells_is_refused) {
    auto doubled = lithium(0.8);
    doubled.voltage = 25.6 * volt;
    EXPECT_TRUE(says(*handling::join(two(lithium(0.8), doubled)), "number of cells"));
}

TEST(join, cold_lithium_is_not_charged_by_the_other) {
    auto made = two(lithium(0.9), lithium(0.1));
    made.outage.battery_temperature = celsius(-5.0);
    const auto joining = handling::join(made);
    EXPECT_TRUE(says(*joining, "this cold"));
    // no difference is small enough then
    EXPECT_EQ(*joining->largest_difference, Voltage{});
    EXPECT_EQ(joining->weakest, "charging pack spare this cold");
    for (const auto& point : joining->course)
        EXPECT_GE(point.current, Current{});
    // the full one onto the empty one is refused as well: then the unit would be charged
    made = two(lithium(0.1), lithium(0.9));
    made.outage.battery_temperature = celsius(-5.0);
    EXPECT_TRUE(says(*handling::join(made), "this cold"));
}

// 13.50 V rested on 13.196 V over 24 mohm; just charged 14.392 V, an hour later 14.014 V.
TEST(join, a_full_lithium_pack_gives_more_when_it_was_just_charged) {
    const auto rested = handling::join(two(lithium(0.5), lithium(1.0)));
    ASSERT_TRUE(rested);
    EXPECT_NEAR(rested->current / ampere, 0.304 / 0.024, 0.05);
    EXPECT_TRUE(rested->allowed);
    EXPECT_TRUE(std::ranges::any_of(rested->findings, [](const scenario::Finding& finding) {
        return in_english(finding.text).find("straight from the charger 49.8 A") !=
                   std::string::npos &&
               in_english(finding.text).find("20.1 A after a minute") != std::string::npos;
    }));
    auto pack = lithium(1.0);
    pack.rested_for = Duration{};
    auto careful = lithium(0.5);
    careful.charge_limit = 40.0 * ampere;
    const auto straight = handling::join(two(careful, pack));
    ASSERT_TRUE(straight);
    EXPECT_NEAR(straight->current / ampere, 1.196 / 0.024, 0.1);
    EXPECT_TRUE(says(*straight, "charge limit"));
    EXPECT_TRUE(handling::join(two(careful, lithium(1.0)))->allowed);
    pack.rested_for = 1.0 * hour;
    EXPECT_NEAR(handling::join(two(careful, pack))->current / ampere, (14.014 - 13.196) / 0.024,
                0.2);
}

TEST(join, three_in_parallel_want_a_fuse_each) {
    auto unit = lithium(0.6);
    unit.count = 2;
    EXPECT_TRUE(handling::join(two(unit, lithium(0.6)))->allowed);
    unit.fuse.reset();
    EXPECT_TRUE(says(*handling::join(two(unit, lithium(0.6))), "fuse"));
}

TEST(join, a_fuse_in_a_circuit_that_feeds_the_pack_counts) {
    auto unit = lithium(0.6);
    unit.count = 2;
    unit.fuse.reset();
    auto made = two(unit, lithium(0.6));
    made.circuits = {{.name = "main fuse",
                      .feeds = {"main"},
                      .links = {scenario::Fuse{.rating = 100.0 * ampere}}}};
    EXPECT_TRUE(handling::join(made)->allowed);
}

// A 50 A fuse and a 50 A plug, said by keys or by the circuit that feeds the joining pack: 64 A at
// 0.9 V over 14 mohm are refused, and 50 A x 14 mohm = 0.70 V are the most.
TEST(join, a_fuse_and_a_plug_limit_alike_by_key_and_by_circuit) {
    auto unit = lithium(0.6);
    auto pack = lithium(0.6);
    unit.fuse.reset();
    pack.fuse.reset();
    for (auto* one : {&unit, &pack}) {
        one->charge_limit = 200.0 * ampere;
        one->current_limit = 200.0 * ampere;
        one->resistance = 0.005 * ohm;
    }
    unit.lead_resistance = 0.001 * ohm;
    unit.rested_voltage = 12.5 * volt;
    pack.lead_resistance = 0.003 * ohm;
    pack.rested_voltage = 13.4 * volt;
    auto keys = two(unit, pack);
    keys.packs[1].fuse = 50.0 * ampere;
    auto circuit = two(unit, pack);
    circuit.circuits = {{.name = "lead",
                         .feeds = {"spare"},
                         .links = {scenario::Fuse{.rating = 50.0 * ampere},
                                   scenario::Connector{.rating = 50.0 * ampere}}}};
    for (const auto& made : {keys, circuit}) {
        const auto joining = handling::join(made);
        ASSERT_TRUE(joining);
        EXPECT_NEAR(joining->current / ampere, 64.3, 0.5);
        EXPECT_FALSE(joining->allowed);
        EXPECT_NEAR(*joining->largest_difference / volt, 0.70, 0.007);
    }
}

TEST(join, a_pack_whose_name_is_part_of_another_is_told_to_have_no_fuse) {
    auto made = two(lithium(0.6), lithium(0.6));
    auto third = lithium(0.6);
    third.name = "spare 2";
    made.packs.push_back(third);
    made.packs[1].fuse.reset();
    made.packs[2].fuse.reset();
    EXPECT_TRUE(says(*handling::join(made), "given for spare and spare 2"));
    made.packs[2].fuse = 100.0 * ampere;
    EXPECT_TRUE(says(*handling::join(made), "given for spare"));
}

TEST(join, voltages_that_nobody_read_cannot_be_judged) {
    auto unit = lithium(0.6);
    auto pack = lithium(0.6);
    pack.charge.reset();
    const auto joining = handling::join(two(unit, pack));
    ASSERT_TRUE(joining);
    EXPECT_FALSE(joining->known);
    EXPECT_FALSE(joining->allowed);
    EXPECT_TRUE(std::ranges::any_of(joining->findings, [](const scenario::Finding& finding) {
        return finding.where == "pack spare" && in_english(finding.mend).find("measure both") == 0;
    }));
    pack.rested_voltage = 13.2 * volt;
    EXPECT_TRUE(handling::join(two(unit, pack))->known);
}

TEST(join, what_holds_for_several_packs_is_told_once) {
    auto three = two(lithium(0.6), lithium(0.6));
    three.packs[1].count = 3;
    const auto joining = handling::join(three);
    ASSERT_TRUE(joining);
    std::vector<std::string> unrested;
    for (const scenario::Finding& finding : joining->findings)
        if (in_english(finding.text).find("just off the charger") != std::string::npos)
            unrested.push_back(in_english(finding.where));
    EXPECT_EQ(unrested, std::vector<std::string>{"packs main and spare"});
    three.packs[1].rested_for = 2.0 * hour;
    three.packs[0].rested_for = 30.0 * hour;
    const auto rested = handling::join(three);
    ASSERT_TRUE(rested);
    EXPECT_EQ(
        std::ranges::count_if(rested->findings,
                              [](const auto& finding) { return finding.where == "pack spare"; }),
        1);
}

TEST(join, what_it_is_plugged_onto_is_listed) {
    auto made = two(lithium(0.5), lithium(0.5));
    made.packs[1].count = 3;
    EXPECT_EQ(handling::join(made)->onto, "main and 2 more of its kind");
    made.packs[1].count = 2;
    EXPECT_EQ(handling::join(made)->onto, "main and the other spare");
}

TEST(join, the_weakest_is_a_part_of_a_pack_or_what_was_asked_for) {
    auto made = two(lithium(0.5), lithium(0.9));
    made.packs[1].fuse = 10.0 * ampere;
    EXPECT_EQ(handling::join(made)->weakest, "the fuse of pack spare");
    const auto asked = handling::join(made, {.at_most = 1.0 * ampere});
    EXPECT_EQ(asked->weakest, "the limit you asked for");
    EXPECT_TRUE(says(*asked, "you asked for 1 A at most"));
}

TEST(join, a_single_pack_has_nothing_to_join) {
    scenario::Scenario made;
    made.packs = {lithium(0.5)};
    ASSERT_FALSE(handling::join(made));
    EXPECT_EQ(handling::join(made).error().front().where, "pack");
}

TEST(join, an_unknown_name_is_told) {
    ASSERT_FALSE(handling::join(two(lithium(0.5), lithium(0.5)), {.pack = "other"}));
}

TEST(join, one_of_several_alike_joins_the_rest) {
    scenario::Scenario made;
    made.packs = {lithium(0.5)};
    made.packs[0].count = 2;
    const auto joining = handling::join(made);
    ASSERT_TRUE(joining);
    EXPECT_EQ(joining->in_parallel, 2);
}

}  // namespace
