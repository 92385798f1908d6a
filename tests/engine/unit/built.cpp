#include "unit/built.hpp"

#include <algorithm>

#include "scenario/file/file.hpp"
#include "scenario/file/read.hpp"

namespace {

using namespace units;
using ::unit::Origin;

constexpr double milliohm = 1e-3;

scenario::Scenario read(const std::string& text) {
    const auto made = scenario::read_scenario(text, "unit.toml");
    if (!made) throw std::runtime_error(words::in_english(made.error().front().found));
    return made->scenario;
}

scenario::Scenario shipped(const std::string& name) {
    return scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) + "/scenarios/" + name,
                                        {})
        .value()
        .scenario;
}

::unit::Unit of(const scenario::Scenario& scenario) {
    return ::unit::built(scenario, ::unit::usual_warmth(scenario)).value();
}

bool tells(const scenario::Assumptions& list, const std::string& where) {
    return std::ranges::any_of(list, [&](const auto& one) { return one.where == where; });
}

constexpr const char* two_packs = R"(
format = 1
title = "two"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
)";

constexpr const char* second_pack = R"(
[[pack]]
name = "spare"
)";

constexpr const char* a_lead = R"(
[[circuit]]
name = "lead"
feeds = ["main"]
links = [{fuse = "60 A", family = "maxi blade"}, {connector = "50 A"}, {wire = "4 AWG", length = "2 ft", insulation = "105 degC"}, {fuse = "80 A", family = "maxi blade"}]
)";

TEST(known, the_circuit_goes_before_the_key_and_so_on) {
    using ::unit::known;
    ::unit::Sayings<int> said{
        .circuit = 1, .key = 2, .first_pack = 3, .chemistry = 4, .practice = 5};
    EXPECT_EQ(known(said)->value, 1);
    EXPECT_EQ(known(said)->origin, Origin::circuit);
    said.circuit.reset();
    EXPECT_EQ(known(said)->origin, Origin::key);
    said.key.reset();
    EXPECT_EQ(known(said)->origin, Origin::first_pack);
    said.first_pack.reset();
    EXPECT_EQ(known(said)->origin, Origin::chemistry);
    said.chemistry.reset();
    EXPECT_EQ(known(said)->origin, Origin::practice);
    EXPECT_TRUE(known(said)->assumed());
    said.practice.reset();
    EXPECT_FALSE(known(said));
}

// By hand, as method.md's worked example: the case 2 x 0.3048 m of 2 AWG at 0.194 ohm a 1,000 ft,
// two fuses of 0.06 V at 125 A, four lugs of 0.05 mohm; the plug-in lead 3 ft and two contacts.
TEST(built, the_shipped_ice_storm_has_the_wires_that_its_circuits_describe) {
    const auto made = of(shipped("ice_storm.toml"));
    EXPECT_NEAR(made.packs[0].lead.resistance.value / ohm / milliohm, 1.55, 0.01);
    EXPECT_NEAR(made.packs[1].lead.resistance.value / ohm / milliohm, 2.40, 0.05);
    EXPECT_NEAR(made.main.resistance.value / ohm / milliohm, 0.76, 0.01);
    EXPECT_EQ(made.packs[1].lead.resistance.origin, Origin::circuit);
    EXPECT_EQ(made.main.resistance.origin, Origin::circuit);
    EXPECT_NEAR(made.packs[0].lead.fuse->value.rating / ampere, 125.0, 1e-9);
    for (const auto& one : ::unit::assumptions_of(made)) {
        EXPECT_EQ(one.where.find("lead_resistance"), std::string::npos);
        EXPECT_EQ(one.where.find("cable_resistance"), std::string::npos);
    }
    EXPECT_FALSE(tells(made.of_inverter, "inverter.cable_resistance"));
    EXPECT_TRUE(tells(::unit::assumptions_of(made), "circuit.links"));
}

TEST(built, what_the_first_pack_lends_is_told_as_lent_and_is_no_second_rating) {
    const auto made = of(read(std::string(two_packs) + "fuse = \"40 A\"\n" + second_pack +
                              R"(
[[circuit]]
name = "lead of the spare"
feeds = ["spare"]
links = [{fuse = "60 A"}, {wire = "4 AWG", length = "2 ft"}]
)"));
    EXPECT_EQ(made.packs[0].lead.fuse->origin, Origin::key);
    EXPECT_NEAR(made.packs[1].lead.fuse->value.rating / ampere, 60.0, 1e-9);
    EXPECT_TRUE(made.findings.empty());
    const auto lent = of(read(std::string(two_packs) + "fuse = \"40 A\"\n" + second_pack));
    EXPECT_EQ(lent.packs[1].lead.fuse->origin, Origin::first_pack);
}

TEST(built, what_was_taken_is_told_once_for_all_packs_it_holds_for) {
    const auto made = of(read(std::string(two_packs) + second_pack));
    const auto told = ::unit::assumptions_of(made);
    EXPECT_TRUE(tells(told, "pack.resistance"));
    EXPECT_FALSE(tells(told, "pack[0].resistance"));
    for (const auto& one : told)
        EXPECT_EQ(std::ranges::count(told, one), 1) << one.where;
    const auto apart = of(read(std::string(two_packs) + second_pack + "resistance = \"5 mohm\"\n"));
    EXPECT_TRUE(tells(::unit::assumptions_of(apart), "pack[0].resistance"));
    EXPECT_FALSE(tells(::unit::assumptions_of(apart), "pack.resistance"));
}

}  // namespace
