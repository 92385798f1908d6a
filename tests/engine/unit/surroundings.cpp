// A case of 0.4 x 0.3 x 0.3 m has 2 (0.12 + 0.12 + 0.09) = 0.66 m2 of walls; plastic sheds 3.5, steel
// 5.5 W/(m2 K) [Enclosure sheets].
#include "unit/surroundings.hpp"

#include "scenario/file/read.hpp"

namespace {

using namespace units;

scenario::Scenario with(const std::string& enclosure) {
    return scenario::read_scenario(R"(format = 1
title = "case"
[outage]
starts = 2026-01-14T18:00:00
lasts = "1 d"
battery_temperature = "20 degC"
[[pack]]
name = "main"
chemistry = "lifepo4"
capacity = "100 Ah"
[inverter]
continuous = "500 W"
cable_resistance = "0 mohm"
[case]
)" + enclosure,
                                   "case.toml")
        .value()
        .scenario;
}

// 500 W at its outlets with 20 W and a tenth of it lost: 70 W of heat, none in the main path.
::unit::Surroundings around(const std::string& enclosure) {
    const auto scenario = with(enclosure);
    auto unit = ::unit::built(scenario, ::unit::usual_warmth(scenario)).value();
    unit.inverter->losses = {.idle = 20.0 * watt, .linear = 0.1, .rating = 500.0 * watt};
    return ::unit::surroundings_of(scenario, unit);
}

constexpr const char* walls = "length = \"40 cm\"\nwidth = \"30 cm\"\nheight = \"30 cm\"\n";

// 20 K x 0.66 m2 x 3.5 is 46.2 W, of steel 72.6 W.
TEST(surroundings, a_shut_case_sheds_by_its_walls) {
    EXPECT_NEAR(*around(walls).shed / watt, 46.2, 1e-9);
    EXPECT_NEAR(*around(walls + std::string("material = \"steel\"\n")).shed / watt, 72.6, 1e-9);
    EXPECT_FALSE(around("air = \"20 degC\"\n").shed);
}

// 70 W over 0.66 m2 of plastic is 30.3 K above the air, of steel 19.3 K.
TEST(surroundings, shut_it_is_as_warm_as_its_heat_makes_it) {
    const std::string cool = std::string(walls) + "air = \"20 degC\"\nlid = \"closed\"\n";
    EXPECT_NEAR(in_celsius(around(cool).inside), 50.30, 0.01);
    EXPECT_NEAR(in_celsius(around(cool + "material = \"steel\"\n").inside), 39.28, 0.01);
    // at 35 degC outside it comes to 65.3 degC: parts are reckoned at 60 degC, and that is told
    const auto hot = around(std::string(walls) + "air = \"35 degC\"\nlid = \"closed\"\n");
    EXPECT_NEAR(in_celsius(hot.inside), 60.0, 1e-9);
    EXPECT_NEAR(in_celsius(*hot.shut), 65.30, 0.01);
    EXPECT_EQ(hot.assumptions.back().where, "case");
}

// 10 K above the air, common practice; [NEC] 310.16 is for 30 degC where the air is not given.
TEST(surroundings, with_the_lid_open_it_is_ten_kelvin_above_the_air) {
    EXPECT_NEAR(in_celsius(around("").inside), 40.0, 1e-9);
    EXPECT_NEAR(in_celsius(around("air = \"20 degC\"\n").inside), 30.0, 1e-9);
    const auto measured = around("inside = \"47 degC\"\n");
    EXPECT_NEAR(in_celsius(measured.inside), 47.0, 1e-9);
    EXPECT_TRUE(measured.assumptions.empty());
}

}  // namespace
