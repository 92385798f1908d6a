// Keys of the parts of a circuit, and of the case.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using told::error_at;
using told::errors_of;
using told::read;

std::string with_link(const std::string& link) {
    return sample::smallest("[[circuit]]\nname = \"lights\"\nlinks = [{" + link + "}]\n");
}

units::Error at_link(const std::string& link, const std::string& key = "") {
    return error_at(errors_of(with_link(link)), "circuit[0].links[0]" + key);
}

// The foot is 0.3048 m, the square millimetre 1e-6 m2.
TEST(link_keys, a_wire_has_a_size_of_either_standard_and_a_length_one_way) {
    const auto wire_of = [](const std::string& link) {
        return std::get<scenario::Wire>(read(with_link(link)).scenario.circuits.at(0).links.at(0));
    };
    const auto gauge = wire_of("wire = \"4/0 AWG\", length = \"3 ft\"");
    EXPECT_EQ(std::get<units::AmericanGauge>(gauge.size).number, -3);  // 1/0 is 0, 4/0 is -3
    EXPECT_DOUBLE_EQ(gauge.length / units::metre, 0.9144);
    const auto metric = wire_of("wire = \"2.5 mm2\", round_trip = \"6 ft\"");
    EXPECT_NEAR(std::get<units::Area>(metric.size) / units::square_metre, 2.5e-6, 1e-15);
    EXPECT_DOUBLE_EQ(*metric.round_trip / units::metre, 1.8288);
}

TEST(link_keys, a_wire_has_one_length_or_the_round_trip) {
    EXPECT_THAT(at_link("wire = \"16 AWG\", length = \"3 ft\", round_trip = \"6 ft\"").found,
                HasSubstr("both length and round_trip"));
    EXPECT_THAT(errors_of(with_link("wire = \"16 AWG\", length = \"3 ft\"")), IsEmpty());
    EXPECT_EQ(errors_of(with_link("wire = \"16 AWG\"")).size(), 1U);
}

TEST(link_keys, sizes_that_no_wire_has_are_refused) {
    EXPECT_THAT(at_link("wire = \"41 AWG\", length = \"1 m\"", ".wire").found, HasSubstr("41 AWG"));
    EXPECT_THAT(at_link("wire = \"0.001 mm2\", length = \"1 m\"", ".wire").found,
                HasSubstr("too little"));
    EXPECT_THAT(at_link("wire = 16, length = \"1 m\"", ".wire").remedy, HasSubstr("16 AWG"));
}

TEST(link_keys, the_times_of_a_fuse_are_in_order) {
    EXPECT_THAT(errors_of(with_link("fuse = \"10 A\", opens = [{current = \"20 A\", least = "
                                    "\"0.15 s\", most = \"5 s\"}]")),
                IsEmpty());
    EXPECT_THAT(at_link("fuse = \"10 A\", opens = [{current = \"20 A\", least = \"5 s\", most = "
                        "\"0.15 s\"}]",
                        ".opens[0]")
                    .remedy,
                HasSubstr("the shortest time as least"));
}

TEST(link_keys, a_switch_says_for_which_current_it_is_rated) {
    const auto part = read(with_link("switch = \"10 A\", rated_for = \"dc\", takes = \"10 AWG\""))
                          .scenario.circuits.at(0)
                          .links.at(0);
    EXPECT_EQ(std::get<scenario::Switch>(part).rated_for, "dc");
    EXPECT_THAT(at_link("switch = \"10 A\", rated_for = \"DC current\"", ".rated_for").remedy,
                HasSubstr("\"dc\", \"ac\", \"both\""));
}

// A case of 22 by 18 inches: the inch is 25.4 mm.
TEST(link_keys, a_case_has_sides_in_inches_or_centimetres) {
    const auto plan = read(sample::smallest(
        "[case]\nlength = \"22 in\"\nwidth = \"18 in\"\nheight = \"27 cm\"\nlid = \"open\"\n"));
    EXPECT_DOUBLE_EQ(*plan.scenario.enclosure->length / units::metre, 0.5588);
    EXPECT_DOUBLE_EQ(*plan.scenario.enclosure->width / units::metre, 0.4572);
    EXPECT_THAT(
        error_at(errors_of(sample::smallest("[case]\nlength = \"22 kg\"\n")), "case.length").found,
        HasSubstr("mass"));
}

}  // namespace
