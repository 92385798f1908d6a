#include "unit/path.hpp"

#include "scenario/file/read.hpp"
#include "unit/built.hpp"

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

TEST(path, of_two_fuses_in_one_way_the_smaller_counts) {
    auto made = of(read(std::string(two_packs) + a_lead));
    EXPECT_NEAR(made.packs[0].lead.fuse->value.rating / ampere, 60.0, 1e-9);
    EXPECT_FALSE(made.packs[0].lead.fuse->value.opens.empty());
    made = of(read(std::string(two_packs) + "fuse = \"40 A\"\n" + a_lead));
    EXPECT_NEAR(made.packs[0].lead.fuse->value.rating / ampere, 40.0, 1e-9);
    EXPECT_EQ(made.packs[0].lead.fuse->origin, Origin::key);
    EXPECT_TRUE(made.packs[0].lead.fuse->value.opens.empty());
}

TEST(path, key_and_circuit_that_differ_are_both_named) {
    const auto made = of(
        read(std::string(two_packs) + "fuse = \"40 A\"\nlead_resistance = \"9 mohm\"\n" + a_lead));
    ASSERT_EQ(made.findings.size(), 2U);
    for (const auto& finding : made.findings) {
        EXPECT_EQ(finding.where, "pack main");
        EXPECT_NE(in_english(finding.text).find("pack[0]."), std::string::npos) << finding.text;
        EXPECT_NE(in_english(finding.text).find("circuit lead"), std::string::npos) << finding.text;
    }
    EXPECT_NE(in_english(made.findings[0].text).find("9 mΩ"), std::string::npos)
        << made.findings[0].text;
    EXPECT_NE(in_english(made.findings[1].text).find("60 A"), std::string::npos)
        << made.findings[1].text;
    EXPECT_EQ(made.packs[0].lead.resistance.origin, Origin::circuit);
    // the same figure twice is no difference
    const auto same = of(read(std::string(two_packs) + "fuse = \"60 A\"\n" + a_lead));
    EXPECT_TRUE(same.findings.empty());
}

TEST(path, a_circuit_without_wire_leaves_the_resistance_to_the_key) {
    const auto made = of(read(std::string(two_packs) + "lead_resistance = \"3 mohm\"\n" + R"(
[[circuit]]
name = "lead"
feeds = ["main"]
links = [{fuse = "60 A"}, {connector = "50 A"}]
)"));
    EXPECT_EQ(made.packs[0].lead.resistance.origin, Origin::key);
    EXPECT_NEAR(made.packs[0].lead.resistance.value / ohm / milliohm, 3.0, 1e-9);
    EXPECT_NEAR(made.packs[0].lead.connector->value / ampere, 50.0, 1e-9);
    EXPECT_TRUE(made.findings.empty());
}

}  // namespace
