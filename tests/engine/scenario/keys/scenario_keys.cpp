// What the tables of a file must be to one another.
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

TEST(scenario_keys, equal_names_are_told_with_the_line_of_the_first) {
    const auto errors =
        errors_of(sample::smallest("[[load]]\nname = \"lamp\"\npower = \"5 W\"\n"
                                   "[[load]]\nname = \"lamp\"\npower = \"6 W\"\n"));
    EXPECT_THAT(error_at(errors, "load[1].name").found, HasSubstr("line 10"));
}

TEST(scenario_keys, a_circuit_that_feeds_nothing_in_the_file_is_warned_of) {
    const auto plan = read(
        sample::smallest("[[load]]\nname = \"lamp\"\npower = \"5 W\"\n[[circuit]]\nname = \"c\"\n"
                         "feeds = [\"lmap\"]\nlinks = [{fuse = \"5 A\"}]\n"));
    ASSERT_THAT(plan.warnings, SizeIs(1));
    EXPECT_EQ(plan.warnings[0].remedy, "did you mean lamp?");
}

TEST(scenario_keys, circuits_that_begin_at_no_circuit_or_in_a_ring_are_refused) {
    const auto with = [](std::string_view first, std::string_view second) {
        return scenario::read_scenario(
            std::string(sample::ice_storm) +
                "[[circuit]]\nname = \"panel\"\nlinks = [{fuse = \"30 A\"}]\nfrom = \"" +
                std::string(first) +
                "\"\n[[circuit]]\nname = \"socket\"\nlinks = [{fuse = \"10 A\"}]\nfrom = \"" +
                std::string(second) + "\"\n",
            "plan.toml");
    };
    EXPECT_TRUE(with("bus", "panel"));
    const auto unknown = with("bus", "panell");
    ASSERT_FALSE(unknown);
    EXPECT_THAT(print(unknown.error().front()), HasSubstr("did you mean panel?"));
    const auto ring = with("socket", "panel");
    ASSERT_FALSE(ring);
    EXPECT_THAT(print(ring.error().front()), HasSubstr("in a ring"));
}

}  // namespace
