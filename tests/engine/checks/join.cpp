#include "checks/join.hpp"

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

bool says(const checks::Joining& joining, std::string_view words) {
    return std::ranges::any_of(joining.findings, [&](const scenario::Finding& finding) {
        return finding.severity == scenario::Severity::stop &&
               finding.text.find(words) != std::string::npos;
    });
}

TEST(join, packs_at_one_charge_may_meet) {
    const auto joining = checks::join(two(lithium(0.6), lithium(0.6)));
    ASSERT_TRUE(joining);
    EXPECT_TRUE(joining->allowed);
    EXPECT_EQ(joining->direction, checks::Joins::level);
    EXPECT_EQ(joining->settles_in, Duration{});
}

TEST(join, the_current_falls_and_what_one_gives_the_other_takes) {
    const auto joining = checks::join(two(lithium(0.3), lithium(0.9)));
    ASSERT_TRUE(joining);
    for (std::size_t i = 1; i < joining->course.size(); ++i)
        EXPECT_LE(joining->course[i].current, joining->course[i - 1].current + 1e-6 * ampere);
    EXPECT_GT(joining->moved, Charge{});
    EXPECT_NEAR(joining->course.front().current / ampere, joining->current / ampere, 0.01);
}

TEST(join, an_emptier_pack_is_charged_by_the_unit) {
    EXPECT_EQ(checks::join(two(lithium(0.9), lithium(0.05)))->direction,
              checks::Joins::unit_charges_pack);
}

TEST(join, other_chemistries_are_refused) {
    auto lead = lithium(0.8);
    lead.chemistry = Chemistry::agm;
    EXPECT_TRUE(says(*checks::join(two(lithium(0.8), lead)), "never") ||
                says(*checks::join(two(lithium(0.8), lead)), "AGM"));
}

TEST(join, another_number_of_cells_is_refused) {
    auto doubled = lithium(0.8);
    doubled.voltage = 25.6 * volt;
    EXPECT_TRUE(says(*checks::join(two(lithium(0.8), doubled)), "number of cells"));
}

TEST(join, cold_lithium_is_not_charged_by_the_other) {
    auto made = two(lithium(0.9), lithium(0.1));
    made.outage.battery_temperature = celsius(-5.0);
    const auto joining = checks::join(made);
    EXPECT_TRUE(says(*joining, "this cold"));
    // no difference is small enough then
    EXPECT_EQ(*joining->largest_difference, Voltage{});
    EXPECT_EQ(joining->weakest, "pack spare, charging this cold");
    for (const auto& point : joining->course)
        EXPECT_GE(point.current, Current{});
    // the full one onto the empty one is refused as well: then the unit would be charged
    made = two(lithium(0.1), lithium(0.9));
    made.outage.battery_temperature = celsius(-5.0);
    EXPECT_TRUE(says(*checks::join(made), "this cold"));
}

TEST(join, three_in_parallel_want_a_fuse_each) {
    auto unit = lithium(0.6);
    unit.count = 2;
    EXPECT_TRUE(checks::join(two(unit, lithium(0.6)))->allowed);
    unit.fuse.reset();
    EXPECT_TRUE(says(*checks::join(two(unit, lithium(0.6))), "fuse"));
}

TEST(join, a_fuse_in_a_circuit_that_feeds_the_pack_counts) {
    auto unit = lithium(0.6);
    unit.count = 2;
    unit.fuse.reset();
    auto made = two(unit, lithium(0.6));
    made.circuits = {{.name = "main fuse",
                      .feeds = {"main"},
                      .links = {scenario::Fuse{.rating = 100.0 * ampere}}}};
    EXPECT_TRUE(checks::join(made)->allowed);
}

TEST(join, a_single_pack_has_nothing_to_join) {
    scenario::Scenario made;
    made.packs = {lithium(0.5)};
    ASSERT_FALSE(checks::join(made));
    EXPECT_EQ(checks::join(made).error().front().where, "pack");
}

TEST(join, an_unknown_name_is_told) {
    ASSERT_FALSE(checks::join(two(lithium(0.5), lithium(0.5)), {.pack = "other"}));
}

TEST(join, one_of_several_alike_joins_the_rest) {
    scenario::Scenario made;
    made.packs = {lithium(0.5)};
    made.packs[0].count = 2;
    const auto joining = checks::join(made);
    ASSERT_TRUE(joining);
    EXPECT_EQ(joining->in_parallel, 2);
}

}  // namespace
