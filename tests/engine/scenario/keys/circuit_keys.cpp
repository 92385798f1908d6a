// Keys of [[circuit]]: its links are told apart by the part each names.
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "engine/scenario/sample.hpp"
#include "engine/scenario/told.hpp"

namespace {

using testing::HasSubstr;
using testing::SizeIs;
using told::error_at;
using told::errors_of;
using told::read;

std::string with_links(const std::string& links, const std::string& more = "") {
    return sample::smallest("[[circuit]]\nname = \"lights\"\nlinks = " + links + "\n" + more);
}

TEST(circuit_keys, each_link_is_the_part_that_it_names) {
    const auto circuit = read(with_links("[{fuse = \"7.5 A\"}, {switch = \"10 A\"}, "
                                         "{wire = \"16 AWG\", length = \"3 ft\"}, "
                                         "{connector = \"50 A\"}, {outlet = \"15 A\"}]",
                                         "drop_limit = \"3 %\"\njoints = \"0.4 mohm\"\n"))
                             .scenario.circuits.at(0);
    ASSERT_THAT(circuit.links, SizeIs(5));
    EXPECT_EQ(std::get<scenario::Fuse>(circuit.links[0]).rating, 7.5 * units::ampere);
    EXPECT_EQ(std::get<scenario::Switch>(circuit.links[1]).rating, 10.0 * units::ampere);
    EXPECT_TRUE(std::holds_alternative<scenario::Wire>(circuit.links[2]));
    EXPECT_TRUE(std::holds_alternative<scenario::Connector>(circuit.links[3]));
    EXPECT_TRUE(std::holds_alternative<scenario::SocketOutlet>(circuit.links[4]));
    EXPECT_EQ(circuit.drop_limit, units::Share(0.03));
    EXPECT_DOUBLE_EQ(*circuit.joints / units::ohm, 0.0004);
    EXPECT_FALSE(circuit.from);
}

TEST(circuit_keys, a_link_of_no_part_or_of_two_is_refused_at_its_place) {
    const auto none = errors_of(with_links("[{fuse = \"5 A\"}, {length = \"3 ft\"}]"));
    EXPECT_THAT(error_at(none, "circuit[0].links[1]").found, HasSubstr("none of the parts"));
    const auto two = errors_of(with_links("[{fuse = \"5 A\", wire = \"16 AWG\"}]"));
    EXPECT_EQ(error_at(two, "circuit[0].links[0]").found,
              "in circuit \"lights\", found fuse and wire in one link");
    EXPECT_THAT(error_at(two, "circuit[0].links[0]").remedy, HasSubstr("one of fuse, switch"));
}

TEST(circuit_keys, links_are_demanded_and_the_neutral_is_one_of_five) {
    EXPECT_THAT(error_at(errors_of(sample::smallest("[[circuit]]\nname = \"lights\"\n")),
                         "circuit[0].links")
                    .remedy,
                HasSubstr("{fuse = \"7.5 A\"}"));
    const auto grounded = errors_of(with_links("[{fuse = \"5 A\"}]", "neutral = \"bonnded\"\n"));
    EXPECT_THAT(error_at(grounded, "circuit[0].neutral").remedy, HasSubstr("did you mean \"bonded\"?"));
}

}  // namespace
